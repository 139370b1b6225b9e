import { inkExtent } from '../../src/readers/ink-extent.ts';
import type { Reading } from '../../src/readers/read-pdf.ts';
import { type Element, isElement } from '../../src/readers/read-structure.ts';

/** In points from the top left of the page. */
export type Box = readonly [left: number, top: number, right: number, bottom: number];

/** What is read in one go on one page: a paragraph, a heading, a cell, a label, a figure. */
export interface Block {
  readonly page: number;
  readonly box: Box;
  readonly text: string;
}

const INLINE: ReadonlySet<string> = new Set(['Formula', 'Span']);

/** The blocks of a file in the order of its structure, with the boxes of what is drawn for them. */
export function blocksInOrder(reading: Reading): Block[] {
  const drawn = contentBoxes(reading);
  const blocks: Block[] = [];
  const visit = (element: Element, owner: Map<number, Block>): void => {
    const own = INLINE.has(element.standard) ? owner : new Map<number, Block>();
    for (const kid of element.kids) {
      if (isElement(kid)) visit(kid, own);
      else for (const { box, text } of drawn.get(`${kid.page} ${kid.mcid}`) ?? []) add(blocks, own, kid.page, box, text);
    }
  };
  for (const kid of reading.structure?.kids ?? []) if (isElement(kid)) visit(kid, new Map());
  return blocks;
}

/** Adds a piece of content to the block that is open on its page. */
function add(blocks: Block[], open: Map<number, Block>, page: number, box: Box, text: string): void {
  const before = open.get(page);
  const block = before ? { page, box: around(before.box, box), text: before.text + text } : { page, box, text };
  if (before) blocks[blocks.indexOf(before)] = block;
  else blocks.push(block);
  open.set(page, block);
}

const around = (a: Box, b: Box): Box => [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[2], b[2]), Math.max(a[3], b[3])];

function contentBoxes({ pages }: Reading): Map<string, { box: Box; text: string }[]> {
  const found = new Map<string, { box: Box; text: string }[]>();
  for (const { number, runs, paths } of pages) {
    const all = [
      ...runs.filter(({ text }) => text.trim()).map((run) => ({ ...run, box: inkExtent(run) })),
      ...paths.map((path) => ({ ...path, text: '' })),
    ];
    for (const { markings, box, text } of all) {
      const mcid = markings.find((each) => each.mcid !== undefined)?.mcid;
      if (mcid === undefined) continue;
      const key = `${number} ${mcid}`;
      found.set(key, [...(found.get(key) ?? []), { box, text }]);
    }
  }
  return found;
}

/**
 * Blocks that are read after one which stands behind them: on a later page, further down in the same column, or further right on the
 * same line. A block that is higher than the one before must stand right of it, in the next column.
 */
export function outOfOrder(blocks: readonly Block[]): string[] {
  return blocks.slice(1).flatMap((block, at) => {
    const before = blocks[at]!;
    if (block.page !== before.page) return block.page > before.page ? [] : [told(before, block)];
    const [left, top, , bottom] = block.box;
    const shared = Math.min(bottom, before.box[3]) - Math.max(top, before.box[1]);
    const beside = shared > 0.4 * Math.min(bottom - top, before.box[3] - before.box[1]);
    const right = left >= before.box[2] - 1;
    const below = top >= before.box[3] - 0.4 * (before.box[3] - before.box[1]) - 1;
    return (beside ? left >= before.box[0] - 1 : below || right) ? [] : [told(before, block)];
  });
}

const told = (before: Block, block: Block): string => `page ${block.page}: »${block.text}« after »${before.text}«`;
