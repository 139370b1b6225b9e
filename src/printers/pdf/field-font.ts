import { deflateSync } from 'node:zlib';
import type PDFDocument from 'pdfkit';
import type { Reference } from 'pdfkit';
import { describedMetrics } from './described-metrics.ts';
import { FIELD_CODES } from './field-codes.ts';
import type { FaceMetrics } from './font-program.ts';
import { metricsOf } from './font-program.ts';
import type { Source } from './open-face.ts';
import { sfntWithCmap } from './sfnt-with-cmap.ts';
import { simpleToUnicode } from './to-unicode.ts';

/** The face of typed text, ready to be written into a file: a simple font, whose codes viewers know how to reach by typing. */
export interface FieldFont {
  readonly metrics: FaceMetrics;
  /** TrueType program, deflated */
  readonly file: Uint8Array;
  /** its length before deflating, in bytes */
  readonly length: number;
  /** advances from the first code to the last, in thousandths of an em */
  readonly widths: readonly number[];
  /** CMap from codes to characters, deflated */
  readonly toUnicode: Uint8Array;
}

/** Makes the subset of a TrueType face that holds what can be typed. */
export function fieldFont({ font, advance }: Source): FieldFont {
  const subset = font.createSubset();
  const glyphs = FIELD_CODES.map(({ codePoint }) => font.glyphForCodePoint(codePoint).id);
  const places = FIELD_CODES.map(
    ({ codePoint, nameCodePoint = codePoint }, at) => [nameCodePoint, subset.includeGlyph(glyphs[at]!)] as const,
  );
  const bytes = sfntWithCmap(subset.encode(), new Map(places));
  const scale = 1000 / font.unitsPerEm;
  return {
    metrics: metricsOf(font),
    file: deflateSync(bytes),
    length: bytes.length,
    widths: glyphs.map((glyph) => Math.round(advance(glyph) * scale * 100) / 100),
    toUnicode: deflateSync(simpleToUnicode(FIELD_CODES)),
  };
}

/** Writes the face into a document. */
export function embedFieldFont(pdf: PDFDocument, { metrics, file, length, widths, toUnicode }: FieldFont): Reference {
  const name = `COUPLZ+${metrics.name}`;
  return object(pdf, {
    Type: 'Font',
    Subtype: 'TrueType',
    BaseFont: name,
    FirstChar: FIELD_CODES[0]!.code,
    LastChar: FIELD_CODES.at(-1)!.code,
    Widths: widths,
    Encoding: { Type: 'Encoding', BaseEncoding: 'WinAnsiEncoding', Differences: differences() },
    ToUnicode: object(pdf, { Filter: 'FlateDecode' }, toUnicode),
    FontDescriptor: object(pdf, {
      Type: 'FontDescriptor',
      FontName: name,
      // not symbolic: glyphs are found by their characters (ISO 32000-1, table 123)
      Flags: 32,
      ...describedMetrics(metrics),
      FontFile2: object(pdf, { Filter: 'FlateDecode', Length1: length }, file),
    }),
  });
}

function differences(): (number | string)[] {
  return FIELD_CODES.flatMap(({ code, name }, at) => {
    if (name === undefined) return [];
    const before = FIELD_CODES[at - 1];
    return before?.name !== undefined && before.code === code - 1 ? [name] : [code, name];
  });
}

function object(pdf: PDFDocument, data: Record<string, unknown>, content?: Uint8Array): Reference {
  const ref = pdf.ref(data);
  ref.end(content);
  return ref;
}
