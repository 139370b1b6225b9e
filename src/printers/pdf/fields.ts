import type { FieldItem, Item } from './item.ts';
import type { Room } from './room.ts';
import { addMark, addTag } from './tag.ts';

/**
 * Names of the fields of a sheet that is filled in on a screen, made as its blocks are laid. A field has a name that no other has
 * (`q2a-1`) and a tooltip that says where it stands and what goes into it; neither tells an answer.
 */
export class Fields {
  readonly #name: string;
  readonly #words: string;
  readonly #taken: Map<string, number>;
  /** room is left as for fields, and none is made: a teacher copy stands beside a sheet that has them */
  readonly isSilent: boolean;

  constructor(isSilent = false, name = 'head', words = '', taken = new Map<string, number>()) {
    this.isSilent = isSilent;
    this.#name = name;
    this.#words = words;
    this.#taken = taken;
  }

  /** The names of a question, or of a part of one. */
  within(name: string, words: string): Fields {
    const isInner = this.#words !== '';
    return new Fields(
      this.isSilent,
      isInner ? this.#name + name : name,
      isInner ? `${this.#words}, ${words}` : words,
      this.#taken,
    );
  }

  next(what: string): { readonly name: string; readonly tip: string } {
    const count = (this.#taken.get(this.#name) ?? 0) + 1;
    this.#taken.set(this.#name, count);
    return { name: `${this.#name}-${count}`, tip: this.#words === '' ? what : `${this.#words}: ${what}` };
  }
}

/** Where a field stands: left, top, width and height in points. */
export type FieldBox = readonly [x: number, y: number, width: number, height: number];

/** Where one line is typed over dots: its letters stand where written ones would. */
export function overDots(x: number, y: number, width: number, size: number): FieldBox {
  return [x, y - size * 1.05, width, size * 1.3];
}

/** A field to type in, under the room's tag; nothing on paper. */
export function fieldIn(room: Room, what: string, [x, y, width, height]: FieldBox, lines: 'one' | 'several' = 'one'): Item[] {
  if (!room.fields || room.fields.isSilent) return [];
  const mark = addMark(addTag(room.tag, 'Form'));
  const item: FieldItem = { kind: 'field', x, y, width, height, ...room.fields.next(what), lines, size: room.pen.size, mark };
  return [item];
}
