import type { PartBlock, QuestionBlock } from '../../../document/block.ts';
import { box, INK, type Item, shift } from '../item.ts';
import { inner, label, type Room } from '../room.ts';
import { strutAscent } from '../set-lines.ts';
import { cellWidth, LARGE } from '../settings.ts';
import { KEEP, keepTogether, type Slab, slab, stack, withAbove, withItems } from '../slab.ts';
import { addMark, addTag, type Tag } from '../tag.ts';

/** Cost of turning the page between two parts of a question: as bad as leaving two fifths of a page white. */
const BETWEEN_PARTS = 16;
/** Cost of turning it inside a stem or before the first part: only when no page holds both, or between its blocks in large print. */
const WITHIN_STEM = 500;
const BETWEEN_BLOCKS_LARGE = 60;

/** A question: number hanging, stem and data kept with the first part, then its parts. */
export function layQuestion(question: QuestionBlock, room: Room): Slab[] {
  const { pen } = room;
  const { hang, size, step } = pen.measures;
  const tag = addTag(room.tag, 'Sect');
  const mark = addMark(addTag(tag, 'H2'), `Question ${question.number}`);
  const number = label(pen, String(question.number), { x: room.x, y: strutAscent(pen), face: 'strong', size: size.number, mark });
  const fields = room.fields?.within(`q${question.number}`, `Question ${question.number}`);
  const text = inner(room, { dx: hang, tag, fields });
  const crowded = question.stem.length === 0 && question.parts[0]?.letter !== undefined;
  const stem = crowded ? [slab(pen.size * 1.2, [], { after: KEEP })] : layStem(question, text);
  const list = question.parts.length > 1 ? addTag(tag, 'L', { numbering: 'LowerAlpha' }) : undefined;
  const parts = question.parts.map((part) => layPart(part, inner(text, { tag: list ?? tag }), list !== undefined));
  const slabs = [...stem, ...parts.flatMap((part, i) => keepTogether(part, i === parts.length - 1 ? 0 : BETWEEN_PARTS))];
  const noted = slabs.map((part) => ({ ...part, note: { ...part.note, code: question.code } }));
  const first = noted[0];
  if (first) noted[0] = { ...first, note: { ...first.note, bookmark: `Question ${question.number}` } };
  return withAbove(withItems(noted, [number]), step * 3.6);
}

/** Stem and data, kept with one another and with the first part wherever a page can hold them. */
function layStem(question: QuestionBlock, room: Room): Slab[] {
  const { height, margin, size } = room.pen.measures;
  const between = size.text > LARGE ? BETWEEN_BLOCKS_LARGE : WITHIN_STEM;
  return question.stem.flatMap((block) => {
    const slabs = room.lay([block], room);
    const total = slabs.reduce((sum, each) => sum + each.height, 0);
    const whole = total > height - margin.top - margin.bottom ? slabs : keepTogether(slabs, WITHIN_STEM);
    return whole.map((each, i) => (i === whole.length - 1 ? { ...each, after: between } : each));
  });
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
  const fields = part.letter === undefined ? room.fields : room.fields?.within(part.letter, `part ${part.letter}`);
  const beside = pen.measures.cells > 0;
  // where no column is kept free for marking cells, the words beside one give way to it
  const taken = beside && !room.sheet ? cellWidth(pen.measures) + size.text : 0;
  const prompt = first ? room.lay([first], inner(room, { tag: body, width: room.width - taken, fields })) : [];
  const opening = beside && prompt.length > 0 ? [stack(prompt)] : prompt;
  // A part that is printed in full, as an example to complete, has no marks to give.
  const cell = part.marks === 0 ? [] : markingCell(part.marks, room, body);
  const below =
    beside || cell.length === 0
      ? []
      : [
          slab(
            pen.size * 2,
            cell.map((each) => shift(each, 0, pen.size * 0.32)),
            { above: step * 0.3 },
          ),
        ];
  const slabs = [...opening, ...below, ...room.lay(rest, inner(room, { tag: body, fields }))];
  const marked = letterMark ? { mark: letterMark } : {};
  const place = { x: room.x - pen.measures.hang, y: strutAscent(pen), face: 'strong' as const, size: size.text * 1.05 };
  const letter = part.letter ? [label(pen, part.letter, { ...place, ...marked })] : [];
  const withCell = beside ? besideOpening(slabs, cell) : slabs;
  const noted = withCell.map(
    (each, i): Slab => (i === 0 ? { ...each, note: { marks: part.marks }, items: [...letter, ...each.items] } : each),
  );
  return withAbove(noted, step * 2.2);
}

/** Puts a cell beside the first line of the prompt, yet behind its words: it is read after them. */
function besideOpening([opening, ...rest]: readonly Slab[], cell: readonly Item[]): Slab[] {
  return opening ? [{ ...opening, items: [...opening.items, ...cell] }, ...rest] : [];
}

/** The cell where the marker writes the score: a slash and the marks, ruled on its own, at the frame's right edge. */
function markingCell(marks: number, room: Room, tag: Tag): Item[] {
  const { pen } = room;
  const { measures } = pen;
  const width = cellWidth(measures);
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
