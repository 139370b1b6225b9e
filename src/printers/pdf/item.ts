import type { Segment } from '../../document/figure.ts';
import type { Face } from './fonts.ts';
import type { Mark } from './tag.ts';

/** Something on a page. `x` and `y` are in points from the top left; a mark ties it to the structure, without one it is an artifact. */
export type Item = Ink | FieldItem;

/** Something drawn. */
export type Ink = TextItem | PathItem;

/** One run of text in one face and size; `y` is its baseline. */
export interface TextItem {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly face: Face;
  readonly size: number;
  readonly text: string;
  /** advance without a closing space */
  readonly width: number;
  /** 0 black to 1 white */
  readonly ink: number;
  readonly mark?: Mark;
}

/** A stroked or filled path; its segments are relative to `x` and `y`. */
export interface PathItem {
  readonly kind: 'path';
  readonly x: number;
  readonly y: number;
  readonly path: readonly Segment[];
  /** stroke width; 0 for none */
  readonly line: number;
  readonly ink: number;
  /** grey of the filling; none when absent */
  readonly fill?: number;
  readonly dash?: readonly number[];
  /** round line ends: a dash of 0 then draws dots */
  readonly round?: boolean;
  readonly mark?: Mark;
}

/** A place to type in or to choose at, on sheets that are filled in on a screen. It puts no ink on the page. */
export interface FieldItem {
  readonly kind: 'field';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly name: string;
  /** read out when the field is reached, and shown over it */
  readonly tip: string;
  readonly lines: 'one' | 'several';
  /** of the text that is typed */
  readonly size: number;
  /** an option: its letter, and the group of which one at most is chosen */
  readonly option?: { readonly letter: string; readonly group: string; readonly groupTip: string };
  readonly mark: Mark;
}

/** The same item somewhere else. */
export function shift<T extends Item>(item: T, dx: number, dy: number): T {
  return { ...item, x: item.x + dx, y: item.y + dy };
}

const GREY = { rule: 0.55, faint: 0.72, text: 0, light: 0.22, soft: 0.32 } as const;

/** Greys: rules survive a copier, faint ones frame, soft text steps back yet keeps a contrast above 7 to 1, light text above 10 to 1. */
export const INK = GREY;

export function rule(x: number, y: number, dx: number, dy: number, line = 0.5, ink: number = GREY.rule): PathItem {
  return {
    kind: 'path',
    x,
    y,
    path: [
      { to: 'move', x: 0, y: 0 },
      { to: 'line', x: dx, y: dy },
    ],
    line,
    ink,
  };
}

/** Size of ordinary text, for which dots of 0.9 pt are right. */
const ORDINARY = 10.8;

/** A dotted line to write on, beside text of a size: its dots grow with the text, though more slowly, and are darker in large print. */
export function dots(x: number, y: number, width: number, size: number): PathItem {
  const growth = 1 + 0.6 * Math.max(0, size / ORDINARY - 1);
  const line = 0.9 * growth;
  // large dots keep inside the room
  const inset = (line - 0.9) / 2;
  const ink = growth > 1.1 ? 0.35 : 0.45;
  return { ...rule(x + inset, y, width - 2 * inset, 0, line, ink), dash: [0, 2.6 * growth], round: true };
}

export function box(x: number, y: number, width: number, height: number, line = 0.5, ink: number = GREY.rule): PathItem {
  const path: Segment[] = [
    { to: 'move', x: 0, y: 0 },
    { to: 'line', x: width, y: 0 },
    { to: 'line', x: width, y: height },
    { to: 'line', x: 0, y: height },
    { to: 'close' },
  ];
  return { kind: 'path', x, y, path, line, ink };
}

/** Part of a radius at which the control points of a quarter circle stand. */
const KAPPA = 0.5523;

export function ring(x: number, y: number, radius: number, line = 0.5, ink: number = GREY.rule): PathItem {
  const r = radius;
  const k = KAPPA * r;
  const path: Segment[] = [
    { to: 'move', x: r, y: 0 },
    { to: 'curve', x1: r, y1: k, x2: k, y2: r, x: 0, y: r },
    { to: 'curve', x1: -k, y1: r, x2: -r, y2: k, x: -r, y: 0 },
    { to: 'curve', x1: -r, y1: -k, x2: -k, y2: -r, x: 0, y: -r },
    { to: 'curve', x1: k, y1: -r, x2: r, y2: -k, x: r, y: 0 },
    { to: 'close' },
  ];
  return { kind: 'path', x, y, path, line, ink };
}
