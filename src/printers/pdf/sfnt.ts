/** Offset of a table in a font file (OpenType 1.9, "The OpenType Font File"); undefined when there is none. */
export function tableOffset(view: DataView, tag: string): number | undefined {
  for (let i = 0; i < view.getUint16(4); i++) {
    const record = 12 + i * 16;
    if (tagAt(view, record) === tag) return view.getUint32(record + 8);
  }
  return undefined;
}

export function tagAt(view: DataView, at: number): string {
  return String.fromCharCode(view.getUint8(at), view.getUint8(at + 1), view.getUint8(at + 2), view.getUint8(at + 3));
}

export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

/**
 * Advances straight from `hhea` and `hmtx`, in font units; fontkit would decode each glyph first, a quarter of a millisecond a glyph.
 * @returns advance of a glyph by its number; the last entry stands for all glyphs behind it
 */
export function readAdvances(bytes: Uint8Array): (glyph: number) => number {
  const view = viewOf(bytes);
  const count = view.getUint16((tableOffset(view, 'hhea') ?? 0) + 34);
  const hmtx = tableOffset(view, 'hmtx') ?? 0;
  return (glyph) => view.getUint16(hmtx + 4 * Math.min(glyph, count - 1));
}
