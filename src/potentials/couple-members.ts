import { atomsOf, elementsIn } from '../chemistry/composition.ts';
import type { HalfEquation } from '../chemistry/equation.ts';
import type { Formula } from '../chemistry/formula.ts';
import { isElectron } from '../chemistry/formula-parts.ts';
import { averageOxidationNumber } from '../chemistry/oxidation-numbers.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { Fault } from '../exact/fault.ts';

const MEDIUM_SPECIES = new Set(['H^+', 'OH^-', 'H2O']);

/** The two species that a couple is named after, and the element that is reduced. */
export interface Members {
  readonly oxidised: Formula;
  readonly reduced: Formula;
  readonly element: string;
}

/**
 * Finds the couple in a half-equation: the first species on the left and on the right that share an element whose oxidation
 * number
 * falls. Water, H⁺ and OH⁻ are looked at last.
 * @throws Fault `nothing-reduced`
 */
export function membersOf(half: HalfEquation): Members {
  const left = candidates(half.left.map((term) => term.formula));
  const right = candidates(half.right.map((term) => term.formula));
  const plain = plainPair(left, right);
  if (plain) return plain;
  for (const oxidised of left) {
    for (const reduced of right) {
      const element = elementsIn(oxidised).find((symbol) => falls(oxidised, reduced, symbol));
      if (element !== undefined) return { oxidised, reduced, element };
    }
  }
  throw new Fault('nothing-reduced', 'no element of this half-equation falls in oxidation number from left to right');
}

function candidates(formulas: readonly Formula[]): Formula[] {
  const species = formulas.filter((formula) => !isElectron(formula));
  const late = (formula: Formula) => MEDIUM_SPECIES.has(keyOf(formula));
  return [...species.filter((formula) => !late(formula)), ...species.filter(late)];
}

/**
 * One species on each side beside the medium, with one element in common beside O and H: electrons are taken up, so it is
 * that element.
 * Most rows are like this, and need no oxidation numbers.
 */
function plainPair(left: readonly Formula[], right: readonly Formula[]): Members | undefined {
  const own = (formulas: readonly Formula[]) => formulas.filter((formula) => !MEDIUM_SPECIES.has(keyOf(formula)));
  const [oxidised, ...moreLeft] = own(left);
  const [reduced, ...moreRight] = own(right);
  if (!oxidised || !reduced || moreLeft.length > 0 || moreRight.length > 0) return undefined;
  const shared = elementsIn(oxidised).filter((symbol) => symbol !== 'O' && symbol !== 'H' && atomsOf(reduced, symbol) > 0);
  return shared.length === 1 ? { oxidised, reduced, element: shared[0]! } : undefined;
}

function falls(oxidised: Formula, reduced: Formula, symbol: string): boolean {
  const [before, after] = [numberOf(oxidised, symbol), numberOf(reduced, symbol)];
  return before !== undefined && after !== undefined && before.compare(after) > 0;
}

/** A species whose numbers the rules leave open takes no part in the search. */
function numberOf(formula: Formula, symbol: string) {
  try {
    return averageOxidationNumber(formula, symbol);
  } catch (error) {
    if (error instanceof Fault) return undefined;
    throw error;
  }
}
