import { tableOffset, tagAt, viewOf } from './sfnt.ts';

/** What a font file sums up to with its adjustment (OpenType 1.9, table `head`). */
const WHOLE = 0xb1b0afba;

/**
 * A TrueType file with a table `cmap` more, for Unicode on Windows (platform 3, encoding 1), which simple fonts are looked up by.
 * @param bytes a font file without that table
 * @param glyphs code points of the basic plane, each with its glyph
 */
export function sfntWithCmap(bytes: Uint8Array, glyphs: ReadonlyMap<number, number>): Uint8Array {
  const tables = [...tablesOf(bytes), { tag: 'cmap', content: cmapTable(glyphs) }].sort((one, other) =>
    one.tag < other.tag ? -1 : 1,
  );
  const power = 2 ** Math.floor(Math.log2(tables.length));
  const head = [tables.length, power * 16, Math.log2(power), (tables.length - power) * 16];
  const starts: number[] = [];
  let length = 12 + 16 * tables.length;
  for (const { content } of tables) {
    starts.push(length);
    length += Math.ceil(content.length / 4) * 4;
  }
  const file = new Uint8Array(length);
  const view = viewOf(file);
  view.setUint32(0, 0x00010000);
  for (const [at, value] of head.entries()) view.setUint16(4 + 2 * at, value);
  for (const [at, { tag, content }] of tables.entries()) {
    file.set(content, starts[at]!);
    if (tag === 'head') view.setUint32(starts[at]! + 8, 0);
    const record = 12 + 16 * at;
    file.set(Buffer.from(tag, 'latin1'), record);
    const fields = [sumOf(view, starts[at]!, content.length), starts[at]!, content.length];
    for (const [field, value] of fields.entries()) view.setUint32(record + 4 + 4 * field, value);
  }
  view.setUint32(tableOffset(view, 'head')! + 8, (WHOLE - sumOf(view, 0, length)) >>> 0);
  return file;
}

function tablesOf(bytes: Uint8Array): { tag: string; content: Uint8Array }[] {
  const view = viewOf(bytes);
  return Array.from({ length: view.getUint16(4) }, (_, at) => {
    const record = 12 + 16 * at;
    const start = view.getUint32(record + 8);
    return { tag: tagAt(view, record), content: bytes.slice(start, start + view.getUint32(record + 12)) };
  });
}

/** Sum of the words of a table, which are filled up with zeros, without what goes over 32 bits. */
function sumOf(view: DataView, start: number, length: number): number {
  let sum = 0;
  for (let at = start; at < start + length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  return sum;
}

/** Format 4 (OpenType 1.9, table `cmap`): stretches of code points whose glyphs follow one another. */
function cmapTable(glyphs: ReadonlyMap<number, number>): Uint8Array {
  const segments = [...segmentsOf(glyphs), { start: 0xffff, end: 0xffff, delta: 1 }];
  const { length } = segments;
  const power = 2 ** Math.floor(Math.log2(length));
  const values = [
    ...[0, 1, 3, 1, 0, 12],
    ...[4, 16 + 8 * length, 0, 2 * length, 2 * power, Math.log2(power), 2 * (length - power)],
    ...segments.map(({ end }) => end),
    0,
    ...segments.map(({ start }) => start),
    ...segments.map(({ delta }) => delta),
    ...segments.map(() => 0),
  ];
  const table = new Uint8Array(2 * values.length);
  for (const [at, value] of values.entries()) viewOf(table).setUint16(2 * at, value & 0xffff);
  return table;
}

function segmentsOf(glyphs: ReadonlyMap<number, number>): { start: number; end: number; delta: number }[] {
  const segments: { start: number; end: number; delta: number }[] = [];
  for (const [codePoint, glyph] of [...glyphs].sort(([one], [other]) => one - other)) {
    const last = segments.at(-1);
    const delta = glyph - codePoint;
    if (last && last.end === codePoint - 1 && last.delta === delta) last.end = codePoint;
    else segments.push({ start: codePoint, end: codePoint, delta });
  }
  return segments;
}
