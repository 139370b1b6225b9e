import type { AnswerSpace, Block, Filled } from '../../../document/block.ts';
import type { Inline } from '../../../document/inline.ts';
import { speakInlines, speakQuantity } from '../../../document/spoken.ts';
import type { Line } from '../break-lines.ts';
import { fieldIn } from '../fields.ts';
import { inlinePieces } from '../inline-pieces.ts';
import { box, INK, type Item, shift } from '../item.ts';
import type { Pen, Piece } from '../piece.ts';
import { blanksIn, inner, type Room } from '../room.ts';
import { setLines } from '../set-lines.ts';
import { MM } from '../settings.ts';
import { type Slab, slab, stack } from '../slab.ts';
import { addTag, type Tag } from '../tag.ts';

type Working = Extract<AnswerSpace, { kind: 'working' }>;

/** Height of the box for working: 25 mm for one mark, 32 mm for three, and a line of writing more for each beyond. */
function boxHeight(marks: number): number {
  return (25 + 3.5 * (Math.min(marks, 3) - 1) + 7 * Math.max(0, marks - 3)) * MM;
}

/** An open box with a light inner margin, ending in an answer line: symbol = …… unit. */
export function workingBox(space: Working, room: Room, filled?: Filled): Slab[] {
  const { pen } = room;
  const pad = pen.size * 0.8;
  const inside = room.width - 2 * pad;
  const open = boxHeight(space.marks) * pen.measures.roomy;
  const working = fieldIn(room, 'working', [room.x + 1, 1, room.width - 2, open - pad], 'several');
  const answerPen = fittingPen(space, pen, inside);
  const lines = answerLines(space, { ...room, pen: answerPen }, inside, filled && resultOf(filled, space.unit));
  const written = filled ? workingIn(filled, inner(room, { dx: pad, width: inside }), open - pad) : slab(0, []);
  const setting = { x: room.x + pad, width: inside, align: 'end' as const, ...blanksIn(room, answerWords(space)) };
  const answer = stack(setLines(lines, answerPen, setting, addTag(room.tag, 'P')));
  // working too long even in the smallest print makes its box higher
  const over = Math.max(0, written.height - open + pad);
  const height = open + over + answer.height;
  const top = open + over - pad * 0.5;
  const items: Item[] = [...written.items, ...answer.items.map((item) => ({ ...item, y: item.y + top }))];
  const frame = box(room.x, 0, room.width, height, pen.measures.hairline, INK.rule);
  return [slab(height, [frame, ...working, ...items], { above: pen.measures.step })];
}

/** The pen, made smaller down to the least size of the print where a long formula would leave the box. */
function fittingPen({ symbol }: Working, pen: Pen, inside: number): Pen {
  const width = widthOf(symbolPieces(symbol, pen));
  return width <= inside ? pen : { ...pen, size: Math.max(pen.measures.floor, (pen.size * inside) / width) };
}

const symbolPieces = (symbol: Working['symbol'], pen: Pen): readonly Piece[] =>
  inlinePieces([...symbol, { kind: 'text', text: ' =\u00a0' }], pen);

const widthOf = (pieces: readonly Piece[]): number => pieces.reduce((sum, piece) => sum + piece.width, 0);

/** Working at the largest size at which it is no higher than the box has room for. */
function workingIn({ working, answers }: Filled, room: Room, height: number): Slab {
  const words = answers.slice(1).flatMap(({ content, worked }) => (worked ? [] : [{ kind: 'paragraph', content } as const]));
  const blocks: Block[] = [...(working.length > 0 ? [{ kind: 'working', lines: working } as const] : []), ...words];
  const { floor } = room.pen.measures;
  for (let size = room.pen.size; ; size -= 0.4) {
    const tag: Tag = { type: 'Div', kids: [] };
    const pen = { face: 'strong' as const, size: Math.max(size, floor) };
    const [first, ...rest] = room.lay(blocks, inner(room, { pen, tag }));
    if (!first) return slab(0, []);
    const laid = stack([{ ...first, above: 0 }, ...rest]);
    const dy = room.pen.size * 0.35;
    if (laid.height + dy > height && size > floor) continue;
    room.tag.kids.push(...tag.kids);
    return slab(
      laid.height + dy,
      laid.items.map((item) => shift(item, 0, dy)),
    );
  }
}

/** What stands on the answer line: the unit is printed there already. */
function resultOf({ answers }: Filled, unit: string): readonly Inline[] {
  const content = answers[0]?.content ?? [];
  return content.map((inline) => (inline.kind === 'quantity' && inline.unit === unit ? { ...inline, unit: '' } : inline));
}

/** `answer, E standard cell, in V` */
function answerWords({ symbol, unit }: Working): string {
  return ['answer', speakInlines(symbol), ...(unit ? [`in ${speakQuantity('', unit)}`] : [])].join(', ');
}

/**
 * `symbol = …… unit`, its gap as wide as there is room for, up to a third of the line. It breaks only before the gap, and only where
 * no gap would be left.
 */
function answerLines(space: Working, { pen, width }: Room, inside: number, filled?: readonly Inline[]): Line[] {
  const unit = space.unit ? [{ kind: 'quantity' as const, number: '', unit: space.unit }] : [];
  const before = symbolPieces(space.symbol, pen);
  const after = inlinePieces([{ kind: 'text', text: '\u00a0' }, ...unit], pen);
  const wanted = Math.min(width * 0.34, pen.size * 11);
  const left = inside - widthOf(before) - widthOf(after);
  const least = pen.size * 2;
  const ems = (left < least ? wanted : Math.min(wanted, left)) / pen.size;
  const gap = inlinePieces([{ kind: 'gap', width: ems, ...(filled ? { filled } : {}) }], pen);
  const rows = left < least ? [before, [...gap, ...after]] : [[...before, ...gap, ...after]];
  return rows.map((pieces) => ({ pieces, width: widthOf(pieces) }));
}
