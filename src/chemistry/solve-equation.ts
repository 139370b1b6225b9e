import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import { type Balance, balanceByNullSpace } from './balance-by-null-space.ts';
import { combine } from './combine.ts';
import { hydrogenIon, hydroxide, water } from './common-species.ts';
import { electronsPassed } from './electrons-passed.ts';
import type { Equation, HalfEquation } from './equation.ts';
import type { Formula } from './formula.ts';
import { electron, isElectron } from './formula-parts.ts';
import { halfEquation } from './half-equation.ts';
import { parseEquation, relocated } from './parse-equation.ts';
import { parseFormula } from './parse-formula.ts';
import { oxidisedIn, reducedIn } from './redox-changes.ts';
import { reverseEquation } from './terms.ts';
import { keyOf } from './write-formula.ts';

/** A balanced equation and what it does. */
export interface Solved {
  readonly kind: 'half' | 'redox' | 'no-redox' | 'undecided';
  readonly equation: Equation;
  /**
   * electrons in a half-equation, electrons that pass in a redox equation, zero otherwise; absent when numbers are not
   * decided
   */
  readonly electrons?: Rational;
  readonly oxidised: readonly Formula[];
  readonly reduced: readonly Formula[];
}

/** Nothing decides between solutions: two of them, and how many there are in kind. */
export interface Ambiguous {
  readonly kind: 'many';
  readonly dimension: number;
  readonly solutions: readonly Equation[];
}

type AcidOrAlkali = 'acid' | 'alkali';

/**
 * Balances what a user typed, whose coefficients are not looked at: a whole equation, an ionic one that lacks water, H⁺ or
 * OH⁻, or a couple (`MnO4^- -> Mn^2+` or `MnO4^-/Mn^2+`), which gives a half-equation.
 * @param halves two half-equations (reductions) that decide when conservation does not
 * @throws Fault `bad-equation` or `bad-formula` for text that cannot be read, `cannot-balance` with the reason
 */
export function solveEquation(
  text: string,
  medium: AcidOrAlkali = 'acid',
  halves?: readonly [HalfEquation, HalfEquation],
): Solved | Ambiguous {
  if (halves) return described(combine(halves[0], halves[1]).equation);
  const { left, right } = readInput(text);
  if ([...left, ...right].some(isElectron)) return fromBalance(withElectrons(left, right, medium), text);
  const plain = balanceByNullSpace(left, right);
  if (plain.kind === 'unique') return described(plain.equation);
  const completed = balanceByNullSpace(left, right, solvents(medium, [...left, ...right]));
  if (completed.kind === 'unique') return described(completed.equation);
  if (left.length === 1 && right.length === 1) {
    const half = asCouple(left[0]!, right[0]!, medium);
    if (half) return described(half);
  }
  const best = plain.kind === 'many' ? plain : completed;
  if (best.kind === 'many') return best;
  const open = withElectrons(left, right, medium);
  // Electrons only help when a single couple is given: otherwise they would hide what is missing.
  if (open.kind === 'unique') return halfOnly(described(open.equation), completed, text);
  return fromBalance(completed, text);
}

/** Water and the ion of the medium; H₃O⁺ where the equation is written with it. */
function solvents(medium: AcidOrAlkali, given: readonly Formula[]): Formula[] {
  const oxonium = given.find((formula) => keyOf(formula) === 'H3O^+');
  return [oxonium ?? (medium === 'acid' ? hydrogenIon : hydroxide), water];
}

function withElectrons(left: readonly Formula[], right: readonly Formula[], medium: AcidOrAlkali): Balance {
  const real = (formulas: readonly Formula[]) => formulas.filter((formula) => !isElectron(formula));
  return balanceByNullSpace(real(left), real(right), [...solvents(medium, [...left, ...right]), electron]);
}

/** The species of both sides. A couple is two species with a stroke between them. */
function readInput(text: string): { left: Formula[]; right: Formula[] } {
  const couple = /^([^=→⇌⟶>]+?)\/([^=→⇌⟶>\d][^=→⇌⟶>]*)$/.exec(text);
  if (couple) {
    const at = couple[1]!.length + 1;
    return {
      left: [relocated(() => parseFormula(couple[1]!), text, 0)],
      right: [relocated(() => parseFormula(couple[2]!), text, at)],
    };
  }
  const { left, right } = parseEquation(text);
  return { left: left.map((term) => term.formula), right: right.map((term) => term.formula) };
}

/** The half-equation of a couple in the direction typed; undefined when the two make none. */
function asCouple(from: Formula, to: Formula, medium: AcidOrAlkali): Equation | undefined {
  return attempt(() => halfEquation(from, to, medium)) ?? attempt(() => reverseEquation(halfEquation(to, from, medium)));
}

function attempt<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (error) {
    if (error instanceof Fault) return undefined;
    throw error;
  }
}

function halfOnly(solved: Solved, without: Balance, text: string): Solved | Ambiguous {
  const oneSided = solved.oxidised.length === 0 || solved.reduced.length === 0;
  return solved.kind === 'half' && oneSided ? solved : fromBalance(without, text);
}

function fromBalance(balance: Balance, text: string): Solved | Ambiguous {
  if (balance.kind === 'unique') return described(balance.equation);
  if (balance.kind === 'many') return balance;
  throw new Fault('cannot-balance', `\`${text.trim()}\` cannot be balanced: ${balance.because}`, {
    text,
    at: 0,
    length: text.length,
  });
}

/** Tells a half-equation, a redox equation and one without redox apart. */
function described(equation: Equation): Solved {
  const electrons = [...equation.left, ...equation.right].find((term) => isElectron(term.formula))?.coefficient;
  try {
    const [oxidised, reduced] = [oxidisedIn(equation), reducedIn(equation)];
    if (electrons) return { kind: 'half', equation, electrons, oxidised, reduced };
    if (oxidised.length === 0 && reduced.length === 0)
      return { kind: 'no-redox', equation, electrons: Rational.zero, oxidised, reduced };
    return { kind: 'redox', equation, electrons: electronsPassed(equation), oxidised, reduced };
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    const undecided = { equation, oxidised: [], reduced: [] };
    return electrons ? { kind: 'half', electrons, ...undecided } : { kind: 'undecided', ...undecided };
  }
}
