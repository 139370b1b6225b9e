import type { Block } from '../../document/block.ts';
import type { Inline } from '../../document/inline.ts';
import { breakLines } from './break-lines.ts';
import type { Fields } from './fields.ts';
import type { Face } from './fonts.ts';
import { inlinePieces } from './inline-pieces.ts';
import type { TextItem } from './item.ts';
import { INK } from './item.ts';
import { type Pen, textWidth } from './piece.ts';
import { type Setting, setLines } from './set-lines.ts';
import type { Slab } from './slab.ts';
import { addTag, type Mark, type Tag, type TagType } from './tag.ts';

/** Where a block is laid: a column of the frame, the pen it is written with, and the tag it hangs on. */
export interface Room {
  readonly pen: Pen;
  readonly x: number;
  readonly width: number;
  readonly tag: Tag;
  /** question sheets have a column of marking cells at the right; schemes use the whole frame */
  readonly sheet: boolean;
  /** names fields, on sheets that are filled in on a screen */
  readonly fields?: Fields;
  /** lays blocks in a room; handed in so that handlers do not import their own table */
  readonly lay: (blocks: readonly Block[], room: Room) => Slab[];
}

/** A room inside another: moved, narrowed, with another pen or tag. */
export function inner(
  room: Room,
  more: { dx?: number; width?: number; tag?: Tag; pen?: Partial<Pen>; fields?: Fields | undefined },
): Room {
  const dx = more.dx ?? 0;
  return {
    ...room,
    x: room.x + dx,
    width: more.width ?? room.width - dx,
    tag: more.tag ?? room.tag,
    pen: more.pen ? { ...room.pen, ...more.pen } : room.pen,
    ...(more.fields ? { fields: more.fields } : {}),
  };
}

/** Sets inlines as a block of lines under a tag of its own, or under the room's when `type` is absent. */
export function setText(inlines: readonly Inline[], room: Room, type?: TagType, more: Partial<Setting> = {}): Slab[] {
  const tag = type ? addTag(room.tag, type) : room.tag;
  const lines = breakLines(inlinePieces(inlines, room.pen), room.width, more.indent);
  return setLines(lines, room.pen, { x: room.x, width: room.width, ...blanksIn(room), ...more }, tag);
}

/** How gaps in lines become fields, where there are fields. */
export function blanksIn({ fields }: Room, what = 'blank'): Pick<Setting, 'blank'> {
  return fields && !fields.isSilent ? { blank: () => fields.next(what) } : {};
}

/** A word or two at a fixed place. */
export function label(
  pen: Pen,
  text: string,
  at: { x: number; y: number; align?: 'start' | 'middle' | 'end'; face?: Face; size?: number; ink?: number; mark?: Mark },
): TextItem {
  const face = at.face ?? pen.face;
  const size = Math.max(pen.measures.floor, at.size ?? pen.size);
  const width = textWidth(pen.fonts, face, size, text);
  const x = at.x - width * { start: 0, middle: 0.5, end: 1 }[at.align ?? 'start'];
  const item: TextItem = { kind: 'text', x, y: at.y, face, size, text, width, ink: at.ink ?? pen.ink };
  return at.mark ? { ...item, mark: at.mark } : item;
}

/** The pen for labels and notes that step back. */
export function smallPen(pen: Pen, face: Face = pen.face): Pen {
  return { ...pen, face, size: pen.measures.size.small, ink: INK.soft };
}
