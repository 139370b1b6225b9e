import type { Block } from '../../../document/block.ts';
import { breakLines } from '../break-lines.ts';
import { inlinePieces } from '../inline-pieces.ts';
import type { Piece } from '../piece.ts';
import { blanksIn, type Room } from '../room.ts';
import { setLines } from '../set-lines.ts';
import { keepTogether, type Slab, withAbove } from '../slab.ts';
import { addTag } from '../tag.ts';
import { AFTER_EQUALS } from '../text-pieces.ts';

/** True when no box is wider than the lines behind the first, which hang under the right side, and no line ends in an equals sign. */
function fits(pieces: readonly Piece[], room: Room, { indent, hang }: { indent: number; hang: number }): boolean {
  const width = room.width - indent;
  return breakLines(pieces, width, hang).every(
    (line, i) => line.width <= width - (i > 0 ? hang : 0) + 0.01 && line.end?.cost !== AFTER_EQUALS,
  );
}

/** Steps of a worked answer, their equals signs under one another. */
export function layWorking({ lines }: Extract<Block, { kind: 'working' }>, room: Room): Slab[] {
  const { pen } = room;
  const lefts = lines.map((line) => inlinePieces(line.left, pen));
  const widest = Math.max(...lefts.map((pieces) => pieces.reduce((sum, piece) => sum + piece.width, 0)));
  const column = Math.min(widest, room.width * 0.45);
  const slabs = lines.flatMap((line, i) => {
    const left = lefts[i] ?? [];
    const own = left.reduce((sum, piece) => sum + piece.width, 0);
    const equals = inlinePieces([{ kind: 'text', text: line.left.length > 0 ? '\u00a0=\u00a0' : '=\u00a0' }], pen);
    const right = inlinePieces(line.right, pen);
    const whole = [...left.map((piece) => ({ ...piece, kind: 'box' as const })), ...equals, ...right];
    const aligned = { indent: Math.max(0, column - own), hang: own + (equals[0]?.width ?? 0) };
    const fitting = fits(whole, room, aligned);
    const { indent, hang } = fitting ? aligned : { indent: 0, hang: pen.size };
    const pieces = fitting ? whole : [...left, ...inlinePieces([{ kind: 'text', text: ' =\u00a0' }], pen), ...right];
    const lines = breakLines(pieces, room.width - indent, hang);
    return setLines(
      lines,
      pen,
      { x: room.x + indent, width: room.width - indent, indent: hang, ...blanksIn(room) },
      addTag(room.tag, 'P'),
    );
  });
  return withAbove(keepTogether(slabs, 30), room.pen.measures.step * 0.6);
}
