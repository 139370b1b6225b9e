import type { Inline } from './inline.ts';

/** A drawing in points, origin top left. `alt` describes it without giving an answer away. */
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
    }
  | {
      readonly kind: 'label';
      readonly label: readonly Inline[];
      readonly x: number;
      readonly y: number;
      readonly anchor: 'start' | 'middle' | 'end';
    };

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
