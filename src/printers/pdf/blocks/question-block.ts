import type { PartBlock, QuestionBlock } from '../../../document/block.ts';
import { box, INK, type Item } from '../item.ts';
import { inner, label, type Room } from '../room.ts';
import { strutAscent } from '../set-lines.ts';
import { KEEP, keepTogether, type Slab, withAbove, withItems } from '../slab.ts';
import { addMark, addTag, type Tag } from '../tag.ts';

/** Cost of turning the page between two parts of a question: as bad as leaving two fifths of a page white. */
const BETWEEN_PARTS = 16;

/** A question: number hanging, stem and data kept with the first part, then its parts. */
export function layQuestion(question: QuestionBlock, room: Room): Slab[] {
  const { pen } = room;
  const { hang, size, step } = pen.measures;
  const tag = addTag(room.tag, 'Sect');
  const mark = addMark(addTag(tag, 'H2'), `Question ${question.number}`);
  const number = label(pen, String(question.number), { x: room.x, y: strutAscent(pen), face: 'strong', size: size.number, mark });
  const text = inner(room, { dx: hang, tag });
  const stem = keepTogether(room.lay(question.stem, text), KEEP);
  const list = question.parts.length > 1 ? addTag(tag, 'L', { numbering: 'LowerAlpha' }) : undefined;
  const parts = question.parts.map((part) => layPart(part, inner(text, { tag: list ?? tag }), list !== undefined));
  const slabs = [...stem, ...parts.flatMap((part, i) => keepTogether(part, i === parts.length - 1 ? 0 : BETWEEN_PARTS))];
  const noted = slabs.map((part) => ({ ...part, note: { ...part.note, code: question.code } }));
  const first = noted[0];
  if (first) noted[0] = { ...first, note: { ...first.note, bookmark: `Question ${question.number}` } };
  return withAbove(withItems(noted, [number]), step * 3.6);
}

/** A part outside a question. */
export function layLonePart(part: PartBlock, room: Room): Slab[] {
  return keepTogether(layPart(part, room, false), 0);
}

/** A part: hanging letter, prompt, answer space, and the marking cell in the right-hand column. Its slabs stay on one page. */
function layPart(part: PartBlock, room: Room, listed: boolean): Slab[] {
  const { pen } = room;
  const { step, size } = pen.measures;
  const item = listed ? addTag(room.tag, 'LI') : room.tag;
  const letterMark = part.letter && listed ? addMark(addTag(item, 'Lbl')) : undefined;
  const body = listed ? addTag(item, 'LBody') : room.tag;
  const [first, ...rest] = part.blocks;
  const opening = first ? room.lay([first], inner(room, { tag: body })) : [];
  const cell = markingCell(part.marks, room, body);
  const slabs = [...opening, ...room.lay(rest, inner(room, { tag: body }))];
  const hanging: Item[] = [...cell];
  if (part.letter) {
    const x = room.x - pen.measures.hang;
    hanging.unshift(
      label(pen, part.letter, {
        x,
        y: strutAscent(pen),
        face: 'strong',
        size: size.text * 1.05,
        ...(letterMark ? { mark: letterMark } : {}),
      }),
    );
  }
  const noted = slabs.map((slab, i) => (i === 0 ? { ...slab, note: { marks: part.marks } } : slab));
  return withAbove(withItems(noted, hanging), step * 2.2);
}

/** The cell where the marker writes the score: a slash and the marks, ruled on its own, at the frame's right edge. */
function markingCell(marks: number, room: Room, tag: Tag): Item[] {
  const { pen } = room;
  const { measures } = pen;
  const width = measures.cells - pen.size * 0.9;
  const left = measures.frame - width;
  const baseline = strutAscent(pen);
  const height = pen.size * 1.75;
  const mark = addMark(addTag(tag, 'P'), marks === 1 ? '1 mark' : `${marks} marks`);
  const text = label(pen, `/ ${marks}`, {
    x: left + width - pen.size * 0.4,
    y: baseline,
    align: 'end',
    size: pen.size * 0.95,
    mark,
  });
  return [box(left, baseline - pen.size * 0.33 - height / 2, width, height, 0.6, INK.rule), text];
}
