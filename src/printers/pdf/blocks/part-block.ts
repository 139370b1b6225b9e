import type { PartBlock } from '../../../document/block.ts';
import { INK, type Item, shift } from '../item.ts';
import { inner, label, type Room } from '../room.ts';
import { strutAscent } from '../set-lines.ts';
import { cellWidth, FEW_LINES, tighter } from '../settings.ts';
import { KEEP, keepFirmly, keepTogether, type Slab, slab, stack, withAbove, withAgain } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';
import { markingCell } from './marking-cell.ts';

/** A part outside a question. */
export function layLonePart(part: PartBlock, room: Room): Slab[] {
  return keepTogether(layPart(part, room, false), 0);
}

/**
 * A part: hanging letter, prompt, answer space, and the marking cell in the right-hand column. Its slabs stay on one page, for which room to
 * write in gives way a little; where no page holds them the letter stands again on the next.
 */
export function layPart(part: PartBlock, given: Room, listed: boolean): Slab[] {
  const { step, size, hang } = given.pen.measures;
  const item = listed ? addTag(given.tag, 'LI') : given.tag;
  const letterMark = part.letter && listed ? addMark(addTag(item, 'Lbl')) : undefined;
  const body = listed ? addTag(item, 'LBody') : given.tag;
  const fields = part.letter === undefined ? given.fields : given.fields?.within(part.letter, `part ${part.letter}`);
  const room = withRoomToWrite(part, inner(given, { tag: body, fields }));
  const slabs = layInside(part, room);
  if (!part.letter) return withAbove(slabs, step * 2.2);
  const place = { x: room.x - hang, y: strutAscent(room.pen), face: 'strong' as const, size: size.text * 1.05 };
  const letter = label(room.pen, part.letter, { ...place, ...(letterMark ? { mark: letterMark } : {}) });
  const lettered = slabs.map((each, i) => (i === 0 ? { ...each, items: [letter, ...each.items] } : each));
  return withAgain(withAbove(lettered, step * 2.2), slab(0, [label(room.pen, part.letter, { ...place, ink: INK.soft })]));
}

/** Shares of the usual room to write in, in print of which a page holds a few lines. */
const SHARES = [1, 0.85, 0.7];

/** The room with as much to write in as lets a page hold the part; what is laid to find out is thrown away. */
function withRoomToWrite(part: PartBlock, room: Room): Room {
  const { measures } = room.pen;
  if (measures.size.text < FEW_LINES) return room;
  const { fields: _fields, ...bare } = room;
  const tries = SHARES.map((share) => ({ ...room.pen, measures: tighter(measures, share) }));
  const holds = (pen: Room['pen']): boolean => {
    const slabs = layInside(part, { ...bare, pen, tag: { type: 'Div', kids: [] } });
    const height = slabs.reduce((sum, each, i) => sum + each.height + (i > 0 ? each.above : 0), 0);
    return height <= measures.height - measures.margin.top - measures.margin.bottom;
  };
  return { ...room, pen: tries.find(holds) ?? room.pen };
}

/** Prompt, marking cell and the rest of a part. The cell stands beside the first line of the prompt or, in huge print, below it. */
function layInside(part: PartBlock, room: Room): Slab[] {
  const { measures, size } = room.pen;
  const [first, ...rest] = part.blocks;
  const beside = measures.cells > 0;
  // where no column is kept free for marking cells, the words beside one give way to it
  const taken = beside && !room.sheet ? cellWidth(measures) + measures.size.text : 0;
  const prompt = first ? room.lay([first], inner(room, { width: room.width - taken })) : [];
  const opening = beside && prompt.length > 0 ? [stack(prompt)] : prompt;
  // A part that is printed in full, as an example to complete, has no marks to give.
  const cell = part.marks === 0 ? [] : markingCell(part.marks, room);
  const note = { marks: part.marks };
  const down = (items: readonly Item[]) => items.map((each) => shift(each, 0, size * 0.32));
  const below = beside || cell.length === 0 ? [] : [slab(size * 2, down(cell), { above: measures.step * 0.3, note })];
  const [head, ...others] = opening;
  const task = beside && head ? [{ ...head, items: [...head.items, ...cell], note }, ...others] : [...opening, ...below];
  return [...keepFirmly(task, rest.length > 0 ? KEEP : 0), ...room.lay(rest, room)].map((each, i) =>
    i === task.length - 1 ? { ...each, tear: TASK_FROM_ANSWER } : each,
  );
}

/** Cost of parting a task from the room to answer it, where no page holds both. */
const TASK_FROM_ANSWER = 600;
