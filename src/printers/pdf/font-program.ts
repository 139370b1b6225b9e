import { deflateSync } from 'node:zlib';
import type { Font } from 'fontkit';
import type { Face } from './fonts.ts';
import { REPERTOIRES } from './repertoires.ts';
import { toUnicode } from './to-unicode.ts';

/** Measures of a whole face that a file states, in font units. */
export interface FaceMetrics {
  readonly name: string;
  readonly unitsPerEm: number;
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  readonly italicAngle: number;
  /** left, bottom, right, top */
  readonly bbox: readonly [number, number, number, number];
}

export function metricsOf(font: Font): FaceMetrics {
  const { postscriptName, unitsPerEm, ascent, descent, capHeight, italicAngle, bbox } = font;
  const box = [bbox.minX, bbox.minY, bbox.maxX, bbox.maxY] as const;
  return { name: postscriptName, unitsPerEm, ascent, descent, capHeight: capHeight || ascent, italicAngle, bbox: box };
}

/** A subset of a face ready to be written into a file. Codes count from 1; code 0 is the glyph for "none". */
export interface FontProgram {
  /** compact font program, deflated */
  readonly file: Uint8Array;
  /** its length before deflating, in bytes */
  readonly length: number;
  readonly outlines: 'cff' | 'truetype';
  /** advances by code, in thousandths of an em */
  readonly widths: readonly number[];
  /** CMap from codes to characters, deflated */
  readonly toUnicode: Uint8Array;
}

/** A glyph of the subset and the character it is read as. */
export interface Coded {
  readonly glyph: number;
  readonly codePoint: number;
}

/**
 * The glyphs every document's subset of a face begins with, in a fixed order. Because they are the same, the costly subsetting is done
 * once for a process; a document with rarer characters adds those behind them and has its own subset made.
 */
export function repertoire(face: Face, font: Font): readonly Coded[] {
  const seen = new Set<number>();
  const coded: Coded[] = [];
  for (const character of REPERTOIRES[face]) {
    const codePoint = character.codePointAt(0) ?? 0;
    if (!font.hasGlyphForCodePoint(codePoint)) continue;
    const glyph = font.glyphForCodePoint(codePoint).id;
    if (!seen.has(glyph)) coded.push({ glyph, codePoint });
    seen.add(glyph);
  }
  return coded;
}

/** Makes the font program that holds these glyphs under codes 1, 2, …; `advance` is in font units. */
export function fontProgram(font: Font, coded: readonly Coded[], advance: (glyph: number) => number): FontProgram {
  const subset = font.createSubset();
  for (const { glyph } of coded) subset.includeGlyph(glyph);
  const bytes = subset.encode();
  const scale = 1000 / font.unitsPerEm;
  const widths = [0, ...coded.map(({ glyph }) => glyph)].map((glyph) => Math.round(advance(glyph) * scale * 100) / 100);
  return {
    file: deflateSync(bytes),
    length: bytes.length,
    outlines: subset.cff ? 'cff' : 'truetype',
    widths,
    toUnicode: deflateSync(toUnicode(coded)),
  };
}
