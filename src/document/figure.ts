import type { Inline } from './inline.ts';

/**
 * A drawing in points, origin top left, made for labels of `LABEL_SIZE`: a printer enlarges both together. `alt` describes it without
 * giving an answer away.
 */
export interface Figure {
  readonly width: number;
  readonly height: number;
  readonly draw: readonly Primitive[];
  readonly alt: string;
}

export type Primitive =
  | {
      readonly kind: 'path';
      readonly path: readonly Segment[];
      readonly line: number;
      readonly dash?: readonly number[];
      readonly fill?: 'paper' | 'grey' | 'ink';
      /** lines that step back, such as those of a squared grid */
      readonly stroke?: 'grey';
    }
  | {
      readonly kind: 'label';
      readonly label: readonly Inline[];
      /** further lines below the first; the block of lines is centred on `y` */
      readonly below?: readonly (readonly Inline[])[];
      readonly x: number;
      /** half the height of the letters lies above it */
      readonly y: number;
      readonly anchor: 'start' | 'middle' | 'end';
      /** moved from there by so many times its own size, right and down, so that large labels keep clear of what they stand beside */
      readonly nudge?: readonly [right: number, down: number];
      /** the scale whose figure this is, such as `x`; where the figures of a scale do not fit, some are left out */
      readonly scale?: string;
    };

/** Size of the labels, in points, for which figures are drawn. */
export const LABEL_SIZE = 9.7;

export type Segment =
  | { readonly to: 'move' | 'line'; readonly x: number; readonly y: number }
  | {
      readonly to: 'curve';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | { readonly to: 'close' };
