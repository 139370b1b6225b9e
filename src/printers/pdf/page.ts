import type { FieldItem, Ink } from './item.ts';
import type { Tag } from './tag.ts';

/** One page of positioned items, in points from the top left. */
export interface Page {
  /** from 1 */
  readonly number: number;
  readonly width: number;
  readonly height: number;
  /** where ink may stand; the foot is outside its bottom */
  readonly frame: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
  readonly items: readonly Ink[];
  /** places to type in, in the order in which they are read */
  readonly fields: readonly FieldItem[];
  /** red, green and blue of the background; white paper when absent */
  readonly tint?: readonly [number, number, number];
  readonly bookmarks: readonly { readonly title: string; readonly y: number }[];
}

/** A document laid out: pages to draw and the structure their items hang on. */
export interface Laid {
  readonly title: string;
  readonly subject: string;
  readonly language: string;
  readonly pages: readonly Page[];
  readonly root: Tag;
}
