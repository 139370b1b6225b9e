import { type Face, type Fonts, faceRuns } from './fonts.ts';
import type { PathItem } from './item.ts';
import { type Measures, SCRIPT_RATIO, scriptSize } from './settings.ts';
import type { TagType } from './tag.ts';

/** With what text is set. */
export interface Pen {
  readonly fonts: Fonts;
  readonly measures: Measures;
  readonly face: Face;
  readonly size: number;
  readonly ink: number;
}

/** What a piece is to a reader who does not see it: its tag, spoken text, and the characters its glyphs stand for. */
export interface Speech {
  readonly type: TagType & ('Formula' | 'Span');
  readonly alt?: string;
  readonly actual?: string;
}

/** Glyphs of one face and size; `x` from the piece's left edge, `rise` above its baseline. */
export interface Run {
  readonly x: number;
  readonly rise: number;
  readonly face: Face;
  readonly size: number;
  readonly text: string;
  readonly width: number;
  readonly ink: number;
}

/** The smallest thing a line is made of: an unbreakable box, or a space where a line may end. */
export interface Piece {
  readonly kind: 'box' | 'space';
  readonly width: number;
  /** ink above and below the baseline */
  readonly ascent: number;
  readonly descent: number;
  readonly runs: readonly Run[];
  /** drawn with it: fraction bars, gaps to fill */
  readonly paths: readonly PathItem[];
  readonly speech?: Speech;
  /** a gap to write in */
  readonly isBlank?: true;
  /** spaces only: how unwelcome a line end is here, 0 for between words */
  readonly cost: number;
}

/** Ink of a line of text above and below its baseline, in ems. */
const ASCENT = 0.72;
const DESCENT = 0.2;

/** Puts runs one behind the other into a box. */
export class BoxBuilder {
  readonly #pen: Pen;
  readonly #runs: Run[] = [];
  readonly #paths: PathItem[] = [];
  #x = 0;
  #ascent = 0;
  #descent = 0;

  constructor(pen: Pen) {
    this.#pen = pen;
  }

  get x(): number {
    return this.#x;
  }

  /** Text at the pen, or in another face, size or height. */
  text(text: string, more: { face?: Face; size?: number; rise?: number } = {}): this {
    const size = Math.max(this.#pen.measures.floor, more.size ?? this.#pen.size);
    const rise = more.rise ?? 0;
    for (const part of faceRuns(this.#pen.fonts, more.face ?? this.#pen.face, text)) {
      const width = textWidth(this.#pen.fonts, part.face, size, part.text);
      this.#runs.push({ x: this.#x, rise, face: part.face, size, text: part.text, width, ink: this.#pen.ink });
      this.#x += width;
    }
    this.reach(rise + size * ASCENT, size * DESCENT - rise);
    return this;
  }

  /** Raised or lowered text: smaller, of a heavier cut where its strokes would be thin beside the text's, at a height that clears its neighbours; scripts that must be large go further out. */
  script(text: string, place: 'above' | 'below'): this {
    const pen = this.#pen;
    const size = scriptSize(pen.measures, pen.size);
    const excess = size / pen.size - SCRIPT_RATIO;
    const rise = pen.size * (place === 'above' ? 0.352 + excess * 0.3 : -0.14 - excess * 0.4);
    const isThin = size < pen.size * NEARLY_AS_LARGE;
    return this.text(text, { face: isThin ? SCRIPT_FACE[pen.face] : pen.face, size, rise });
  }

  skip(width: number): this {
    this.#x += width;
    return this;
  }

  /** Goes back to a place already passed, to stack something over it. */
  back(x: number): this {
    this.#x = x;
    return this;
  }

  /** Takes in a finished piece, moved up by `rise`. */
  piece(piece: Piece, rise = 0): this {
    for (const run of piece.runs) this.#runs.push({ ...run, x: this.#x + run.x, rise: run.rise + rise });
    for (const path of piece.paths) this.#paths.push({ ...path, x: this.#x + path.x, y: path.y - rise });
    this.#x += piece.width;
    return this.reach(piece.ascent + rise, piece.descent - rise);
  }

  path(path: PathItem): this {
    this.#paths.push(path);
    return this;
  }

  reach(ascent: number, descent: number): this {
    this.#ascent = Math.max(this.#ascent, ascent);
    this.#descent = Math.max(this.#descent, descent);
    return this;
  }

  build(speech?: Speech, width = this.#x): Piece {
    const piece: Piece = {
      kind: 'box',
      width,
      ascent: this.#ascent,
      descent: this.#descent,
      runs: this.#runs,
      paths: this.#paths,
      cost: 0,
    };
    return speech ? { ...piece, speech } : piece;
  }
}

/** A script of this share of the text's size, as where no glyph may be small, would read as bold in a heavier cut. */
const NEARLY_AS_LARGE = 0.8;

/** The cut whose strokes, at script size, are nearest to the text's own. */
const SCRIPT_FACE: Readonly<Record<Face, Face>> = {
  light: 'regular',
  regular: 'medium',
  medium: 'strong',
  strong: 'strong',
  italic: 'italic',
  strongItalic: 'strongItalic',
  lightItalic: 'lightItalic',
  symbol: 'symbol',
};

export function textWidth(fonts: Fonts, face: Face, size: number, text: string): number {
  return (wordsWidth(fonts, face, text) * size) / 1000;
}

/** Words are shaped apart from their spaces, as they are drawn, so that a few thousand shapes serve every line. */
function wordsWidth(fonts: Fonts, face: Face, text: string): number {
  if (!text.includes(' ')) return fonts.shape(face, text).width;
  const space = fonts.shape(face, ' ').width;
  return text.split(' ').reduce((sum, word, i) => sum + (i > 0 ? space : 0) + (word ? fonts.shape(face, word).width : 0), 0);
}

/** The slanted cut of the same weight, for physical symbols. */
export const ITALIC_FACE: Readonly<Record<Face, Face>> = {
  ...SCRIPT_FACE,
  light: 'lightItalic',
  regular: 'italic',
  medium: 'italic',
  strong: 'strongItalic',
};

/** A space between words where a line may end; it is drawn, so that a reader finds the words apart. */
export function spacePiece(pen: Pen): Piece {
  const width = textWidth(pen.fonts, pen.face, pen.size, ' ');
  const run: Run = { x: 0, rise: 0, face: pen.face, size: pen.size, text: ' ', width, ink: pen.ink };
  return { kind: 'space', width, ascent: 0, descent: 0, runs: [run], paths: [], cost: 0 };
}

/** White inside something spoken as one, where a line may end at a cost. */
export function gapPiece(width: number, cost: number, speech: Speech): Piece {
  return { kind: 'space', width, ascent: 0, descent: 0, runs: [], paths: [], cost, speech };
}

/** One unbreakable box from pieces in a row. */
export function joinPieces(pen: Pen, pieces: readonly Piece[], speech?: Speech): Piece {
  const builder = new BoxBuilder(pen);
  for (const piece of pieces) builder.piece(piece);
  return builder.build(speech);
}
