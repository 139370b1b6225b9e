import { Fault } from '../exact/fault.ts';
import { lcm } from '../exact/gcd.ts';
import { Rational } from '../exact/rational.ts';
import type { Equation, HalfEquation } from './equation.ts';
import { addEquations, cancelEquation, factorToLowest, reverseEquation, scaleEquation } from './terms.ts';

/** Two half-equations joined. `equation` = (timesReduction × reduction + timesOxidation × oxidation) ÷ divisor, cancelled. */
export interface Combined {
  readonly equation: Equation;
  /** electrons that pass in the equation as written */
  readonly electrons: Rational;
  /** whole factors that make the electrons equal, before the division */
  readonly timesReduction: Rational;
  readonly timesOxidation: Rational;
  /** common divisor of the cancelled coefficients, 1 when there is none */
  readonly divisor: Rational;
}

/**
 * Joins two half-equations to the overall equation: scales to the least common multiple of the electrons, adds, cancels what
 * stands on both sides, divides by the common divisor.
 * @param oxidation stored as a reduction; it is reversed here
 * @throws Fault `same-couple` when nothing is left
 */
export function combine(reduction: HalfEquation, oxidation: HalfEquation): Combined {
  const shared = Rational.of(lcm(reduction.electrons.n, oxidation.electrons.n));
  const timesReduction = shared.over(reduction.electrons);
  const timesOxidation = shared.over(oxidation.electrons);
  const sum = cancelEquation(
    addEquations(scaleEquation(reduction, timesReduction), scaleEquation(reverseEquation(oxidation), timesOxidation)),
  );
  if (sum.left.length === 0) throw new Fault('same-couple', 'a couple and its own reverse make no reaction', {});
  const factor = factorToLowest(sum);
  const equation = scaleEquation(sum, factor);
  return { equation, electrons: shared.times(factor), timesReduction, timesOxidation, divisor: Rational.one.over(factor) };
}
