import type { Rational } from '../exact/rational.ts';
import { round } from '../exact/rounding.ts';
import { showNumber } from './show-value.ts';

/** Figures that a number on the way may be given to, beside more of them; fewer lose what a later answer needs. */
const ENOUGH = 3;

/**
 * How else a number of four printed figures may be given: rounded to three, and where nothing is lost with no zero at its end.
 * 7.500 × 10⁻⁴ is right as 7.50 × 10⁻⁴ and as 7.5 × 10⁻⁴, 2.345 × 10⁻³ as 2.35 × 10⁻³ alone.
 */
export function shorterFigures(value: Rational): string[] {
  const exact = [1, 2].filter((sf) => round(value, { sf }).equals(value));
  return [ENOUGH, ...exact.slice(0, 1)].map((sf) => showNumber(value, { sf }));
}
