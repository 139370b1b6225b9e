import type { Rational } from '../exact/rational.ts';
import { elementsIn } from './composition.ts';
import type { Equation, Term } from './equation.ts';
import type { Formula } from './formula.ts';
import { isElectron } from './formula-parts.ts';
import { oxidationNumbers } from './oxidation-numbers.ts';

/** An element that changes its oxidation number between a reactant and a product. */
export interface RedoxChange {
  readonly element: string;
  readonly reactant: Formula;
  readonly product: Formula;
  readonly from: Rational;
  readonly to: Rational;
}

/** Where an element stands on one side, with its number there. */
interface Standing {
  readonly formula: Formula;
  readonly number: Rational;
}

/**
 * Every change of oxidation number in an equation, balanced or not; none when it is not redox. A reactant whose number rises
 * is oxidised, one whose number falls is reduced; in a disproportionation it is both.
 * @throws Fault `undecided` when the rules do not decide the numbers of a species
 */
export function redoxChanges(equation: Equation): RedoxChange[] {
  const elements = new Set(equation.left.flatMap((term) => elementsIn(term.formula)));
  return [...elements].flatMap((symbol) =>
    changesOf(symbol, standings(equation.left, symbol), standings(equation.right, symbol)),
  );
}

function standings(terms: readonly Term[], symbol: string): Standing[] {
  return terms
    .filter((term) => !isElectron(term.formula))
    .flatMap(({ formula }) =>
      oxidationNumbers(formula)
        .sites.filter((site) => site.element === symbol)
        .map(({ number }) => ({ formula, number })),
    );
}

/** Numbers that stand on both sides are taken as unchanged; what is left over has changed. */
function changesOf(element: string, before: readonly Standing[], after: readonly Standing[]): RedoxChange[] {
  const missingFrom = (others: readonly Standing[]) => (one: Standing) =>
    !others.some((other) => other.number.equals(one.number));
  const gone = before.filter(missingFrom(after));
  const made = after.filter(missingFrom(before));
  if (gone.length === 0 && made.length === 0) return [];
  const sources = gone.length > 0 ? gone : before;
  const targets = made.length > 0 ? made : after;
  return sources.flatMap((source) =>
    targets
      .filter((target) => !target.number.equals(source.number))
      .map((target) => ({ element, reactant: source.formula, product: target.formula, from: source.number, to: target.number })),
  );
}

/** The species that are oxidised: an element's number rises. */
export function oxidisedIn(equation: Equation): Formula[] {
  return [...new Set(redoxChanges(equation).flatMap((change) => (change.to.compare(change.from) > 0 ? [change.reactant] : [])))];
}

/** The species that are reduced: an element's number falls. */
export function reducedIn(equation: Equation): Formula[] {
  return [...new Set(redoxChanges(equation).flatMap((change) => (change.to.compare(change.from) < 0 ? [change.reactant] : [])))];
}
