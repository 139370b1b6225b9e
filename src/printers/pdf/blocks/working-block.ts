import type { Block } from '../../../document/block.ts';
import { breakLines } from '../break-lines.ts';
import { inlinePieces } from '../inline-pieces.ts';
import type { Room } from '../room.ts';
import { setLines } from '../set-lines.ts';
import { keepTogether, type Slab, withAbove } from '../slab.ts';
import { addTag } from '../tag.ts';

/** Steps of a worked answer in a lighter cut, their equals signs under one another. */
export function layWorking({ lines }: Extract<Block, { kind: 'working' }>, room: Room): Slab[] {
  const pen = { ...room.pen, face: 'light' as const };
  const lefts = lines.map((line) => inlinePieces(line.left, pen));
  const widest = Math.max(...lefts.map((pieces) => pieces.reduce((sum, piece) => sum + piece.width, 0)));
  const column = Math.min(widest, room.width * 0.45);
  const slabs = lines.flatMap((line, i) => {
    const left = lefts[i] ?? [];
    const own = left.reduce((sum, piece) => sum + piece.width, 0);
    const equals = inlinePieces([{ kind: 'text', text: line.left.length > 0 ? '\u00a0=\u00a0' : '=\u00a0' }], pen);
    const pieces = [...left.map((piece) => ({ ...piece, kind: 'box' as const })), ...equals, ...inlinePieces(line.right, pen)];
    const indent = column - own;
    const hang = own + (equals[0]?.width ?? 0);
    const broken = breakLines(pieces, room.width - indent, hang);
    return setLines(broken, pen, { x: room.x + indent, width: room.width - indent, indent: hang }, addTag(room.tag, 'P'));
  });
  return withAbove(keepTogether(slabs, 30), room.pen.measures.step * 0.6);
}
