import type { QuestionBlock } from '../../../document/block.ts';
import { inner, label, type Room } from '../room.ts';
import { strutAscent } from '../set-lines.ts';
import { LARGE } from '../settings.ts';
import { KEEP, keepTogether, type Slab, slab, withAbove, withItems } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';
import { layPart } from './part-block.ts';

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
function layStem(question: QuestionBlock, given: Room): Slab[] {
  const { height, margin, size, frame } = given.pen.measures;
  const isLarge = size.text > LARGE;
  // marking cells stand beside parts only; in large print what is given needs their column
  const room = given.sheet && isLarge ? inner(given, { width: frame - given.x }) : given;
  const between = isLarge ? BETWEEN_BLOCKS_LARGE : WITHIN_STEM;
  return question.stem.flatMap((block) => {
    const slabs = room.lay([block], room);
    const total = slabs.reduce((sum, each) => sum + each.height, 0);
    const whole = total > height - margin.top - margin.bottom ? slabs : keepTogether(slabs, WITHIN_STEM);
    return whole.map((each, i) => (i === whole.length - 1 ? { ...each, after: between } : each));
  });
}
