import { INK, type Item, rule } from '../item.ts';
import type { Room } from '../room.ts';
import { KEEP, type Slab, TORN } from '../slab.ts';
import type { TableStyle } from './table-row.ts';

/** Adds the rules, and says where a page may turn. */
export function withRules(slabs: readonly Slab[], room: Room, widths: readonly number[], style: TableStyle): Slab[] {
  const total = widths.reduce((sum, width) => sum + width, 0);
  const { hairline, step } = room.pen.measures;
  return slabs.map((part, i) => {
    const last = i === slabs.length - 1;
    const firm = i === 0 || last || style.grid;
    const under = last && style.framed ? [] : [rule(room.x, part.height, total, 0, hairline, firm ? INK.rule : INK.faint)];
    const over = i === 0 && !style.framed ? [rule(room.x, 0, total, 0, hairline, INK.rule)] : [];
    const sides = style.grid ? verticals(room.x, widths, part.height, hairline) : [];
    const after = last ? 0 : slabs.length <= 8 || i === 0 || i >= slabs.length - 2 ? KEEP : 20;
    // where no page holds the table, any row but the header may be its last on a page; a single row is not left over
    const tear = TORN * (i === 0 ? HEADER : i === slabs.length - 2 ? 2 : 1);
    return { ...part, items: [...over, ...sides, ...part.items, ...under], above: i === 0 ? step * 1.2 : 0, after, tear };
  });
}

/** A header row without its rows is the worst of all: a heading is rather parted from it. */
const HEADER = 20;

function verticals(x: number, widths: readonly number[], height: number, hairline: number): Item[] {
  const edges = [0];
  for (const width of widths) edges.push(edges.at(-1)! + width);
  return edges.map((edge) => rule(x + edge, 0, 0, height, hairline, INK.rule));
}
