import type { Primitive, Segment } from '../figure.ts';
import type { Inline } from '../inline.ts';

type Path = Extract<Primitive, { kind: 'path' }>;
type Label = Extract<Primitive, { kind: 'label' }>;
type Point = readonly [x: number, y: number];

/** Figure lines are a point wide, so that they survive a copier. */
export const LINE = 1;

/** A line through points. */
export function line(points: readonly Point[], more: Partial<Omit<Path, 'kind' | 'path'>> = {}): Path {
  return { kind: 'path', path: points.map(([x, y], at) => ({ to: at === 0 ? 'move' : 'line', x, y })), line: LINE, ...more };
}

/** A closed shape through points. */
export function shape(points: readonly Point[], more: Partial<Omit<Path, 'kind' | 'path'>> = {}): Path {
  const open = line(points, more);
  return { ...open, path: [...open.path, { to: 'close' }] };
}

export function rectangle(
  x: number,
  y: number,
  width: number,
  height: number,
  more: Partial<Omit<Path, 'kind' | 'path'>> = {},
): Path {
  return shape(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    more,
  );
}

/** Part of a radius at which the control points of a quarter circle stand. */
const KAPPA = 0.5523;

/** A quarter circle from where the pen is to (x, y); it leaves upright or along, whichever `first` says. */
export function corner(from: Point, [x, y]: Point, first: 'upright' | 'along'): Segment {
  const [dx, dy] = [x - from[0], y - from[1]];
  const k = KAPPA;
  return first === 'upright'
    ? { to: 'curve', x1: from[0], y1: from[1] + k * dy, x2: x - k * dx, y2: y, x, y }
    : { to: 'curve', x1: from[0] + k * dx, y1: from[1], x2: x, y2: y - k * dy, x, y };
}

export function circle(x: number, y: number, radius: number, more: Partial<Omit<Path, 'kind' | 'path'>> = {}): Path {
  const [east, south, west, north]: Point[] = [
    [x + radius, y],
    [x, y + radius],
    [x - radius, y],
    [x, y - radius],
  ];
  const path: Segment[] = [
    { to: 'move', x: east![0], y: east![1] },
    corner(east!, south!, 'upright'),
    corner(south!, west!, 'along'),
    corner(west!, north!, 'upright'),
    corner(north!, east!, 'along'),
    { to: 'close' },
  ];
  return { kind: 'path', path, line: LINE, ...more };
}

/** A label of one line, or of several lines centred on a height. */
export function label(
  [first = [], ...below]: readonly (readonly Inline[])[],
  x: number,
  y: number,
  anchor: Label['anchor'] = 'middle',
): Label {
  return { kind: 'label', label: first, ...(below.length > 0 ? { below } : {}), x, y, anchor };
}

/** A label of plain words. */
export function words(text: string, x: number, y: number, anchor: Label['anchor'] = 'middle'): Label {
  return label([[{ kind: 'text', text }]], x, y, anchor);
}

/** The same primitive mirrored at an upright line; labels keep their direction. */
export function mirrored(primitive: Primitive, axis: number): Primitive {
  const flip = (x: number) => 2 * axis - x;
  if (primitive.kind === 'label') {
    const anchor = primitive.anchor === 'middle' ? 'middle' : primitive.anchor === 'start' ? 'end' : 'start';
    const nudge = primitive.nudge ? { nudge: [-primitive.nudge[0], primitive.nudge[1]] as const } : {};
    return { ...primitive, x: flip(primitive.x), anchor, ...nudge };
  }
  const path = primitive.path.map((part): Segment => {
    if (part.to === 'close') return part;
    if (part.to === 'curve') return { ...part, x: flip(part.x), x1: flip(part.x1), x2: flip(part.x2) };
    return { ...part, x: flip(part.x) };
  });
  return { ...primitive, path };
}

/** A figure on a scale. */
export function figure(text: string, scale: string, x: number, y: number, anchor: Label['anchor'] = 'middle'): Label {
  return { ...words(text, x, y, anchor), scale };
}

/** The same label moved by so many times its own size. */
export function nudged(label: Label, right: number, down: number): Label {
  return { ...label, nudge: [right, down] };
}

/** An upright arrow from a height down to another; its head shrinks where there is little way. */
export function arrowDown(x: number, from: number, to: number): Path[] {
  const head = Math.min(7, (to - from) * 0.6);
  const tip: Point[] = [
    [x, to],
    [x - head * 0.4, to - head],
    [x + head * 0.4, to - head],
  ];
  const shaft: Point[] = [
    [x, from],
    [x, to - head],
  ];
  return [line(shaft), shape(tip, { line: 0.5, fill: 'ink' })];
}
