import type { Couple, Medium } from '../../chemistry/couple.ts';
import { elementOf } from '../../chemistry/elements.ts';
import type { Equation, Term } from '../../chemistry/equation.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { isElectron } from '../../chemistry/formula-parts.ts';
import { redoxChanges } from '../../chemistry/redox-changes.ts';
import { coefficientOf, reverseEquation } from '../../chemistry/terms.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { bare, bareEquation } from '../without-states.ts';

/** A half-equation as it runs, and what a pupil finds on the way to it. */
export interface HalfPlan {
  readonly couple: Couple;
  readonly medium: Medium;
  readonly isReduction: boolean;
  /** what reacts, and what it becomes */
  readonly subject: Formula;
  readonly product: Formula;
  /** in the direction in which it runs, without electrons and states */
  readonly skeleton: Equation;
  /** electrons for one formula unit of the subject */
  readonly perUnit: number;
  /** true when H⁺, OH⁻ or water has to be put in */
  readonly isBuilt: boolean;
  /** the element that changes; absent where its number is an average or differs between atoms */
  readonly change?: Change;
}

/** The change of oxidation number of one atom, and how many atoms change in one formula unit of the subject. */
export interface Change {
  readonly element: string;
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly atoms: number;
}

const SOLVENT: readonly string[] = ['H^+', 'OH^-', 'H2O'];

export const isSolvent = ({ formula }: Term): boolean => SOLVENT.includes(keyOf(formula));

/** The plan of a couple that runs as a reduction or as an oxidation. */
export function planOf(couple: Couple, isReduction: boolean, medium: Medium): HalfPlan {
  const skeleton = withoutElectrons(isReduction ? couple.half : reverseEquation(couple.half));
  const [subject, product] = isReduction ? [couple.oxidised, couple.reduced] : [couple.reduced, couple.oxidised];
  const units = coefficientOf(skeleton.left, keyOf(subject)).toNumber();
  const perUnit = couple.half.electrons.toNumber() / units;
  const change = changeOf(couple, isReduction, perUnit);
  return {
    couple,
    medium,
    isReduction,
    subject: bare(subject),
    product: bare(product),
    skeleton,
    perUnit,
    // Water that a peroxide becomes is no solvent to be put in, but then H⁺ is.
    isBuilt: [...skeleton.left, ...skeleton.right].some(isSolvent),
    ...(change ? { change } : {}),
  };
}

/** An equation without its electrons and states. */
export function withoutElectrons(equation: Equation): Equation {
  const keep = (terms: readonly Term[]) => terms.filter(({ formula }) => !isElectron(formula));
  return bareEquation({ left: keep(equation.left), right: keep(equation.right) });
}

function changeOf(couple: Couple, isReduction: boolean, perUnit: number): Change | undefined {
  const [only, ...more] = redoxChanges(couple.half);
  if (!only || more.length > 0 || !only.from.isInteger() || !only.to.isInteger()) return undefined;
  if (keyOf(only.reactant) !== couple.oxidisedKey || keyOf(only.product) !== couple.reducedKey) return undefined;
  const [from, to] = (isReduction ? [only.from, only.to] : [only.to, only.from]).map((each) => each.toNumber()) as [
    number,
    number,
  ];
  const atoms = perUnit / Math.abs(from - to);
  return Number.isInteger(atoms) ? { element: only.element, name: elementOf(only.element).name, from, to, atoms } : undefined;
}
