import type { Block, Option } from '../../../document/block.ts';
import { type FieldItem, INK, type PathItem, ring } from '../item.ts';
import { inner, label, type Room, setText } from '../room.ts';
import { strutAscent } from '../set-lines.ts';
import { keepTogether, type Slab, withAbove, withItems } from '../slab.ts';
import { addMark, addTag, type Tag } from '../tag.ts';

/** Options, one a line, each letter in a small ring. */
export function layOptions({ options }: Extract<Block, { kind: 'options' }>, room: Room): Slab[] {
  const { pen } = room;
  const { step, floor } = pen.measures;
  const list = addTag(room.tag, 'L', { numbering: 'UpperAlpha' });
  const radius = pen.size * 0.66;
  const dx = radius * 2 + pen.size * 0.65;
  const size = Math.max(floor, pen.size * 0.78);
  const group = room.fields?.isSilent ? undefined : room.fields?.next('choice of one option');
  const slabs = options.flatMap((option, i) => {
    const item = addTag(list, 'LI');
    const mark = addMark(addTag(item, 'Lbl'), option.right ? `${option.letter}, the answer` : undefined);
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
    const body = addTag(item, 'LBody');
    const choice = group ? [optionField(option.letter, { x: room.x, middle, radius }, group, body)] : [];
    const text = setText(option.content, inner(room, { dx, tag: body }));
    return withAbove(
      withItems(text, [ringOf(option, { x: room.x + radius, middle, radius }), letter, ...choice]),
      i === 0 ? step : step * 0.55,
    );
  });
  return keepTogether(slabs, 0);
}

/** The ring of an option, filled with grey where it is told to be the right one. */
function ringOf({ right }: Option, { x, middle, radius }: { x: number; middle: number; radius: number }): PathItem {
  return right ? { ...ring(x, middle, radius, 1.4, INK.text), fill: FILLED } : ring(x, middle, radius, 0.6, INK.rule);
}

/** Grey that is seen at a glance and lets its letter be read. */
const FILLED = 0.75;

/** The ring of an option as a field: one of its group at most is chosen. */
function optionField(
  letter: string,
  { x, middle, radius }: { readonly x: number; readonly middle: number; readonly radius: number },
  group: { readonly name: string; readonly tip: string },
  body: Tag,
): FieldItem {
  const tip = `${group.tip}: option ${letter}`;
  const option = { letter, group: group.name, groupTip: group.tip };
  const place = { x: x - 1, y: middle - radius - 1, width: 2 * radius + 2, height: 2 * radius + 2 };
  return {
    kind: 'field',
    ...place,
    name: group.name,
    tip,
    lines: 'one',
    size: radius,
    option,
    mark: addMark(addTag(body, 'Form')),
  };
}
