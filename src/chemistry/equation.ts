import type { Rational } from '../exact/rational.ts';
import type { Formula } from './formula.ts';

/** A coefficient and what it counts. Electrons stand as the formula `e^-`. */
export interface Term {
  readonly coefficient: Rational;
  readonly formula: Formula;
}

/** A balanced or unbalanced chemical equation, left to right. */
export interface Equation {
  readonly left: readonly Term[];
  readonly right: readonly Term[];
}

/** A half-equation as stored: a reduction, electrons on the left, coefficients whole and in lowest terms. */
export interface HalfEquation extends Equation {
  /** electrons taken up, as the equation is written */
  readonly electrons: Rational;
}
