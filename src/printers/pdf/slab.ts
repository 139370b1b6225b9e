import { type Item, shift } from './item.ts';

/** A page may not turn here. */
export const KEEP = Number.POSITIVE_INFINITY;

/** Cost of turning the page inside what is kept together but is taller than a page: at a place where it comes apart, and where it does not. */
export const TORN = 500;
const FIRM = 5000;

/** What a page must know of the slabs on it. */
export interface Note {
  /** marks of the marking cell that stands here */
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
  /** cost of turning the page here all the same, where no page holds what is kept together; as high as can be when absent */
  readonly tear?: number;
  /** stands over this slab once more where it begins a page: the header row of a table, the letter of a part */
  readonly again?: Slab;
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

/**
 * The same slabs, kept together; the cost after the last is given. Where no page holds them they come apart first where they could before,
 * and last where they were kept already.
 */
export function keepTogether(slabs: readonly Slab[], after: number): Slab[] {
  return slabs.map((part, i) => (i === slabs.length - 1 ? { ...part, after } : { ...part, after: KEEP, tear: tearAfter(part) }));
}

/** The same slabs, kept together even where that means less on a page: a paragraph, a task with its marks. */
export function keepFirmly(slabs: readonly Slab[], after: number): Slab[] {
  return slabs.map((part, i) => (i === slabs.length - 1 ? { ...part, after } : { ...part, after: KEEP, tear: FIRM }));
}

/** Cost of turning the page after a slab that is kept with the next. */
export function tearAfter({ after, tear }: Slab): number {
  return tear ?? (after === KEEP ? FIRM : TORN + 10 * after);
}

/** The same slabs; what is given stands over each but the first where it begins a page, for the eye alone. */
export function withAgain(slabs: readonly Slab[], again: Slab): Slab[] {
  return slabs.map((part, i) => (i === 0 ? part : { ...part, again: part.again ?? again }));
}

/** The same items without their place in the structure: they are seen and not heard. */
export function unmarked({ height, items }: Slab): Slab {
  return slab(
    height,
    items.map(({ mark: _mark, ...item }) => item as Item),
  );
}

/** The first slab with other white above it. */
export function withAbove(slabs: readonly Slab[], above: number): Slab[] {
  return slabs.map((part, i) => (i === 0 ? { ...part, above } : part));
}

/** Adds items to the first slab, such as a letter that hangs beside it. */
export function withItems(slabs: readonly Slab[], items: readonly Item[]): Slab[] {
  return slabs.map((part, i) => (i === 0 ? { ...part, items: [...items, ...part.items] } : part));
}
