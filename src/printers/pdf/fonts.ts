import { create, type Font } from 'fontkit';
import { Fault } from '../../exact/fault.ts';
import { type Kerning, readKerning } from './kerning.ts';

/** The cuts of the text family, and the symbol font that steps in where they have no glyph. */
export const FACES = ['regular', 'medium', 'strong', 'italic', 'light', 'symbol'] as const;
export type Face = (typeof FACES)[number];

/** Font files (OTF or TTF) as read by the caller; the printer touches no file. */
export type FontBytes = Readonly<Record<Face, Uint8Array>>;

/** A word in one face: glyphs with their code points, advances and kerning, in thousandths of an em. */
export interface Shape {
  readonly glyphs: readonly number[];
  readonly codePoints: readonly number[];
  /** advance of each glyph as the font gives it */
  readonly advances: readonly number[];
  /** kerning after each glyph; 0 after the last */
  readonly kerns: readonly number[];
  readonly width: number;
}

/** Fonts opened once for a process and shared by its documents. Shapes are kept for every word met. */
export interface Fonts {
  /** the fontkit font, opened at first use */
  font(face: Face): Font;
  has(face: Face, codePoint: number): boolean;
  shape(face: Face, text: string): Shape;
}

/** Opens the faces lazily; nothing is parsed before it is used. */
export function openFonts(bytes: FontBytes): Fonts {
  const opened = new Map<Face, OpenFace>();
  const open = (face: Face): OpenFace => {
    const found = opened.get(face) ?? new OpenFace(bytes[face], face);
    opened.set(face, found);
    return found;
  };
  return {
    font: (face) => open(face).font,
    has: (face, codePoint) => open(face).has(codePoint),
    shape: (face, text) => open(face).shape(text),
  };
}

class OpenFace {
  readonly font: Font;
  readonly #face: Face;
  readonly #bytes: Uint8Array;
  readonly #glyphs = new Map<number, { id: number; advance: number } | undefined>();
  readonly #shapes = new Map<string, Shape>();
  #kerning: Kerning | undefined;

  constructor(bytes: Uint8Array, face: Face) {
    this.font = create(bytes);
    this.#bytes = bytes;
    this.#face = face;
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
    const advances = glyphs.map((glyph) => glyph.advance * scale);
    const kerns = ids.map((id, i) => (i + 1 < ids.length ? kerning(id, ids[i + 1]!) * scale : 0));
    const width = advances.reduce((sum, advance, i) => sum + advance + kerns[i]!, 0);
    return { glyphs: ids, codePoints, advances, kerns, width };
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
