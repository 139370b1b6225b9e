import type { FaceMetrics, FontProgram } from './font-program.ts';
import type { Kerning } from './kerning.ts';
import type { OpenFace } from './open-face.ts';

/**
 * What a face gives to most documents, worked out beforehand (when the product is built) and kept as JSON: a fresh process then opens
 * no font file and makes no subset unless a document has rare characters.
 */
export interface PreparedFace {
  readonly metrics: FaceMetrics;
  /** code point, glyph and advance in font units, in the order of the repertoire */
  readonly glyphs: readonly (readonly [number, number, number])[];
  /** left glyph, right glyph and adjustment in font units, for pairs of the repertoire that have one */
  readonly kerns: readonly (readonly [number, number, number])[];
  /** the subset, its bytes in base 64 */
  readonly program: Omit<FontProgram, 'file' | 'toUnicode'> & { readonly file: string; readonly toUnicode: string };
}

/** Works out what can be kept of a face. */
export function prepareFace(face: OpenFace): PreparedFace {
  const { repertoire, kerning, source } = face;
  const kerns = repertoire.flatMap(({ glyph: left }) =>
    repertoire.flatMap(({ glyph: right }): [number, number, number][] => {
      const value = kerning(left, right);
      return value === 0 ? [] : [[left, right, value]];
    }),
  );
  const program = face.program([]);
  return {
    metrics: face.metrics,
    glyphs: repertoire.map(({ codePoint, glyph }) => [codePoint, glyph, source.advance(glyph)]),
    kerns,
    program: { ...program, file: base64(program.file), toUnicode: base64(program.toUnicode) },
  };
}

/** The kept kerning; glyphs are below 65536. */
export function kerningOf({ kerns }: PreparedFace): Kerning {
  const pairs = new Map(kerns.map(([left, right, value]) => [left * 65536 + right, value]));
  return (left, right) => pairs.get(left * 65536 + right) ?? 0;
}

/** The kept subset. */
export function programOf({ program }: PreparedFace): FontProgram {
  return { ...program, file: Buffer.from(program.file, 'base64'), toUnicode: Buffer.from(program.toUnicode, 'base64') };
}

function base64(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('base64');
}
