import type { Block } from './block.ts';

/** A finished document, ready for any printer. */
export interface Document {
  readonly title: string;
  /** BCP 47, such as `en-GB` */
  readonly language: string;
  readonly subject: string;
  /** `sheet` shows marking cells and a page total in the foot; `scheme` does not */
  readonly kind: 'sheet' | 'scheme';
  readonly foot: string;
  /** a sheet with its answers filled in: laid out just as the sheet, with nothing to type into */
  readonly answered?: true;
  readonly blocks: readonly Block[];
}
