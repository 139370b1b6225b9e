import type { SchemeBlock, SchemePoint, SchemeSeen, Table } from '../../../document/block.ts';
import type { Inline } from '../../../document/inline.ts';
import { joined } from '../../../document/inlines.ts';
import { breakLines } from '../break-lines.ts';
import { inlinePieces } from '../inline-pieces.ts';
import { box, type TextItem } from '../item.ts';
import { inner, label, type Room, setText, smallPen } from '../room.ts';
import { strutAscent } from '../set-lines.ts';
import { FEW_LINES } from '../settings.ts';
import { KEEP, keepTogether, type Slab, withAbove, withItems } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';
import { layStackedTable } from './stacked-table.ts';
import { layTable } from './table-block.ts';

/** Costs of turning the page inside a part, so that it stays in one place where a page can hold it. */
const BETWEEN_POINTS = 40;
const BEFORE_SEEN = 16;
const BETWEEN_SEEN = 24;

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
  return withAbove(slabs, step * 2);
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

/**
 * A square to tick, what earns the mark, and small below it what else is right, what is not, and what makes no difference; at the
 * right end of the line a letter for each copy on which it is printed already.
 */
function layPoint(point: SchemePoint, room: Room): Slab[] {
  const { pen } = room;
  const side = pen.size * 0.72;
  const dx = side + pen.size * 0.7;
  const square = box(room.x, strutAscent(pen) - side + pen.size * 0.06, side, side, 0.7, 0.3);
  const text = inner(room, { dx });
  const words = setText(point.earns, inner(text, { width: text.width - pen.size * 1.5 }), 'P');
  const marker = (point.given ?? []).map((copy, i) => givenMarker(copy, i, room));
  const earns = words.map((line, i) => (i === 0 ? { ...line, items: [square, ...line.items, ...marker] } : line));
  const small = inner(text, { pen: { size: pen.measures.size.small } });
  const notes = [
    note('also right', point.also),
    note('carries on', point.carries ? [[]] : []),
    note('not right', point.not),
    note('no difference', point.ignore),
  ];
  return withAbove([...earns, ...layNotes(notes.flat(), small)], pen.size * 0.3);
}

/** The first letter of a copy, such as c for completion, at the right end of a point that is printed there; read aloud in full. */
function givenMarker(copy: string, place: number, room: Room): TextItem {
  const x = room.x + room.width - place * room.pen.size;
  const mark = addMark(addTag(room.tag, 'P'), `printed on the ${copy} copy`);
  return label(smallPen(room.pen, 'strong'), copy[0]!, { x, y: strutAscent(room.pen), align: 'end', mark });
}

/** Lead words in a stronger cut, then the entries; nothing when there are none. */
function note(lead: string, entries: readonly (readonly Inline[])[]): Inline[][] {
  if (entries.length === 0) return [];
  const words = lead.replaceAll(' ', '\u00a0');
  const told = joined(entries, '; ');
  return [
    [
      { kind: 'text', text: words, weight: 'strong' },
      ...(told.length > 0 ? [{ kind: 'text' as const, text: '  ' }, ...told] : []),
    ],
  ];
}

/** Notes side by side on one line where they fit, else a hanging line each: a scheme is copied for every marker, so lines count. */
function layNotes(notes: readonly (readonly Inline[])[], room: Room): Slab[] {
  const rows: Inline[][] = [];
  for (const each of notes) {
    const beside = joined([...rows.slice(-1), each], '  ·  ');
    if (rows.length > 0 && breakLines(inlinePieces(beside, room.pen), room.width).length === 1) rows[rows.length - 1] = beside;
    else rows.push([...each]);
  }
  return rows.flatMap((row) => setText(row, room, 'P', { indent: room.pen.size, leading: 1.3 }));
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
    widths: [32, 47, 21],
  };
  const small = inner(room, { pen: { size: room.pen.measures.size.small } });
  // three columns of huge print would hold a word each
  if (room.pen.measures.size.text > FEW_LINES) return layStackedTable(table, small);
  const slabs = layTable(table, small);
  // neither the heading nor a single row stands alone
  const last = slabs.length - 1;
  return slabs.map((slab, i) => ({ ...slab, after: i === last ? 0 : i === 0 || i === last - 1 ? KEEP : BETWEEN_SEEN }));
}
