import { gcd, lcm } from '../exact/gcd.ts';
import { Rational } from '../exact/rational.ts';
import type { Equation, Term } from './equation.ts';
import type { Formula, SpeciesKey } from './formula.ts';
import { keyOf } from './write-formula.ts';

/** Adds the two equations side by side: left to left, right to right. Nothing is cancelled. */
export function addEquations(augend: Equation, addend: Equation): Equation {
  return { left: [...augend.left, ...addend.left], right: [...augend.right, ...addend.right] };
}

/** Multiplies every coefficient. */
export function scaleEquation(equation: Equation, factor: Rational): Equation {
  const scale = (terms: readonly Term[]) => terms.map((term) => ({ ...term, coefficient: term.coefficient.times(factor) }));
  return { left: scale(equation.left), right: scale(equation.right) };
}

/** Swaps the sides. */
export function reverseEquation(equation: Equation): Equation {
  return { left: equation.right, right: equation.left };
}

/** Net amount of each species, products positive, in order of first appearance; a species that cancels has zero. */
export function netAmounts(equation: Equation): Map<SpeciesKey, { readonly formula: Formula; readonly net: Rational }> {
  const nets = new Map<SpeciesKey, { formula: Formula; net: Rational }>();
  const add = (term: Term, signed: Rational): void => {
    const key = keyOf(term.formula);
    const known = nets.get(key);
    nets.set(key, known ? { formula: known.formula, net: known.net.plus(signed) } : { formula: term.formula, net: signed });
  };
  for (const term of equation.left) add(term, term.coefficient.negate());
  for (const term of equation.right) add(term, term.coefficient);
  return nets;
}

/** Adds up equal species and takes away what stands on both sides. Order is that of first appearance, whatever the states. */
export function cancelEquation(equation: Equation): Equation {
  const net = netAmounts(equation);
  const order = (terms: readonly Term[], sign: 1 | -1): Term[] => {
    const left = new Map<SpeciesKey, Term>();
    for (const { formula } of terms) {
      const found = net.get(keyOf(formula))!.net;
      if (found.sign() === sign) left.set(keyOf(formula), { formula, coefficient: found.abs() });
    }
    return [...left.values()];
  };
  return { left: order(equation.left, -1), right: order(equation.right, 1) };
}

/** The factor that makes all coefficients whole with no common divisor. 1 for an equation without terms. */
export function factorToLowest(equation: Equation): Rational {
  const coefficients = [...equation.left, ...equation.right].map((term) => term.coefficient);
  const denominator = coefficients.reduce((multiple, coefficient) => lcm(multiple, coefficient.d), 1n);
  const divisor = coefficients.reduce((common, { n, d }) => gcd(common, n * (denominator / d)), 0n);
  return divisor === 0n ? Rational.one : Rational.of(denominator, divisor);
}

/** The same equation with whole coefficients in lowest terms. */
export function lowestTerms(equation: Equation): Equation {
  const factor = factorToLowest(equation);
  return factor.equals(Rational.one) ? equation : scaleEquation(equation, factor);
}

/** Coefficient of a species on one side, zero when it does not stand there. */
export function coefficientOf(terms: readonly Term[], key: SpeciesKey): Rational {
  return terms.reduce((sum, term) => (keyOf(term.formula) === key ? sum.plus(term.coefficient) : sum), Rational.zero);
}

/**
 * True when two equations say the same: equal species on equal sides with equal coefficients, in any order, whatever the
 * states.
 */
export function sameEquation(one: Equation, other: Equation): boolean {
  const [a, b] = [amounts(one), amounts(other)];
  return a.size === b.size && [...a].every(([key, coefficient]) => b.get(key)?.equals(coefficient) === true);
}

function amounts(equation: Equation): Map<string, Rational> {
  const found = new Map<string, Rational>();
  for (const [side, terms] of [equation.left, equation.right].entries()) {
    for (const { formula } of terms) found.set(`${side} ${keyOf(formula)}`, coefficientOf(terms, keyOf(formula)));
  }
  return found;
}
