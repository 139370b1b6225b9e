import type { Figure } from '../../../document/figure.ts';

export type Box = readonly [left: number, top: number, right: number, bottom: number];

/** True when two boxes share some area. */
export function meet(one: Box, other: Box): boolean {
  const across = Math.min(one[2], other[2]) - Math.max(one[0], other[0]);
  const down = Math.min(one[3], other[3]) - Math.max(one[1], other[1]);
  return across > 0 && down > 0;
}

/** The box around boxes. */
export function boundsOf(boxes: readonly Box[]): Box {
  return [0, 1, 2, 3].map((side) => {
    const edges = boxes.map((box) => box[side]!);
    return side < 2 ? Math.min(...edges) : Math.max(...edges);
  }) as unknown as Box;
}

/** The box around the lines of a drawing. */
export function pathBounds({ draw }: Figure, scale: number): Box {
  const points = draw.flatMap((each) =>
    each.kind === 'path'
      ? each.path.flatMap((part) => (part.to === 'close' ? [] : [[part.x * scale, part.y * scale] as const]))
      : [],
  );
  return boundsOf(points.map(([x, y]) => [x, y, x, y]));
}
