/** One encoding of a table `cmap` (OpenType 1.9): glyphs by code, those that are 0 left out. */
export interface CmapReading {
  readonly platform: number;
  readonly encoding: number;
  readonly glyphs: ReadonlyMap<number, number>;
}

/** All encodings of a TrueType program's `cmap`; none when it has no such table. Only format 4 is read: other formats hold no glyph here. */
export function readCmaps(bytes: Uint8Array): CmapReading[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const table = tableAt(view, 'cmap');
  if (table === undefined) return [];
  return Array.from({ length: view.getUint16(table + 2) }, (_, at) => {
    const record = table + 4 + 8 * at;
    const start = table + view.getUint32(record + 4);
    return {
      platform: view.getUint16(record),
      encoding: view.getUint16(record + 2),
      glyphs: view.getUint16(start) === 4 ? readFormat4(view, start) : new Map<number, number>(),
    };
  });
}

function tableAt(view: DataView, wanted: string): number | undefined {
  for (let at = 0; at < view.getUint16(4); at++) {
    const record = 12 + 16 * at;
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((byte) => view.getUint8(record + byte)));
    if (tag === wanted) return view.getUint32(record + 8);
  }
  return undefined;
}

function readFormat4(view: DataView, start: number): Map<number, number> {
  const size = view.getUint16(start + 6);
  const [ends, starts, deltas, ranges] = [14, 16 + size, 16 + 2 * size, 16 + 3 * size].map((at) => start + at) as [
    number,
    number,
    number,
    number,
  ];
  const glyphs = new Map<number, number>();
  for (let at = 0; at < size; at += 2) {
    const [end, first] = [view.getUint16(ends + at), view.getUint16(starts + at)];
    const [delta, range] = [view.getUint16(deltas + at), view.getUint16(ranges + at)];
    for (let code = first; code <= end && code < 0xffff; code++) {
      const own = range === 0 ? code : view.getUint16(ranges + at + range + 2 * (code - first));
      const glyph = own === 0 ? 0 : (own + delta) & 0xffff;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
  return glyphs;
}
