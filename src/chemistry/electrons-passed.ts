import { Rational } from '../exact/rational.ts';
import { elementsIn } from './composition.ts';
import type { Equation, Term } from './equation.ts';
import { isElectron } from './formula-parts.ts';
import { oxidationNumbers } from './oxidation-numbers.ts';

/** Atoms of one element that have one oxidation number on a side. */
interface Level {
  readonly number: Rational;
  readonly atoms: Rational;
}

/**
 * Electrons that pass in a balanced equation as written: the rise of oxidation numbers over all atoms, each element's atoms
 * taken in order from the lowest number to the highest, so that as few as possible change.
 * @throws Fault `undecided` when the rules do not decide the numbers of a species
 */
export function electronsPassed(equation: Equation): Rational {
  const elements = new Set(equation.left.flatMap((term) => elementsIn(term.formula)));
  return [...elements].reduce(
    (sum, symbol) => sum.plus(rise(levels(equation.left, symbol), levels(equation.right, symbol))),
    Rational.zero,
  );
}

function levels(terms: readonly Term[], symbol: string): Level[] {
  const found = terms
    .filter((term) => !isElectron(term.formula))
    .flatMap(({ coefficient, formula }) =>
      oxidationNumbers(formula)
        .sites.filter((site) => site.element === symbol)
        .map(({ number, atoms }) => ({ number, atoms: coefficient.times(Rational.of(atoms)) })),
    );
  return found.toSorted((one, other) => one.number.compare(other.number));
}

/** Σ of (after − before) over the atoms whose number rises, lowest with lowest. */
function rise(before: readonly Level[], after: readonly Level[]): Rational {
  let sum = Rational.zero;
  let [from, to] = [0, 0];
  let [left, right] = [before[0]?.atoms ?? Rational.zero, after[0]?.atoms ?? Rational.zero];
  while (from < before.length && to < after.length) {
    const atoms = left.compare(right) < 0 ? left : right;
    const change = after[to]!.number.minus(before[from]!.number);
    if (change.sign() > 0) sum = sum.plus(change.times(atoms));
    [left, right] = [left.minus(atoms), right.minus(atoms)];
    if (left.isZero()) left = before[++from]?.atoms ?? Rational.zero;
    if (right.isZero()) right = after[++to]?.atoms ?? Rational.zero;
  }
  return sum;
}
