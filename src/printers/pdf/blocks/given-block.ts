import type { Block } from '../../../document/block.ts';
import { box, INK } from '../item.ts';
import { inner, label, type Room, smallPen } from '../room.ts';
import { type Slab, slab, stack, withAbove } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';
import { layTable } from './table-block.ts';

/** What is given, in a lightly ruled block kept whole, its label small at the top. */
export function layGiven(given: Extract<Block, { kind: 'given' }>, room: Room): Slab[] {
  const { measures } = room.pen;
  const pad = measures.size.text * 0.75;
  const tag = addTag(room.tag, 'Div');
  const pen = smallPen(room.pen, 'strong');
  const head = given.caption ? pen.size * 1.05 : 0;
  const caption = given.caption
    ? [label(pen, given.caption, { x: room.x + pad, y: pad * 0.75 + pen.size * 0.72, mark: addMark(addTag(tag, 'P')) })]
    : [];
  const inside = inner(room, { dx: pad, width: room.width - 2 * pad, tag });
  const slabs = given.blocks.flatMap((block, i) => {
    const laid =
      block.kind === 'table' ? layTable(block, inside, { grid: false, rowHeight: 0, framed: true }) : room.lay([block], inside);
    return i === 0 ? withAbove(laid, 0) : laid;
  });
  const body = stack(slabs);
  const top = pad * 0.75 + head + (head ? pad * 0.35 : 0);
  const height = top + body.height + pad * 0.75;
  const items = body.items.map((item) => ({ ...item, y: item.y + top }));
  const frame = box(room.x, 0, room.width, height, measures.hairline, INK.rule);
  return [slab(height, [frame, ...caption, ...items], { above: measures.step * 1.4 })];
}
