import type { PdfFile } from './pdf-file.ts';
import { readCff } from './read-cff.ts';
import type { FontReading } from './read-font.ts';

/** Advances of all glyphs of an embedded font program, in thousandths of an em, by glyph number. */
export function programWidths(file: PdfFile, font: FontReading): readonly number[] | undefined {
  const cff = file.stream(font.descriptor?.get('FontFile3'));
  if (cff) return readCff(cff);
  const truetype = file.stream(font.descriptor?.get('FontFile2'));
  return truetype ? readTrueType(truetype) : undefined;
}

/** From `hhea` and `hmtx` (OpenType 1.9); the last advance stands for all that follow. */
function readTrueType(bytes: Uint8Array): number[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = new Map<string, number>();
  for (let i = 0; i < view.getUint16(4); i++) {
    const record = 12 + 16 * i;
    const tag = String.fromCharCode(...bytes.subarray(record, record + 4));
    tables.set(tag, view.getUint32(record + 8));
  }
  const [head, hhea, hmtx, maxp] = ['head', 'hhea', 'hmtx', 'maxp'].map((tag) => tables.get(tag) ?? 0) as [
    number,
    number,
    number,
    number,
  ];
  const metrics = view.getUint16(hhea + 34);
  const scale = 1000 / view.getUint16(head + 18);
  return Array.from(
    { length: view.getUint16(maxp + 4) },
    (_, glyph) => view.getUint16(hmtx + 4 * Math.min(glyph, metrics - 1)) * scale,
  );
}
