import { Fault } from '../exact/fault.ts';
import { apply, IDENTITY, type Matrix, multiply } from './matrix.ts';
import type { PdfFile } from './pdf-file.ts';
import type { FontReading } from './read-font.ts';
import { Keyword, Scanner } from './scanner.ts';
import { type Dict, isArray, isDict, Name, Text, type Value } from './value.ts';

/** A marked-content sequence as it is open around a piece of content. */
export interface Marking {
  readonly tag: string;
  readonly mcid?: number;
  readonly actual?: string;
  readonly properties: Dict;
}

/** A shown string. Places are in points from the page's top left corner; `y` is the baseline. */
export interface TextRun {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
  readonly font: FontReading;
  readonly codes: readonly number[];
  /** 0 black to 1 white; for colours, their luminance */
  readonly ink: number;
  readonly colour: boolean;
  /** open sequences, outermost first */
  readonly markings: readonly Marking[];
}

/** A painted path by its bounding box, in points from the top left. */
export interface PaintedPath {
  readonly box: readonly [number, number, number, number];
  readonly line: number;
  readonly ink: number;
  readonly colour: boolean;
  readonly markings: readonly Marking[];
}

export interface Content {
  readonly runs: readonly TextRun[];
  readonly paths: readonly PaintedPath[];
  /** operators met, for rules about what may not occur */
  readonly operators: ReadonlySet<string>;
}

interface Graphics {
  ctm: Matrix;
  fill: number;
  stroke: number;
  line: number;
  /** whether filling and stroking are in a colour that is no grey */
  fillColour: boolean;
  strokeColour: boolean;
}

/** Interprets the content of a page: text with places and marks, and painted paths. */
export function readContent(file: PdfFile, source: string, fonts: ReadonlyMap<string, FontReading>, height: number): Content {
  const reader = new ContentReader(file, fonts, height);
  const scanner = new Scanner(source);
  let operands: Value[] = [];
  for (let token = scanner.next(); token !== undefined; token = scanner.next()) {
    if (token instanceof Keyword) {
      reader.operator(token.value, operands);
      operands = [];
    } else operands.push(token);
  }
  return reader;
}

class ContentReader implements Content {
  readonly runs: TextRun[] = [];
  readonly paths: PaintedPath[] = [];
  readonly operators = new Set<string>();
  readonly #file: PdfFile;
  readonly #fonts: ReadonlyMap<string, FontReading>;
  readonly #height: number;
  readonly #stack: Graphics[] = [];
  readonly #markings: Marking[] = [];
  #state: Graphics = { ctm: IDENTITY, fill: 0, stroke: 0, line: 1, fillColour: false, strokeColour: false };
  #text: Matrix = IDENTITY;
  #font: FontReading | undefined;
  #size = 0;
  #points: (readonly [number, number])[] = [];

  constructor(file: PdfFile, fonts: ReadonlyMap<string, FontReading>, height: number) {
    this.#file = file;
    this.#fonts = fonts;
    this.#height = height;
  }

  operator(name: string, operands: readonly Value[]): void {
    this.operators.add(name);
    const numbers = operands.filter((operand) => typeof operand === 'number');
    if (this.#marking(name, operands) || this.#graphics(name, numbers) || this.#path(name, numbers)) return;
    if (this.#textOperator(name, operands, numbers)) return;
    if (!IGNORED.has(name)) throw new Fault('bad-pdf', `expected operators that the printer writes, found \`${name}\``);
  }

  #marking(name: string, operands: readonly Value[]): boolean {
    if (name === 'EMC') this.#markings.pop();
    else if (name === 'BMC' || name === 'BDC') this.#markings.push(this.#markingOf(operands));
    else return false;
    return true;
  }

  #markingOf([tag, properties]: readonly Value[]): Marking {
    const dict: Dict = isDict(properties) ? properties : new Map();
    const mcid = this.#file.number(dict.get('MCID'));
    const actual = this.#file.text(dict.get('ActualText'));
    return {
      tag: tag instanceof Name ? tag.value : '',
      properties: dict,
      ...(mcid === undefined ? {} : { mcid }),
      ...(actual === undefined ? {} : { actual }),
    };
  }

  #graphics(name: string, numbers: readonly number[]): boolean {
    const state = this.#state;
    if (name === 'q') this.#stack.push({ ...state });
    else if (name === 'Q') this.#state = this.#stack.pop() ?? state;
    else if (name === 'cm') state.ctm = multiply(numbers as unknown as Matrix, state.ctm);
    else if (name === 'g' || name === 'G') this.#colour(name, [numbers[0] ?? 0, numbers[0] ?? 0, numbers[0] ?? 0]);
    else if (name === 'w') state.line = numbers[0] ?? 1;
    else if (name === 'rg' || name === 'RG') this.#colour(name, numbers);
    else return false;
    return true;
  }

  #colour(name: string, [r = 0, g = 0, b = 0]: readonly number[]): void {
    const luminance = 0.2126 * r + 0.7152 * g + 0.0722 * b;
    const colour = r !== g || g !== b;
    if (name === 'rg' || name === 'g') Object.assign(this.#state, { fill: luminance, fillColour: colour });
    else Object.assign(this.#state, { stroke: luminance, strokeColour: colour });
  }

  #path(name: string, numbers: readonly number[]): boolean {
    if (name === 'm' || name === 'l' || name === 'c') {
      for (let i = 0; i + 1 < numbers.length; i += 2) this.#points.push(apply(this.#state.ctm, numbers[i]!, numbers[i + 1]!));
    } else if (name === 're') {
      const [x = 0, y = 0, w = 0, h = 0] = numbers;
      this.#points.push(apply(this.#state.ctm, x, y), apply(this.#state.ctm, x + w, y + h));
    } else if (PAINT.has(name)) this.#paint(name);
    else return name === 'h';
    return true;
  }

  #paint(name: string): void {
    const xs = this.#points.map(([x]) => x);
    const ys = this.#points.map(([, y]) => this.#height - y);
    this.#points = [];
    if (name === 'n' || xs.length === 0) return;
    const { stroke, fill, line, fillColour, strokeColour } = this.#state;
    const stroked = name === 'S' || name === 's' || name === 'B';
    const box = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
    this.paths.push({
      box,
      line: stroked ? line : 0,
      ink: stroked ? stroke : fill,
      colour: stroked ? strokeColour : fillColour,
      markings: [...this.#markings],
    });
  }

  #textOperator(name: string, operands: readonly Value[], numbers: readonly number[]): boolean {
    if (name === 'BT') this.#text = IDENTITY;
    else if (name === 'Tm') this.#text = numbers as unknown as Matrix;
    else if (name === 'Tf') {
      this.#font = operands[0] instanceof Name ? this.#fonts.get(operands[0].value) : undefined;
      this.#size = numbers[0] ?? 0;
    } else if (name === 'TJ') this.#show(isArray(operands[0]) ? operands[0] : []);
    else if (name === 'Tj') this.#show(operands);
    else return name === 'ET';
    return true;
  }

  #show(parts: readonly Value[]): void {
    const font = this.#font;
    if (!font) throw new Fault('bad-pdf', 'expected a font before text is shown');
    const codes: number[] = [];
    let advance = 0;
    for (const part of parts) {
      if (typeof part === 'number') advance -= part;
      if (!(part instanceof Text)) continue;
      for (let i = 0; i + 1 < part.bytes.length; i += 2) {
        const code = part.bytes.charCodeAt(i) * 256 + part.bytes.charCodeAt(i + 1);
        codes.push(code);
        advance += font.width(code);
      }
    }
    const matrix = multiply(this.#text, this.#state.ctm);
    const [x, y] = apply(matrix, 0, 0);
    const scale = Math.hypot(matrix[0], matrix[1]);
    const size = this.#size * Math.hypot(matrix[2], matrix[3]);
    const width = (advance * this.#size * scale) / 1000;
    const text = codes.map((code) => font.unicode.get(code) ?? '\u0000').join('');
    this.runs.push({
      text,
      x,
      y: this.#height - y,
      width,
      size,
      font,
      codes,
      ink: this.#state.fill,
      colour: this.#state.fillColour,
      markings: [...this.#markings],
    });
  }
}

const PAINT: ReadonlySet<string> = new Set(['S', 's', 'f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'n']);
const IGNORED: ReadonlySet<string> = new Set([
  'd',
  'J',
  'j',
  'M',
  'cs',
  'CS',
  'scn',
  'SCN',
  'sc',
  'SC',
  'gs',
  'ri',
  'i',
  'W',
  'W*',
]);
