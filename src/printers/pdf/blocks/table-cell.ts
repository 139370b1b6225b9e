import type { Inline } from '../../../document/inline.ts';
import { type Room, setText } from '../room.ts';
import { type Slab, slab, stack } from '../slab.ts';

/** The content of one cell as a single slab; the room's tag is the cell's own. */
export function layCell(content: readonly Inline[], room: Room, align: 'start' | 'middle' | 'end'): Slab {
  const lines = setText(content, room, undefined, { align, leading: 1.28 });
  return lines.length > 0 ? stack(lines) : slab(room.pen.size * 1.28, []);
}
