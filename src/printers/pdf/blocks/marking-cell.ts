import { box, INK, type Item } from '../item.ts';
import { label, type Room } from '../room.ts';
import { strutAscent } from '../set-lines.ts';
import { cellWidth } from '../settings.ts';
import { addMark, addTag } from '../tag.ts';

/** The cell where the marker writes the score: a slash and the marks, ruled on its own, at the frame's right edge. */
export function markingCell(marks: number, room: Room): Item[] {
  const { pen } = room;
  const { measures } = pen;
  const width = cellWidth(measures);
  const left = measures.frame - width;
  const baseline = strutAscent(pen);
  const height = pen.size * 1.75;
  const mark = addMark(addTag(room.tag, 'P'), marks === 1 ? '1 mark' : `${marks} marks`);
  const text = label(pen, `/ ${marks}`, {
    x: left + width - pen.size * 0.4,
    y: baseline,
    align: 'end',
    size: pen.size * 0.95,
    mark,
  });
  return [box(left, baseline - pen.size * 0.33 - height / 2, width, height, 0.6, INK.rule), text];
}
