import type { AnswerSpace } from '../../../document/block.ts';
import { arrowPiece } from '../chemistry-pieces.ts';
import { fieldIn, overDots } from '../fields.ts';
import { dots, type Item } from '../item.ts';
import type { Speech } from '../piece.ts';
import type { Room } from '../room.ts';
import { setLines, strutAscent } from '../set-lines.ts';
import { FEW_LINES } from '../settings.ts';
import { KEEP, type Slab, slab } from '../slab.ts';
import { addTag } from '../tag.ts';

/** Lines for equations with the arrow standing; in huge print each side of an equation has a line, and the second begins with the arrow. */
export function equationLines({ arrow, count }: Extract<AnswerSpace, { kind: 'equation' }>, room: Room): Slab[] {
  const { pen, x, width } = room;
  const { ruled } = pen.measures;
  const gives = arrow === 'forward' ? 'gives' : 'in equilibrium with';
  const speech: Speech = { type: 'Span', actual: room.fields ? gives : `blank ${gives} blank` };
  const piece = { ...arrowPiece(arrow, pen), speech };
  const gap = pen.size * 0.6;
  const y = ruled - 1;
  const line = (what: string, from: number, to: number): Item[] => [
    dots(from, y, to - from, pen.size),
    ...fieldIn(room, `equation, ${what} of the arrow`, overDots(from, y, to - from, pen.size)),
  ];
  const arrowAt = (at: number): Item[] => {
    const [set] = setLines([{ pieces: [piece], width: piece.width }], pen, { x: at, width: piece.width }, addTag(room.tag, 'P'));
    return (set?.items ?? []).map((item) => ({ ...item, y: item.y + y - strutAscent(pen) }));
  };
  const right = x + width;
  return Array.from({ length: count }, () => {
    if (pen.size > FEW_LINES) {
      const left = slab(ruled, line('left', x, right), { after: KEEP });
      return [left, slab(ruled + 2, [...arrowAt(x), ...line('right', x + piece.width + gap, right)], { after: KEEP })];
    }
    const middle = x + (width - piece.width) * 0.46 + gap;
    const items = [line('left', x, middle - gap), arrowAt(middle), line('right', middle + piece.width + gap, right)];
    return [slab(ruled + 2, items.flat(), { after: KEEP })];
  }).flat();
}
