import { Rational } from '../exact/rational.ts';
import { composition } from './composition.ts';
import type { Equation, Term } from './equation.ts';

/** What is out of balance: component (element symbol, or `charge`) to right minus left. Balanced equations give an empty map. */
export function misfit(equation: Equation): ReadonlyMap<string, Rational> {
  const sums = new Map<string, Rational>();
  const add = (term: Term, sign: 1 | -1): void => {
    for (const [component, count] of composition(term.formula)) {
      const part = term.coefficient.times(Rational.of(count * sign));
      sums.set(component, (sums.get(component) ?? Rational.zero).plus(part));
    }
  };
  for (const term of equation.left) add(term, -1);
  for (const term of equation.right) add(term, 1);
  return new Map([...sums].filter(([, sum]) => !sum.isZero()));
}

/** True when atoms of every element, and charge, are conserved. */
export function isBalanced(equation: Equation): boolean {
  return misfit(equation).size === 0;
}
