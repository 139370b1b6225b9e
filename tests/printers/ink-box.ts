import type { Ink, PathItem, TextItem } from '../../src/printers/pdf/item.ts';

/** Left, top, right, bottom in points. */
export type Box = readonly [number, number, number, number];

/**
 * Where an item puts ink, near enough to tell whether two things touch: text by the heights of its characters in the text family
 * (em fractions measured from Source Sans 3), paths by their points and half their line.
 */
export function inkBox(item: Ink): Box {
  return item.kind === 'text' ? textBox(item) : pathBox(item);
}

const TALL = 0.7;
const SMALL = 0.5;

function textBox({ x, y, width, size, text }: TextItem): Box {
  const characters = text.trim();
  if (characters === '°') return [x, y - size * 0.69, x + width, y - size * 0.42];
  const small = /^[acemnorsuvwxz\u2212·.,+=]*$/.test(characters);
  const deep = /[gjpqyQ,;()[\]|‖@]/.test(characters);
  return [x, y - size * (small ? SMALL : TALL), x + width, y + size * (deep ? 0.21 : 0.02)];
}

function pathBox(item: PathItem): Box {
  const half = item.line / 2;
  const points = item.path.flatMap((part) => (part.to === 'close' ? [] : [[item.x + part.x, item.y + part.y] as const]));
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs) - half, Math.min(...ys) - half, Math.max(...xs) + half, Math.max(...ys) + half];
}
