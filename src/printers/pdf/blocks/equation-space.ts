import type { AnswerSpace } from '../../../document/block.ts';
import { arrowPiece } from '../chemistry-pieces.ts';
import { fieldIn, overDots } from '../fields.ts';
import { dots } from '../item.ts';
import type { Speech } from '../piece.ts';
import type { Room } from '../room.ts';
import { setLines, strutAscent } from '../set-lines.ts';
import { KEEP, type Slab, slab } from '../slab.ts';
import { addTag } from '../tag.ts';

/** Lines for equations with the arrow standing. */
export function equationLines({ arrow, count }: Extract<AnswerSpace, { kind: 'equation' }>, room: Room): Slab[] {
  const { pen } = room;
  const { ruled } = pen.measures;
  const gives = arrow === 'forward' ? 'gives' : 'in equilibrium with';
  const speech: Speech = { type: 'Span', actual: room.fields ? gives : `blank ${gives} blank` };
  const piece = { ...arrowPiece(arrow, pen), speech };
  const gap = pen.size * 0.6;
  const left = (room.width - piece.width) * 0.46;
  const middle = room.x + left + gap;
  const start = middle + piece.width + gap;
  const right = room.x + room.width - start;
  const y = ruled - 1;
  return Array.from({ length: count }, () => {
    const before = fieldIn(room, 'equation, left of the arrow', overDots(room.x, y, left, pen.size));
    const [line] = setLines(
      [{ pieces: [piece], width: piece.width }],
      pen,
      { x: middle, width: piece.width },
      addTag(room.tag, 'P'),
    );
    const after = fieldIn(room, 'equation, right of the arrow', overDots(start, y, right, pen.size));
    const dy = y - strutAscent(pen);
    const drawn = (line?.items ?? []).map((item) => ({ ...item, y: item.y + dy }));
    return slab(ruled + 2, [dots(room.x, y, left), ...before, ...drawn, dots(start, y, right), ...after], { after: KEEP });
  });
}
