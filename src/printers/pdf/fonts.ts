import { create, type Font } from 'fontkit';
import { Fault } from '../../exact/fault.ts';
import { type Coded, type FontProgram, fontProgram, repertoire } from './font-program.ts';
import { type Kerning, readKerning } from './kerning.ts';

/** The cuts of the text family, and the symbol font that steps in where they have no glyph. */
export const FACES = ['regular', 'medium', 'strong', 'italic', 'strongItalic', 'light', 'lightItalic', 'symbol'] as const;
export type Face = (typeof FACES)[number];

/** Where the packages of the product keep each face, below `node_modules`; whoever opens the fonts reads these files. */
export const FONT_FILES: Readonly<Record<Face, string>> = {
  regular: 'source-sans/OTF/SourceSans3-Regular.otf',
  medium: 'source-sans/OTF/SourceSans3-Medium.otf',
  strong: 'source-sans/OTF/SourceSans3-Semibold.otf',
  italic: 'source-sans/OTF/SourceSans3-It.otf',
  strongItalic: 'source-sans/OTF/SourceSans3-SemiboldIt.otf',
  light: 'source-sans/OTF/SourceSans3-Light.otf',
  lightItalic: 'source-sans/OTF/SourceSans3-LightIt.otf',
  symbol: '@expo-google-fonts/stix-two-math/400Regular/STIXTwoMath_400Regular.ttf',
};

/** A word in one face: glyphs with their code points, and kerning, in thousandths of an em. */
export interface Shape {
  readonly glyphs: readonly number[];
  readonly codePoints: readonly number[];
  /** kerning after each glyph; 0 after the last */
  readonly kerns: readonly number[];
  readonly width: number;
  /** the operand that shows it with the codes of the face's repertoire; absent when it has a rarer glyph */
  readonly show?: string;
}

/** Fonts opened once for a process and shared by its documents. Shapes are kept for every word met. */
export interface Fonts {
  /** the fontkit font, opened at first use */
  font(face: Face): Font;
  has(face: Face, codePoint: number): boolean;
  shape(face: Face, text: string): Shape;
  /** glyphs under codes 1, 2, … in every subset of the face */
  repertoire(face: Face): readonly Coded[];
  /** the subset that holds the repertoire and, behind it, these glyphs */
  program(face: Face, extras: readonly Coded[]): FontProgram;
}

/**
 * Opens faces at their first use, so that a document pays only for those it needs.
 * @param read gives the bytes of a face's font file (OTF or TTF); the printer touches no file itself
 */
export function openFonts(read: (face: Face) => Uint8Array): Fonts {
  const opened = new Map<Face, OpenFace>();
  const open = (face: Face): OpenFace => {
    const found = opened.get(face) ?? new OpenFace(read(face), face);
    opened.set(face, found);
    return found;
  };
  return {
    font: (face) => open(face).font,
    has: (face, codePoint) => open(face).has(codePoint),
    shape: (face, text) => open(face).shape(text),
    repertoire: (face) => open(face).repertoire,
    program: (face, extras) => open(face).program(extras),
  };
}

class OpenFace {
  readonly font: Font;
  readonly #face: Face;
  readonly #bytes: Uint8Array;
  readonly #glyphs = new Map<number, { id: number; advance: number } | undefined>();
  readonly #shapes = new Map<string, Shape>();
  readonly #programs = new Map<string, FontProgram>();
  readonly repertoire: readonly Coded[];
  readonly #codes: ReadonlyMap<number, number>;
  #kerning: Kerning | undefined;

  constructor(bytes: Uint8Array, face: Face) {
    this.font = create(bytes);
    this.#bytes = bytes;
    this.#face = face;
    this.repertoire = repertoire(face, this.font);
    this.#codes = new Map(this.repertoire.map(({ glyph }, i) => [glyph, i + 1]));
  }

  has(codePoint: number): boolean {
    return this.#glyph(codePoint) !== undefined;
  }

  shape(text: string): Shape {
    const found = this.#shapes.get(text);
    if (found) return found;
    const shape = this.#work(text);
    this.#shapes.set(text, shape);
    return shape;
  }

  #work(text: string): Shape {
    this.#kerning ??= readKerning(this.#bytes);
    const kerning = this.#kerning;
    const scale = 1000 / this.font.unitsPerEm;
    const codePoints = Array.from(text, (character) => character.codePointAt(0) ?? 0);
    const glyphs = codePoints.map((codePoint) => this.#glyph(codePoint) ?? this.#missing(codePoint));
    const ids = glyphs.map((glyph) => glyph.id);
    const kerns = ids.map((id, i) => (i + 1 < ids.length ? kerning(id, ids[i + 1]!) * scale : 0));
    const width = glyphs.reduce((sum, glyph, i) => sum + glyph.advance * scale + kerns[i]!, 0);
    const shape = { glyphs: ids, codePoints, kerns, width };
    const codes = ids.map((id) => this.#codes.get(id));
    return codes.every((code) => code !== undefined) ? { ...shape, show: showCodes(codes, kerns) } : shape;
  }

  /** Subsets are kept by their extra glyphs; few documents have any. */
  program(extras: readonly Coded[]): FontProgram {
    const key = extras.map(({ glyph }) => glyph).join(' ');
    const found = this.#programs.get(key) ?? fontProgram(this.font, [...this.repertoire, ...extras]);
    if (this.#programs.size > MOST_PROGRAMS) this.#programs.clear();
    this.#programs.set(key, found);
    return found;
  }

  #glyph(codePoint: number): { id: number; advance: number } | undefined {
    if (this.#glyphs.has(codePoint)) return this.#glyphs.get(codePoint);
    const glyph = this.font.hasGlyphForCodePoint(codePoint) ? this.font.glyphForCodePoint(codePoint) : undefined;
    const found = glyph && { id: glyph.id, advance: glyph.advanceWidth };
    this.#glyphs.set(codePoint, found);
    return found;
  }

  #missing(codePoint: number): never {
    throw missingGlyph(codePoint, this.#face);
  }
}

const MOST_PROGRAMS = 20;

/** The operand of TJ: hexadecimal codes, broken where kerning stands between two glyphs. */
export function showCodes(codes: readonly number[], kerns: readonly number[]): string {
  let show = '<';
  for (const [i, code] of codes.entries()) {
    show += code.toString(16).padStart(4, '0');
    const kern = kerns[i] ?? 0;
    if (kern !== 0) show += `>${Math.round(-kern * 100) / 100}<`;
  }
  return `${show}>`;
}

/** A character that no open font can draw; printing it would leave a hole. */
export function missingGlyph(codePoint: number, face: Face): Fault {
  const name = `U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}`;
  const text = String.fromCodePoint(codePoint);
  return new Fault(
    'missing-glyph',
    `expected characters that the fonts hold, found \`${text}\` (${name}), absent from the ${face} face`,
    {
      text,
      at: 0,
      length: text.length,
    },
  );
}

/** Cuts text into stretches by the face that draws them: the wanted face, or the symbol font where that has no glyph. */
export function faceRuns(fonts: Fonts, wanted: Face, text: string): readonly { face: Face; text: string }[] {
  const runs: { face: Face; text: string }[] = [];
  for (const character of text) {
    const codePoint = character.codePointAt(0) ?? 0;
    const face = fonts.has(wanted, codePoint) ? wanted : 'symbol';
    if (face === 'symbol' && !fonts.has('symbol', codePoint)) throw missingGlyph(codePoint, wanted);
    const last = runs.at(-1);
    if (last?.face === face) last.text += character;
    else runs.push({ face, text: character });
  }
  return runs;
}
