import { complexParts } from '../chemistry/complex-parts.ts';
import { atomsOf } from '../chemistry/composition.ts';
import type { Formula, FormulaNode } from '../chemistry/formula.ts';
import { averageOxidationNumber, oxidationNumbers } from '../chemistry/oxidation-numbers.ts';
import { Rational } from '../exact/rational.ts';
import { type Expression, minus, number, over, times } from './expression.ts';

/** How an oxidation number is reckoned by a pupil: the charge, less what everything else brings, shared between the atoms. */
export interface Account {
  readonly charge: number;
  /** how many there are, and what each brings: the oxidation number of an atom, or the charge of a ligand */
  readonly others: readonly { readonly count: number; readonly each: number }[];
  readonly atoms: number;
  /** charge of what stands in square brackets: in a salt it is not that of the whole */
  readonly complexCharge?: number;
}

/**
 * The account of an element in a species.
 * @returns undefined when the rest has no whole numbers to bring, or when the sum does not give what the rules give
 */
export function accountOf(formula: Formula, element: string): Account | undefined {
  const counter = bracketOf(formula) ? counterIons(formula) : undefined;
  const others = bracketOf(formula) ? besideCentre(formula, element) : besideAtoms(formula, element);
  if (!others) return undefined;
  const bracket = counter ? { complexCharge: formula.charge - sumOf(counter) } : {};
  const account = { charge: formula.charge, others, atoms: atomsOf(formula, element), ...bracket };
  return averageOxidationNumber(formula, element)?.equals(numberFrom(account)) ? account : undefined;
}

/** (charge − what the others bring) ÷ atoms, exact. */
export function numberFrom({ charge, others, atoms }: Account): Rational {
  return Rational.of(charge - sumOf(others), atoms);
}

/** What everything but the element brings. */
export function sumOf(others: Account['others']): number {
  return others.reduce((sum, { count, each }) => sum + count * each, 0);
}

/** The same arithmetic as it is written out: `(−2 − 7 × (−2)) ÷ 2`. */
export function accountExpression({ charge, others, atoms }: Account): Expression {
  const start = number(charge > 0 ? `+${charge}` : whole(charge));
  const total = others.reduce<Expression>((sum, other) => minus(sum, termOf(other)), start);
  return atoms === 1 ? total : over(total, number(String(atoms)));
}

function termOf({ count, each }: Account['others'][number]): Expression {
  return count === 1 ? number(whole(each)) : times(number(String(count)), number(whole(each)));
}

const whole = (value: number): string => (value < 0 ? `\u2212${-value}` : String(value));

type Group = FormulaNode & { readonly kind: 'group' };

/** The square bracket of a complex. */
function bracketOf({ units }: Formula): Group | undefined {
  return units[0]?.nodes.find((node): node is Group => node.kind === 'group' && node.bracket === '[');
}

/** Counter-ions outside the bracket and charged ligands inside it; neutral ligands bring nothing. */
function besideCentre(formula: Formula, element: string): Account['others'] | undefined {
  const bracket = bracketOf(formula)!;
  const parts = complexParts(bracket.nodes);
  if (!parts || parts.centre !== element || bracket.count !== 1) return undefined;
  const counter = counterIons(formula);
  if (!counter) return undefined;
  const ligands = parts.ligands.map(({ ligand, count }) => ({ count, each: ligand.charge }));
  return [...counter, ...ligands].filter(({ each }) => each !== 0);
}

/** Single ions outside the bracket; undefined where there are others. */
function counterIons(formula: Formula): Account['others'] | undefined {
  const bracket = bracketOf(formula)!;
  const outside = formula.units[0]!.nodes.filter((node) => node !== bracket);
  const ions = outside.flatMap((node) => (node.kind === 'element' ? [{ ...node }] : []));
  if (ions.length !== outside.length) return undefined;
  return ions.map(({ symbol, count }) => ({ count, each: averageOxidationNumber(formula, symbol)!.toNumber() }));
}

function besideAtoms(formula: Formula, element: string): Account['others'] | undefined {
  const sites = oxidationNumbers(formula).sites.filter((site) => site.element !== element);
  if (sites.some(({ number: state }) => !state.isInteger())) return undefined;
  return sites.map(({ number: state, atoms }) => ({ count: atoms, each: state.toNumber() }));
}
