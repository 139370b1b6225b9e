import type { TextRun } from './read-content.ts';

/** Left, top, right, bottom in points from the page's top left. */
export type Box = readonly [number, number, number, number];

const TALL = 0.7;
const SMALL = 0.5;

/**
 * Where a run puts ink, near enough to tell whether two runs touch: heights of characters as fractions of the size, measured from
 * Source Sans 3. A closing space puts none.
 */
export function inkExtent({ text, x, y, width, size }: TextRun): Box {
  const lead = (text.length - text.trimStart().length) * size * SPACE;
  const tail = (text.length - text.trimEnd().length) * size * SPACE;
  const characters = text.trim();
  const [left, right] = [x + lead, x + width - tail];
  if (characters === '°') return [left, y - size * 0.69, right, y - size * 0.42];
  const small = /^[acemnorsuvwxz\u2212·.,+=]*$/.test(characters);
  const deep = /[gjpqyQ,;()[\]|‖@]/.test(characters);
  return [left, y - size * (small ? SMALL : TALL), right, y + size * (deep ? 0.21 : 0.02)];
}

/** Width of a space, in ems. */
const SPACE = 0.2;

/** True when two boxes share more than a hair. */
export function touch([l1, t1, r1, b1]: Box, [l2, t2, r2, b2]: Box): boolean {
  return Math.min(r1, r2) - Math.max(l1, l2) > 0.3 && Math.min(b1, b2) - Math.max(t1, t2) > 0.3;
}
