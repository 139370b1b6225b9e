import { tableOffset, tagAt, viewOf } from './sfnt.ts';

/** Kerning of a font: the adjustment between two neighbouring glyphs, in font units. */
export type Kerning = (left: number, right: number) => number;

type Subtable = (left: number, right: number) => number | undefined;

/**
 * Reads pair kerning straight from a font's GPOS table (lookup types 2 and 9, pair formats 1 and 2, first glyph's advance only).
 * fontkit would apply it too, but parses the whole table first, 30 ms a font and 0.2 ms a word.
 * @see OpenType 1.9, chapters "GPOS" and "Common Table Formats"
 */
export function readKerning(bytes: Uint8Array): Kerning {
  const view = viewOf(bytes);
  const gpos = tableOffset(view, 'GPOS');
  if (gpos === undefined) return () => 0;
  const lookups = kernLookups(view, gpos).map((lookup) => pairSubtables(view, lookup));
  return (left, right) => {
    let total = 0;
    for (const subtables of lookups) total += firstAnswer(subtables, left, right);
    return total;
  };
}

/** Within one lookup the first subtable that covers the pair answers. */
function firstAnswer(subtables: readonly Subtable[], left: number, right: number): number {
  for (const subtable of subtables) {
    const value = subtable(left, right);
    if (value !== undefined) return value;
  }
  return 0;
}

/** Offsets of the lookups that the default script's `kern` feature names. */
function kernLookups(view: DataView, gpos: number): number[] {
  const features = gpos + view.getUint16(gpos + 6);
  const list = gpos + view.getUint16(gpos + 8);
  for (let i = 0; i < view.getUint16(features); i++) {
    const record = features + 2 + i * 6;
    if (tagAt(view, record) !== 'kern') continue;
    const feature = features + view.getUint16(record + 4);
    const count = view.getUint16(feature + 2);
    return Array.from({ length: count }, (_, n) => list + view.getUint16(list + 2 + 2 * view.getUint16(feature + 4 + 2 * n)));
  }
  return [];
}

function pairSubtables(view: DataView, lookup: number): Subtable[] {
  const found: Subtable[] = [];
  for (let i = 0; i < view.getUint16(lookup + 4); i++) {
    let type = view.getUint16(lookup);
    let at = lookup + view.getUint16(lookup + 6 + 2 * i);
    if (type === 9) {
      type = view.getUint16(at + 2);
      at += view.getUint32(at + 4);
    }
    if (type === 2) found.push(view.getUint16(at) === 1 ? pairsByGlyph(view, at) : pairsByClass(view, at));
  }
  return found;
}

function pairsByGlyph(view: DataView, at: number): Subtable {
  const coverage = readCoverage(view, at + view.getUint16(at + 2));
  const first = view.getUint16(at + 4);
  const size = 2 + 2 * (bits(first) + bits(view.getUint16(at + 6)));
  return (left, right) => {
    const index = coverage.get(left);
    if (index === undefined) return undefined;
    const set = at + view.getUint16(at + 10 + 2 * index);
    let low = 0;
    let high = view.getUint16(set) - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const record = set + 2 + middle * size;
      const glyph = view.getUint16(record);
      if (glyph === right) return advance(view, record + 2, first);
      if (glyph < right) low = middle + 1;
      else high = middle - 1;
    }
    return undefined;
  };
}

function pairsByClass(view: DataView, at: number): Subtable {
  const coverage = readCoverage(view, at + view.getUint16(at + 2));
  const first = view.getUint16(at + 4);
  const size = 2 * (bits(first) + bits(view.getUint16(at + 6)));
  const leftClass = readClasses(view, at + view.getUint16(at + 8));
  const rightClass = readClasses(view, at + view.getUint16(at + 10));
  const columns = view.getUint16(at + 14);
  return (left, right) => {
    if (!coverage.has(left)) return undefined;
    const row = leftClass.get(left) ?? 0;
    const column = rightClass.get(right) ?? 0;
    return advance(view, at + 16 + (row * columns + column) * size, first);
  };
}

/** The horizontal advance of a value record: it follows the placements that the format announces. */
function advance(view: DataView, at: number, format: number): number {
  return format & 4 ? view.getInt16(at + 2 * bits(format & 3)) : 0;
}

function bits(format: number): number {
  let count = 0;
  for (let rest = format; rest; rest &= rest - 1) count++;
  return count;
}

function readCoverage(view: DataView, at: number): Map<number, number> {
  const found = new Map<number, number>();
  const count = view.getUint16(at + 2);
  if (view.getUint16(at) === 1) {
    for (let i = 0; i < count; i++) found.set(view.getUint16(at + 4 + 2 * i), i);
    return found;
  }
  for (let i = 0; i < count; i++) {
    const range = at + 4 + 6 * i;
    const start = view.getUint16(range);
    for (let glyph = start; glyph <= view.getUint16(range + 2); glyph++)
      found.set(glyph, view.getUint16(range + 4) + glyph - start);
  }
  return found;
}

function readClasses(view: DataView, at: number): Map<number, number> {
  const found = new Map<number, number>();
  if (view.getUint16(at) === 1) {
    const start = view.getUint16(at + 2);
    for (let i = 0; i < view.getUint16(at + 4); i++) found.set(start + i, view.getUint16(at + 6 + 2 * i));
    return found;
  }
  for (let i = 0; i < view.getUint16(at + 2); i++) {
    const range = at + 4 + 6 * i;
    for (let glyph = view.getUint16(range); glyph <= view.getUint16(range + 2); glyph++)
      found.set(glyph, view.getUint16(range + 4));
  }
  return found;
}
