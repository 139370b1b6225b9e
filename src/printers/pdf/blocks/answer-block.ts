import type { AnswerBlock, AnswerSpace } from '../../../document/block.ts';
import { axesFigure, gridFigure } from '../../../document/figures/axes-figure.ts';
import { breakLines, type Line } from '../break-lines.ts';
import { arrowPiece } from '../chemistry-pieces.ts';
import { inlinePieces } from '../inline-pieces.ts';
import { box, dots, INK, type Item } from '../item.ts';
import type { Piece } from '../piece.ts';
import type { Room } from '../room.ts';
import { setLines, strutAscent } from '../set-lines.ts';
import { MM } from '../settings.ts';
import { KEEP, keepTogether, type Slab, slab, stack, withAbove } from '../slab.ts';
import { addTag } from '../tag.ts';
import { layFigure } from './figure-block.ts';
import { layTable } from './table-block.ts';

type Spaces = { readonly [K in AnswerSpace['kind']]: (space: Extract<AnswerSpace, { kind: K }>, room: Room) => Slab[] };

const SPACES: Spaces = {
  lines: ({ count }, room) => ruledLines(count, room),
  working: workingBox,
  equation: equationLines,
  short: shortLines,
  table: ({ table }, room) => layTable(table, room, { grid: true, rowHeight: room.pen.measures.ruled }),
  grid: layGrid,
  none: () => [],
};

/** Room to answer in, of the kind and height that the answer needs. */
export function layAnswer({ space }: AnswerBlock, room: Room): Slab[] {
  const handler = SPACES[space.kind] as ((space: AnswerSpace, room: Room) => Slab[]) | undefined;
  if (!handler) throw new Error(`the PDF printer knows no answer space of kind \`${(space as AnswerSpace).kind}\``);
  return keepTogether(handler(space, room), 0);
}

/** Dotted rules, 8.5 mm apart. */
function ruledLines(count: number, room: Room): Slab[] {
  const { ruled } = room.pen.measures;
  return Array.from({ length: count }, () => slab(ruled, [dots(room.x, ruled - 1, room.width)], { after: KEEP }));
}

/** A squared grid, as large as its squares or its room, told as a figure. */
function layGrid({ across, down, axes }: Extract<AnswerSpace, { kind: 'grid' }>, room: Room): Slab[] {
  const figure = axes ? axesFigure({ ...axes.x, squares: across }, { ...axes.y, squares: down }) : gridFigure(across, down);
  return layFigure({ kind: 'figure', figure }, room);
}

/** Height of the box for working: 25 mm for one mark, 32 mm for three, and a line of writing more for each beyond. */
function boxHeight(marks: number): number {
  return (25 + 3.5 * (Math.min(marks, 3) - 1) + 7 * Math.max(0, marks - 3)) * MM;
}

/** An open box with a light inner margin, ending in an answer line: symbol = …… unit. */
function workingBox(space: Extract<AnswerSpace, { kind: 'working' }>, room: Room): Slab[] {
  const { pen } = room;
  const pad = pen.size * 0.8;
  const inside = room.width - 2 * pad;
  const tag = addTag(room.tag, 'P');
  const answer = stack(setLines(answerLines(space, room, inside), pen, { x: room.x + pad, width: inside, align: 'end' }, tag));
  const height = boxHeight(space.marks) * Math.max(1, pen.size / 14) + answer.height;
  const top = height - answer.height - pad * 0.5;
  const items: Item[] = answer.items.map((item) => ({ ...item, y: item.y + top }));
  const frame = box(room.x, 0, room.width, height, pen.measures.hairline, INK.rule);
  return [slab(height, [frame, ...items], { above: pen.measures.step })];
}

/**
 * `symbol = …… unit`, its gap as wide as there is room for, up to a third of the line. It breaks only before the gap, and only where
 * no gap would be left.
 */
function answerLines(space: Extract<AnswerSpace, { kind: 'working' }>, { pen, width }: Room, inside: number): Line[] {
  const unit = space.unit ? [{ kind: 'quantity' as const, number: '', unit: space.unit }] : [];
  const before = inlinePieces([...space.symbol, { kind: 'text', text: ' =\u00a0' }], pen);
  const after = inlinePieces([{ kind: 'text', text: '\u00a0' }, ...unit], pen);
  const widthOf = (pieces: readonly Piece[]): number => pieces.reduce((sum, piece) => sum + piece.width, 0);
  const wanted = Math.min(width * 0.34, pen.size * 11);
  const left = inside - widthOf(before) - widthOf(after);
  const least = pen.size * 2;
  const gap = inlinePieces([{ kind: 'gap', width: (left < least ? wanted : Math.min(wanted, left)) / pen.size }], pen);
  const rows = left < least ? [before, [...gap, ...after]] : [[...before, ...gap, ...after]];
  return rows.map((pieces) => ({ pieces, width: widthOf(pieces) }));
}

/** Lines for equations with the arrow standing. */
function equationLines(space: Extract<AnswerSpace, { kind: 'equation' }>, room: Room): Slab[] {
  const { pen } = room;
  const { ruled } = pen.measures;
  const arrow = arrowPiece(space.arrow, pen);
  const gap = pen.size * 0.6;
  const left = (room.width - arrow.width) * 0.46;
  const right = room.width - left - arrow.width - 2 * gap;
  return Array.from({ length: space.count }, () => {
    const y = ruled - 1;
    const [line] = setLines(
      [{ pieces: [arrow], width: arrow.width }],
      pen,
      { x: room.x + left + gap, width: arrow.width },
      addTag(room.tag, 'P'),
    );
    const dy = y - strutAscent(pen);
    const items = (line?.items ?? []).map((item) => ({ ...item, y: item.y + dy }));
    return slab(ruled + 2, [dots(room.x, y, left), ...items, dots(room.x + left + arrow.width + 2 * gap, y, right)], {
      after: KEEP,
    });
  });
}

/** Short labelled lines, two abreast where the labels are short. */
function shortLines(space: Extract<AnswerSpace, { kind: 'short' }>, room: Room): Slab[] {
  const { pen } = room;
  const { ruled } = pen.measures;
  const labels = space.labels.map((content) => breakLines(inlinePieces(content, pen), room.width * 0.6));
  const widest = Math.max(...labels.map((lines) => lines[0]?.width ?? 0));
  const columns = space.labels.length > 1 && widest < room.width * 0.24 ? 2 : 1;
  const gutter = pen.size * 1.5;
  const width = (room.width - gutter * (columns - 1)) / columns;
  const rows: Slab[] = [];
  for (let i = 0; i < labels.length; i += columns) {
    const items = labels.slice(i, i + columns).flatMap((lines, column) => {
      const x = room.x + column * (width + gutter);
      const slabs = setLines(lines, pen, { x, width: width * 0.6 }, addTag(room.tag, 'P'));
      const dy = ruled - 1 - strutAscent(pen);
      const start = widest + pen.size * 0.5;
      return [...(slabs[0]?.items ?? []).map((item) => ({ ...item, y: item.y + dy })), dots(x + start, ruled - 1, width - start)];
    });
    rows.push(slab(ruled + 2, items, { after: KEEP }));
  }
  return withAbove(rows, 0);
}
