import { create, type Font } from 'fontkit';
import { type Coded, type FaceMetrics, type FontProgram, fontProgram, metricsOf, repertoire } from './font-program.ts';
import type { Face, Shape } from './fonts.ts';
import { type Kerning, readKerning } from './kerning.ts';
import { missingGlyph } from './missing-glyph.ts';
import { kerningOf, type PreparedFace, programOf } from './prepared-face.ts';
import { readAdvances } from './sfnt.ts';

/** A font file, opened. */
export interface Source {
  readonly font: Font;
  readonly bytes: Uint8Array;
  readonly advance: (glyph: number) => number;
}

interface Glyph {
  readonly id: number;
  /** in font units */
  readonly advance: number;
}

/**
 * One face: its glyphs, shapes and subsets, all kept once worked out. What was prepared beforehand is used as it stands; the font file
 * itself is opened for the rest, and only then.
 */
export class OpenFace {
  readonly metrics: FaceMetrics;
  readonly repertoire: readonly Coded[];
  readonly #face: Face;
  readonly #read: () => Uint8Array;
  readonly #codes: ReadonlyMap<number, number>;
  readonly #prepared: PreparedFace | undefined;
  readonly #glyphs = new Map<number, Glyph | undefined>();
  readonly #shapes = new Map<string, Shape>();
  readonly #programs = new Map<string, FontProgram>();
  #source: Source | undefined;
  #kerning: Kerning | undefined;

  constructor(face: Face, read: () => Uint8Array, prepared?: PreparedFace) {
    this.#face = face;
    this.#read = read;
    this.#prepared = prepared;
    for (const [codePoint, id, advance] of prepared?.glyphs ?? []) this.#glyphs.set(codePoint, { id, advance });
    if (prepared) this.#programs.set('', programOf(prepared));
    this.metrics = prepared?.metrics ?? metricsOf(this.source.font);
    this.repertoire = prepared?.glyphs.map(([codePoint, glyph]) => ({ codePoint, glyph })) ?? repertoire(face, this.source.font);
    this.#codes = new Map(this.repertoire.map(({ glyph }, i) => [glyph, i + 1]));
  }

  get source(): Source {
    this.#source ??= openSource(this.#read());
    return this.#source;
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
    const scale = 1000 / this.metrics.unitsPerEm;
    const codePoints = Array.from(text, (character) => character.codePointAt(0) ?? 0);
    const glyphs = codePoints.map((codePoint) => this.#glyph(codePoint) ?? this.#missing(codePoint));
    const ids = glyphs.map((glyph) => glyph.id);
    const codes = ids.map((id) => this.#codes.get(id));
    const kerning = codes.includes(undefined) ? this.#wholeKerning() : this.kerning;
    const kerns = ids.map((id, i) => (i + 1 < ids.length ? kerning(id, ids[i + 1]!) * scale : 0));
    const width = glyphs.reduce((sum, glyph, i) => sum + glyph.advance * scale + kerns[i]!, 0);
    const shape = { glyphs: ids, codePoints, kerns, width };
    return codes.every((code) => code !== undefined) ? { ...shape, show: showCodes(codes, kerns) } : shape;
  }

  /** Kerning between glyphs of the repertoire. */
  get kerning(): Kerning {
    this.#kerning ??= this.#prepared ? kerningOf(this.#prepared) : readKerning(this.source.bytes);
    return this.#kerning;
  }

  #wholeKerning(): Kerning {
    return this.#prepared ? readKerning(this.source.bytes) : this.kerning;
  }

  /** Subsets are kept by their extra glyphs; few documents have any. */
  program(extras: readonly Coded[]): FontProgram {
    const key = extras.map(({ glyph }) => glyph).join(' ');
    const found = this.#programs.get(key) ?? fontProgram(this.source.font, [...this.repertoire, ...extras], this.source.advance);
    if (this.#programs.size > MOST_PROGRAMS) this.#programs.clear();
    this.#programs.set(key, found);
    return found;
  }

  #glyph(codePoint: number): Glyph | undefined {
    if (this.#glyphs.has(codePoint)) return this.#glyphs.get(codePoint);
    const { font, advance } = this.source;
    const id = font.hasGlyphForCodePoint(codePoint) ? font.glyphForCodePoint(codePoint).id : undefined;
    const found = id === undefined ? undefined : { id, advance: advance(id) };
    this.#glyphs.set(codePoint, found);
    return found;
  }

  #missing(codePoint: number): never {
    throw missingGlyph(codePoint, this.#face);
  }
}

/** Opens a font file. */
export function openSource(bytes: Uint8Array): Source {
  return { font: create(bytes), bytes, advance: readAdvances(bytes) };
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
