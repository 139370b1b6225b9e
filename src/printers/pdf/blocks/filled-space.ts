import type { AnswerSpace, Filled, WorkingLine } from '../../../document/block.ts';
import type { Inline } from '../../../document/inline.ts';
import { breakLines } from '../break-lines.ts';
import { arrowPiece } from '../chemistry-pieces.ts';
import { inlinePieces } from '../inline-pieces.ts';
import { type Item, type PathItem, shift } from '../item.ts';
import { joinPieces, type Pen } from '../piece.ts';
import { inner, type Room } from '../room.ts';
import { type Slab, slab, stack } from '../slab.ts';
import { type Rows, type Written, writeOnRows } from './filled-rows.ts';

/**
 * An answer on the dots of its space, which keeps its height and its rules: the very sheet, filled in. The space is laid as for a pupil;
 * its words (an arrow, `blank`) give way to the answer's own.
 */
export function writeOver(bare: readonly Slab[], space: AnswerSpace, filled: Filled, room: Room): Slab[] {
  const pen = { ...room.pen, face: 'strong' as const };
  const rules = bare.map(({ items }) => items.flatMap((item) => (item.kind === 'path' ? [unmarked(item)] : [])));
  const rows = rowsOf(stack(bare.map((each, i) => ({ ...each, items: rules[i]! }))), room);
  const inside = inner(room, { pen });
  const [only] = space.kind === 'equation' && filled.answers.length === 1 ? filled.answers : [];
  const lines = only && onArrow(only.content, rows.first, inside);
  return shared(bare, rules, lines ?? writeOnRows(only ? [only.content] : paragraphsOf(filled), rows, inside), pen);
}

/** The rows that dots make; a frame to type in has as many as would stand in it. */
function rowsOf({ items, height }: Slab, { pen }: Room): Rows {
  const { ruled } = pen.measures;
  const feet = [...new Set(items.flatMap((item) => (item.kind === 'path' && item.dash ? [item.y] : [])))];
  return feet.length > 0
    ? { count: feet.length, pitch: ruled, first: feet[0]! }
    : { count: Math.max(1, Math.round(height / ruled)), pitch: ruled, first: Math.min(height, ruled) - 1 };
}

/** Working as sentences, then the answers that none of it ends in. */
export function paragraphsOf({ working, answers }: Filled): (readonly Inline[])[] {
  return [...working.map(asText), ...answers.flatMap(({ content, worked }) => (worked ? [] : [content]))];
}

function asText({ left, right }: WorkingLine): Inline[] {
  return left.length > 0 ? [...left, { kind: 'text', text: ' = ' }, ...right] : [...right];
}

/** An equation on one line, its arrow where the printed one stands when there is room; nothing when a line is too short for it. */
function onArrow(content: readonly Inline[], foot: number, room: Room): Written[] | undefined {
  const [only] = content;
  if (content.length !== 1 || only?.kind !== 'equation') return undefined;
  const width = joinPieces(room.pen, inlinePieces(content, room.pen)).width;
  if (width > room.width) return undefined;
  const left = joinPieces(
    room.pen,
    inlinePieces([{ ...only, equation: { left: only.equation.left, right: [] } }], room.pen),
  ).width;
  const arrow = arrowPiece(only.arrow, room.pen).width;
  const wanted = (room.width - arrow) * 0.46 + room.pen.size * 0.6 - left;
  const dx = Math.min(Math.max(0, wanted), room.width - width);
  return writeOnRows([content], { count: 1, pitch: room.pen.measures.ruled, first: foot }, inner(room, { dx }));
}

/** Each line of writing with the slab in whose height it stands, the last slab opened for what goes on below it. */
function shared(bare: readonly Slab[], rules: readonly PathItem[][], lines: readonly Written[], pen: Pen): Slab[] {
  let top = 0;
  const laid = bare.map((each, i) => {
    if (i > 0) top += each.above;
    const from = i === 0 ? Number.NEGATIVE_INFINITY : top;
    const to = i === bare.length - 1 ? Number.POSITIVE_INFINITY : top + each.height + (bare[i + 1]?.above ?? 0);
    const own = lines.filter(({ baseline }) => baseline > from && baseline <= to);
    const items: Item[] = own.flatMap((line) => line.items.map((item) => shift(item, 0, -top)));
    const end = Math.max(each.height, ...own.map(({ baseline }) => baseline - top + pen.size * 0.2));
    top += each.height;
    return { ...each, height: end, items: [...rules[i]!, ...items] };
  });
  return laid.length > 0 ? laid : lines.map(({ baseline, items }) => slab(baseline, [...items]));
}

function unmarked({ mark: _mark, ...path }: PathItem): PathItem {
  return path;
}

/** The largest of the sizes, from the pen's to the floor, at which content is no wider than there is room. */
export function sizeFor(content: readonly Inline[], width: number, pen: Pen): number {
  const { floor } = pen.measures;
  for (let size = pen.size; size > floor; size -= 0.4) {
    const set = breakLines(inlinePieces(content, { ...pen, size }), Number.POSITIVE_INFINITY);
    if ((set[0]?.width ?? 0) <= width) return size;
  }
  return Math.min(pen.size, floor);
}
