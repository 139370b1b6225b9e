import type { AnswerSpace, Filled } from '../../../document/block.ts';
import type { Inline } from '../../../document/inline.ts';
import { speakInlines } from '../../../document/spoken.ts';
import { breakLines, type Line } from '../break-lines.ts';
import { fieldIn, overDots } from '../fields.ts';
import { inlinePieces } from '../inline-pieces.ts';
import { dots, type Item, shift } from '../item.ts';
import { inner, type Room } from '../room.ts';
import { setLines, strutAscent } from '../set-lines.ts';
import { KEEP, type Slab, slab, stack, withAbove } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';
import { writeOnRows } from './filled-rows.ts';

interface Labelled {
  readonly content: readonly Inline[];
  readonly lines: readonly Line[];
}

/** Short labelled lines, two abreast where the labels are short; the dots of a column begin under one another. */
export function shortLines({ labels }: Extract<AnswerSpace, { kind: 'short' }>, room: Room, filled?: Filled): Slab[] {
  const { pen } = room;
  const all = labels.map((content): Labelled => ({ content, lines: breakLines(inlinePieces(content, pen), room.width * 0.6) }));
  const columns = all.length > 1 && widest(all) < room.width * 0.24 ? 2 : 1;
  const gutter = pen.size * 1.5;
  const width = (room.width - gutter * (columns - 1)) / columns;
  const starts = Array.from(
    { length: columns },
    (_, at) => widest(all.filter((_each, i) => i % columns === at)) + pen.size * 0.5,
  );
  const rows: Slab[] = [];
  for (let i = 0; i < all.length; i += columns) {
    const cells = all.slice(i, i + columns).map((each, at) => {
      const place = { ...room, x: room.x + at * (width + gutter), width };
      return shortLine(each, place, starts[at]!, filled?.answers[i + at]?.content);
    });
    rows.push(
      slab(
        Math.max(...cells.map(({ height }) => height)),
        cells.flatMap(({ items }) => items),
        { after: KEEP },
      ),
    );
  }
  return withAbove(rows, 0);
}

function widest(labels: readonly Labelled[]): number {
  return Math.max(...labels.flatMap(({ lines }) => lines.map(({ width }) => width)), 0);
}

/** A label, and dots behind its last line. */
function shortLine(
  { content, lines }: Labelled,
  room: Room,
  start: number,
  answer?: readonly Inline[],
): { height: number; items: readonly Item[] } {
  const { pen, x, width } = room;
  const { ruled } = pen.measures;
  const tag = addTag(room.tag, 'P');
  const slabs = setLines(lines, pen, { x, width: width * 0.6 }, tag);
  const label = stack(slabs);
  // dots stand a point above the foot of the row, on the baseline of the last line
  const last = label.height - (slabs.at(-1)?.height ?? 0) + strutAscent(pen);
  const dy = Math.max(ruled - 1 - last, 0);
  const y = dy + last;
  const line = dots(x + start, y, width - start);
  const blank = room.fields || answer ? line : { ...line, mark: addMark(addTag(tag, 'Span'), ' blank') };
  const over = answer ? writtenOver(answer, inner(room, { dx: start, tag }), y) : [];
  const field = fieldIn(room, speakInlines(content), overDots(x + start, y, width - start, pen.size));
  const items = [...label.items.map((item) => shift(item, 0, dy)), blank, ...over, ...field];
  return { height: Math.max(y + 3, dy + label.height), items };
}

/** A short answer on the dots, its last line right over them. */
function writtenOver(answer: readonly Inline[], room: Room, y: number): Item[] {
  const rows = { count: 1, pitch: room.pen.measures.ruled, first: y };
  const lines = writeOnRows([answer], rows, inner({ ...room, sheet: false }, { pen: { face: 'strong' } }));
  return lines.flatMap(({ items }) => items);
}
