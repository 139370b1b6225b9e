import type { Primitive } from '../figure.ts';
import { line } from './shapes.ts';

/** Side of a square, in points: a centimetre. */
export const SQUARE = 28.35;
const FINE = 5;

/** A squared grid: fine lines every fifth of a square, firmer ones between squares. */
export function grid(x: number, y: number, across: number, down: number): Primitive[] {
  const [width, height] = [across * SQUARE, down * SQUARE];
  const upright = steps(across).map(({ at, firm }) => ruled([x + at, y], [x + at, y + height], firm));
  const level = steps(down).map(({ at, firm }) => ruled([x, y + at], [x + width, y + at], firm));
  return [...upright, ...level].sort((a, b) => a.line - b.line);
}

function steps(squares: number): { at: number; firm: boolean }[] {
  return Array.from({ length: squares * FINE + 1 }, (_, n) => ({ at: (n * SQUARE) / FINE, firm: n % FINE === 0 }));
}

function ruled(from: readonly [number, number], to: readonly [number, number], firm: boolean) {
  return line([from, to], { line: firm ? 0.7 : 0.25, stroke: 'grey' });
}
