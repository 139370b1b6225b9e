import { alongLine } from '../../../document/along-line.ts';
import type { Block, Filled } from '../../../document/block.ts';
import { breakLines } from '../break-lines.ts';
import { inlinePieces } from '../inline-pieces.ts';
import { shift } from '../item.ts';
import type { Pen } from '../piece.ts';
import { inner, type Room } from '../room.ts';
import { setLines } from '../set-lines.ts';
import { type Slab, slab, stack } from '../slab.ts';
import { addTag, type Tag } from '../tag.ts';
import { paragraphsOf } from './filled-rows.ts';

/** Line to line where working has to be packed, as a multiple of its size. */
const PACKED = 1.13;
const STEP = 0.4;

/**
 * Working in a box: at the largest size at which it is no higher than the box has room for, else packed, its fractions along the line.
 * What is too long even so is higher than asked.
 */
export function workingIn(filled: Filled, room: Room, height: number): Slab {
  const { floor } = room.pen.measures;
  for (const set of [openly, packed]) {
    for (let size = room.pen.size; size > floor - STEP; size -= STEP) {
      const tag: Tag = { type: 'Div', kids: [] };
      const pen = { ...room.pen, face: 'strong' as const, size: Math.max(size, floor) };
      const laid = set(filled, inner(room, { pen, tag }), pen);
      const isLast = set === packed && size - STEP <= floor - STEP;
      if (laid.height > height && !isLast) continue;
      room.tag.kids.push(...tag.kids);
      return laid;
    }
  }
  throw new Error('working has no size to be set in');
}

/** As worked answers stand everywhere, their equals signs under one another. */
function openly({ working, answers }: Filled, room: Room): Slab {
  const words = answers.slice(1).flatMap(({ content, worked }) => (worked ? [] : [{ kind: 'paragraph', content } as const]));
  const blocks: Block[] = [...(working.length > 0 ? [{ kind: 'working', lines: working } as const] : []), ...words];
  const [first, ...rest] = room.lay(blocks, room);
  return first ? lowered(stack([{ ...first, above: 0 }, ...rest]), room.pen.size * 0.35) : slab(0, []);
}

function packed({ working, answers }: Filled, room: Room, pen: Pen): Slab {
  const lines = paragraphsOf({ working, answers: answers.slice(1) }).flatMap((each) =>
    setLines(
      breakLines(inlinePieces(alongLine(each), pen), room.width, pen.size),
      pen,
      { x: room.x, width: room.width, indent: pen.size, leading: PACKED },
      addTag(room.tag, 'P'),
    ),
  );
  return lowered(stack(lines), pen.size * 0.1);
}

function lowered({ height, items }: Slab, dy: number): Slab {
  return slab(
    height + dy,
    items.map((item) => shift(item, 0, dy)),
  );
}
