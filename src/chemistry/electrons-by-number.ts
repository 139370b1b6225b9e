import { Rational } from '../exact/rational.ts';
import { elementsIn } from './composition.ts';
import type { HalfEquation, Term } from './equation.ts';
import { isElectron } from './formula-parts.ts';
import { oxidationNumbers } from './oxidation-numbers.ts';

/**
 * Electrons that a half-equation takes up, counted by oxidation number: for every element, the sum of its numbers on the left
 * less the sum on the right. Charge is not looked at, so it checks a balance that was made by charge.
 * @throws Fault `undecided` when the rules do not decide the numbers of a species
 */
export function electronsByNumber(half: HalfEquation): Rational {
  const elements = new Set(half.left.flatMap((term) => elementsIn(term.formula)));
  return [...elements].reduce(
    (sum, symbol) => sum.plus(numberSum(half.left, symbol)).minus(numberSum(half.right, symbol)),
    Rational.zero,
  );
}

/** Σ coefficient × atoms × number of one element. */
function numberSum(terms: readonly Term[], symbol: string): Rational {
  let sum = Rational.zero;
  for (const { coefficient, formula } of terms) {
    if (isElectron(formula)) continue;
    for (const site of oxidationNumbers(formula).sites) {
      if (site.element === symbol) sum = sum.plus(coefficient.times(site.number).times(Rational.of(site.atoms)));
    }
  }
  return sum;
}
