import type { Block } from '../../../document/block.ts';
import { box, INK } from '../item.ts';
import { inner, type Room, setText, smallPen } from '../room.ts';
import { KEEP, keepFirmly, type Slab, slab, stack, withAbove } from '../slab.ts';
import { addTag } from '../tag.ts';
import { layTable } from './table-block.ts';

type Given = Extract<Block, { kind: 'given' }>;

/** What is given, in a lightly ruled block kept whole, its label small at the top. What no page can hold stands without the frame. */
export function layGiven(given: Given, room: Room): Slab[] {
  const { measures } = room.pen;
  const pad = measures.size.text * 0.75;
  const tag = addTag(room.tag, 'Div');
  const slabs = layInside(given, inner(room, { dx: pad, width: room.width - 2 * pad, tag }));
  const body = stack(slabs);
  const height = body.height + pad * 1.5;
  const above = measures.step * 1.4;
  if (height > measures.height - measures.margin.top - measures.margin.bottom) return withAbove(slabs, above);
  const after = given.keeps ? BESIDE : 0;
  const items = body.items.map((item) => ({ ...item, y: item.y + pad * 0.7 }));
  return [slab(height, [box(room.x, 0, room.width, height, measures.hairline, INK.rule), ...items], { above, after })];
}

/** Cost of turning the page behind what belongs to the next block: small where both pages are seen at once. */
const BESIDE = 14;

function layInside(given: Given, room: Room): Slab[] {
  const pen = smallPen(room.pen, 'strong');
  const caption = given.caption
    ? setText([{ kind: 'text', text: given.caption }], inner(room, { pen }), 'P', { leading: 1.2 })
    : [];
  const blocks = given.blocks.flatMap((block, i) => {
    const table = block.kind === 'table';
    const laid = table ? layTable(block, room, { grid: false, rowHeight: 0, framed: true }) : room.lay([block], room);
    return i === 0 ? withAbove(laid, pen.size * (table ? 0.15 : 0.45)) : laid;
  });
  return [...keepFirmly(caption, KEEP), ...blocks];
}
