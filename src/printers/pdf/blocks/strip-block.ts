import type { Block } from '../../../document/block.ts';
import { box, INK, type Item, rule, shift } from '../item.ts';
import { inner, label, type Room, setText, smallPen } from '../room.ts';
import { type Slab, slab, stack } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';

/** Short facts in a ruled strip: a small label over its value, up to four abreast. */
export function layStrip({ facts }: Extract<Block, { kind: 'strip' }>, room: Room): Slab[] {
  const { measures } = room.pen;
  const columns = Math.min(facts.length, Math.max(1, Math.min(4, Math.floor(room.width / (measures.size.text * 9)))));
  const rows: Slab[] = [];
  for (let i = 0; i < facts.length; i += columns) rows.push(stripRow(facts.slice(i, i + columns), columns, room));
  return rows.map((row, i) => ({
    ...row,
    above: i === 0 ? measures.step * 1.6 : 0,
    after: i < rows.length - 1 ? Number.POSITIVE_INFINITY : 0,
  }));
}

function stripRow(facts: Extract<Block, { kind: 'strip' }>['facts'], columns: number, room: Room): Slab {
  const { measures } = room.pen;
  const pad = measures.size.text * 0.6;
  const width = room.width / columns;
  const small = smallPen(room.pen);
  const size = Math.max(measures.floor, measures.size.text * 0.74);
  const items: Item[] = [];
  let height = 0;
  for (const [i, fact] of facts.entries()) {
    const x = room.x + i * width;
    const tag = addTag(room.tag, 'P');
    items.push(label(small, fact.label, { x: x + pad, y: pad * 0.5 + size * 0.8, size, mark: addMark(tag) }));
    const top = pad * 0.5 + size * 1.15;
    const value = stack(
      setText(fact.value, inner({ ...room, x: x + pad }, { width: width - 2 * pad, tag }), undefined, { leading: 1.25 }),
    );
    items.push(...value.items.map((item) => shift(item, 0, top)));
    height = Math.max(height, top + value.height + pad * 0.5);
  }
  const lines = facts.slice(1).map((_, i) => rule(room.x + (i + 1) * width, 0, 0, height, measures.hairline, INK.rule));
  return slab(height, [box(room.x, 0, room.width, height, measures.hairline, INK.rule), ...lines, ...items]);
}
