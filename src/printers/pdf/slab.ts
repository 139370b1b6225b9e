import { type Item, shift } from './item.ts';

/** A page may not turn here. */
export const KEEP = Number.POSITIVE_INFINITY;

/** What a page must know of the slabs on it. */
export interface Note {
  /** marks to be earned in the part that starts here */
  readonly marks?: number;
  /** code of the question that this belongs to */
  readonly code?: string;
  /** title in the outline */
  readonly bookmark?: string;
}

/** A horizontal strip of the page: the unit of pagination. Items are relative to the frame's left edge and the slab's top. */
export interface Slab {
  /** white above, dropped at the top of a page */
  readonly above: number;
  readonly height: number;
  readonly items: readonly Item[];
  /** cost of turning the page after this slab: 0 welcome, KEEP never */
  readonly after: number;
  readonly note?: Note;
  /** always starts a page */
  readonly fresh?: boolean;
}

export function slab(height: number, items: readonly Item[], more: Partial<Slab> = {}): Slab {
  return { above: 0, after: 0, height, items, ...more };
}

/** One slab from several, for what is kept whole and framed. Their notes must be empty. */
export function stack(slabs: readonly Slab[]): Slab {
  const items: Item[] = [];
  let y = 0;
  for (const [i, part] of slabs.entries()) {
    if (i > 0) y += part.above;
    for (const item of part.items) items.push(shift(item, 0, y));
    y += part.height;
  }
  return slab(y, items, { above: slabs[0]?.above ?? 0, after: slabs.at(-1)?.after ?? 0 });
}

/** The same slabs, kept together; the cost after the last is given. */
export function keepTogether(slabs: readonly Slab[], after: number): Slab[] {
  return slabs.map((part, i) => ({ ...part, after: i === slabs.length - 1 ? after : KEEP }));
}

/** The first slab with other white above it. */
export function withAbove(slabs: readonly Slab[], above: number): Slab[] {
  return slabs.map((part, i) => (i === 0 ? { ...part, above } : part));
}

/** Adds items to the first slab, such as a letter that hangs beside it. */
export function withItems(slabs: readonly Slab[], items: readonly Item[]): Slab[] {
  return slabs.map((part, i) => (i === 0 ? { ...part, items: [...items, ...part.items] } : part));
}
