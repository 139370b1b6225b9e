import type { Block } from '../../../document/block.ts';
import { inlinePieces } from '../inline-pieces.ts';
import { box, INK, type Item, rule, shift } from '../item.ts';
import { textWidth } from '../piece.ts';
import { inner, label, type Room, setText, smallPen } from '../room.ts';
import { KEEP, type Slab, slab, stack } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';

type Facts = Extract<Block, { kind: 'strip' }>['facts'];

/** Short facts in a ruled strip: a small label over its value, as many in a row as fit it. */
export function layStrip({ facts }: Extract<Block, { kind: 'strip' }>, room: Room): Slab[] {
  const slabs = packRows(facts, room).map((row) => stripRow(row, room));
  const last = slabs.length - 1;
  return slabs.map((row, i) => ({ ...row, above: i === 0 ? room.pen.measures.step * 1.6 : 0, after: i < last ? KEEP : 0 }));
}

function padding(room: Room): number {
  return room.pen.size * 0.6;
}

function labelSize(room: Room): number {
  return Math.max(room.pen.measures.floor, room.pen.size * 0.74);
}

function naturalWidth(fact: Facts[number], room: Room): number {
  const value = inlinePieces(fact.value, room.pen).reduce((sum, piece) => sum + piece.width, 0);
  const name = textWidth(room.pen.fonts, room.pen.face, labelSize(room), fact.label);
  return Math.max(value, name) + 2 * padding(room) + 1;
}

interface Cell {
  readonly fact: Facts[number];
  readonly width: number;
}

/** Fills row after row with cells of their natural widths. */
function packRows(facts: Facts, room: Room): Cell[][] {
  const rows: Cell[][] = [];
  let left = 0;
  for (const fact of facts) {
    const width = Math.min(naturalWidth(fact, room), room.width);
    const row = rows.at(-1);
    if (row && width <= left) row.push({ fact, width });
    else rows.push([{ fact, width }]);
    left = (row && width <= left ? left : room.width) - width;
  }
  return rows;
}

/** One row; what is left over is shared out equally. */
function stripRow(cells: readonly Cell[], room: Room): Slab {
  const total = cells.reduce((sum, { width }) => sum + width, 0);
  const spare = (room.width - total) / cells.length;
  const items: Item[] = [];
  const edges: number[] = [];
  let x = room.x;
  let height = 0;
  for (const { fact, width } of cells) {
    const cell = stripCell(fact, { ...room, x, width: width + spare });
    items.push(...cell.items);
    height = Math.max(height, cell.height);
    x += width + spare;
    edges.push(x);
  }
  const { hairline } = room.pen.measures;
  const lines = edges.slice(0, -1).map((edge) => rule(edge, 0, 0, height, hairline, INK.rule));
  return slab(height, [box(room.x, 0, room.width, height, hairline, INK.rule), ...lines, ...items]);
}

function stripCell(fact: Facts[number], room: Room): Slab {
  const pad = padding(room);
  const size = labelSize(room);
  const tag = addTag(room.tag, 'P');
  const name = label(smallPen(room.pen), fact.label, { x: room.x + pad, y: pad * 0.5 + size * 0.8, size, mark: addMark(tag) });
  const top = pad * 0.5 + size * 1.15;
  const value = stack(
    setText(fact.value, inner(room, { dx: pad, width: room.width - 2 * pad, tag }), undefined, { leading: 1.25 }),
  );
  return slab(top + value.height + pad * 0.5, [name, ...value.items.map((item) => shift(item, 0, top))]);
}
