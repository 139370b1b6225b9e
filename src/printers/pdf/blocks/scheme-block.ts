import type { SchemeBlock, SchemePoint, SchemeSeen, Table } from '../../../document/block.ts';
import type { Inline } from '../../../document/inline.ts';
import { joined } from '../../../document/inlines.ts';
import { box } from '../item.ts';
import { inner, label, type Room, setText, smallPen } from '../room.ts';
import { strutAscent } from '../set-lines.ts';
import { KEEP, keepTogether, type Slab, withAbove, withItems } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';
import { layTable } from './table-block.ts';

const BETWEEN_POINTS = 14;
const BEFORE_SEEN = 8;

/** One part in the mark scheme: label, answer, points to tick, worked lines, and what the marker may see instead. */
export function layScheme(scheme: SchemeBlock, room: Room): Slab[] {
  const { pen } = room;
  const { hang, step, size } = pen.measures;
  const tag = addTag(room.tag, 'Sect');
  const baseline = strutAscent(pen);
  const mark = addMark(addTag(tag, 'H4'), `Part ${scheme.label}`);
  const name = label(pen, scheme.label, { x: room.x, y: baseline, face: 'strong', size: size.heading, mark });
  const count = scheme.marks === 1 ? '1 mark' : `${scheme.marks} marks`;
  const marks = label(smallPen(pen), count, {
    x: room.x + room.width,
    y: baseline,
    align: 'end',
    mark: addMark(addTag(tag, 'P')),
  });
  const text = inner(room, { dx: hang, tag });
  const opening = withItems(layAnswer(scheme.answer, inner(text, { width: text.width - size.text * 5 })), [name, marks]);
  const points = layPoints(scheme.points, text);
  const worked = keepTogether(room.lay(scheme.worked, inner(text, { pen: { face: 'light' } })), BEFORE_SEEN);
  const body = [...keepTogether(opening, KEEP), ...points, ...worked];
  const seen = laySeen(scheme.seen, text);
  const slabs = [
    ...body.map((slab, i) => (i === body.length - 1 ? { ...slab, after: seen.length > 0 ? BEFORE_SEEN : 0 } : slab)),
    ...seen,
  ];
  return withAbove(slabs, step * 2.4);
}

function layAnswer(answer: SchemeBlock['answer'], room: Room): Slab[] {
  const strong = inner(room, { pen: { face: 'strong' } });
  return answer.flatMap((line, i) => withAbove(setText(line, strong, 'P'), i === 0 ? 0 : room.pen.size * 0.15));
}

function layPoints(points: readonly SchemePoint[], room: Room): Slab[] {
  const list = addTag(room.tag, 'L', { numbering: 'None' });
  return points.flatMap((point, i) => {
    const item = addTag(list, 'LI');
    const body = addTag(item, 'LBody');
    return layPoint(point, inner(room, { tag: body })).map((slab, n, all) => {
      const last = n === all.length - 1;
      return { ...slab, after: !last ? KEEP : i === points.length - 2 ? BETWEEN_POINTS * 2 : BETWEEN_POINTS };
    });
  });
}

/** A square to tick, what earns the mark, and in smaller lines what else is right, what is not, and what makes no difference. */
function layPoint(point: SchemePoint, room: Room): Slab[] {
  const { pen } = room;
  const side = pen.size * 0.72;
  const dx = side + pen.size * 0.7;
  const square = box(room.x, strutAscent(pen) - side + pen.size * 0.06, side, side, 0.7, 0.3);
  const text = inner(room, { dx });
  const earns = withItems(setText(point.earns, text, 'P'), [square]);
  const small = inner(text, { pen: { size: pen.measures.size.small } });
  const notes = [
    note('also right', point.also, small),
    note('carries on', point.carries ? [CARRIES] : [], small),
    note('not right', point.not, small),
    note('no difference', point.ignore, small),
    note(
      'already printed',
      point.given?.length ? [[{ kind: 'text', text: `on the ${point.given.join(' and ')} copy` }]] : [],
      small,
    ),
  ];
  return withAbove([...earns, ...notes.flat()], pen.size * 0.35);
}

const CARRIES: readonly Inline[] = [{ kind: 'text', text: 'right work on a wrong figure from above earns this mark' }];

/** A hanging line: lead words in a stronger cut, then the entries; nothing when there are none. */
function note(lead: string, entries: readonly (readonly Inline[])[], room: Room): Slab[] {
  if (entries.length === 0) return [];
  const content: Inline[] = [
    { kind: 'text', text: `${lead.replaceAll(' ', '\u00a0')}  `, weight: 'strong' },
    ...joined(entries, '; '),
  ];
  return setText(content, room, 'P', { indent: room.pen.size, leading: 1.3 });
}

/** What the pupil wrote, what has happened, and the marks it still earns. */
function laySeen(seen: readonly SchemeSeen[], room: Room): Slab[] {
  if (seen.length === 0) return [];
  const text = (words: string): Inline[] => [{ kind: 'text', text: words }];
  const table: Table = {
    kind: 'table',
    summary: 'Wrong answers a marker may see, what has happened, and the marks each still earns',
    header: [text('If you see this'), text('what has happened'), text('marks it still earns')],
    rows: seen.map((row) => [row.wrote, row.happened, row.earns]),
    rowHeaders: false,
    align: ['start', 'start', 'start'],
    widths: [30, 45, 25],
  };
  const slabs = layTable(table, inner(room, { pen: { size: room.pen.measures.size.small } }));
  return slabs.map((slab, i) => ({ ...slab, after: i === 0 ? KEEP : i === slabs.length - 1 ? 0 : 20 }));
}
