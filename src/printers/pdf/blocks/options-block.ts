import type { Block } from '../../../document/block.ts';
import { INK, ring } from '../item.ts';
import { inner, label, type Room, setText } from '../room.ts';
import { strutAscent } from '../set-lines.ts';
import { keepTogether, type Slab, withAbove, withItems } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';

/** Options, one a line, each letter in a small ring. */
export function layOptions({ options }: Extract<Block, { kind: 'options' }>, room: Room): Slab[] {
  const { pen } = room;
  const { step, floor } = pen.measures;
  const list = addTag(room.tag, 'L', { numbering: 'UpperAlpha' });
  const radius = pen.size * 0.66;
  const dx = radius * 2 + pen.size * 0.65;
  const size = Math.max(floor, pen.size * 0.78);
  const slabs = options.flatMap((option, i) => {
    const item = addTag(list, 'LI');
    const mark = addMark(addTag(item, 'Lbl'));
    const baseline = strutAscent(pen);
    const middle = baseline - pen.size * 0.33;
    const letter = label(pen, option.letter, {
      x: room.x + radius,
      y: middle + size * 0.33,
      align: 'middle',
      face: 'strong',
      size,
      mark,
    });
    const text = setText(option.content, inner(room, { dx, tag: addTag(item, 'LBody') }));
    return withAbove(
      withItems(text, [ring(room.x + radius, middle, radius, 0.6, INK.rule), letter]),
      i === 0 ? step : step * 0.55,
    );
  });
  return keepTogether(slabs, 0);
}
