import { joined } from '../../chemistry/cell.ts';
import type { Equation } from '../../chemistry/equation.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { redoxChanges } from '../../chemistry/redox-changes.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import type { HonestPair } from '../honest-pairs.ts';
import { type Account, accountOf, numberFrom } from '../oxidation-account.ts';
import { bare, bareEquation } from '../without-states.ts';

/** The element that is reduced in a reaction, and what the equation says of it. */
export interface Reaction {
  readonly pair: HonestPair;
  readonly equation: Equation;
  readonly element: string;
  /** the oxidising agent and what becomes of it */
  readonly before: { readonly formula: Formula; readonly account: Account };
  readonly after: { readonly formula: Formula; readonly account: Account };
  /** the reducing agent */
  readonly reductant: Formula;
  /** atoms of the element that change in the equation as written */
  readonly atoms: number;
  /** electrons that pass in the equation as written */
  readonly electrons: number;
}

/**
 * A reaction in which one element is oxidised and another reduced, both with whole numbers.
 * @returns undefined when it is of another kind: a comproportionation, an average, an element that stands in two states
 */
export function reactionOf(pair: HonestPair): Reaction | undefined {
  const combined = joined(pair.oxidant, pair.reductant);
  const equation = bareEquation(combined.equation);
  const changes = redoxChanges(equation);
  const [down, up] = [
    changes.filter(({ from, to }) => to.compare(from) < 0),
    changes.filter(({ from, to }) => to.compare(from) > 0),
  ];
  const [reduced, oxidised] = [down[0], up[0]];
  if (!reduced || !oxidised || down.length !== 1 || up.length !== 1 || reduced.element === oxidised.element) return undefined;
  if (![reduced, oxidised].every(({ from, to }) => from.isInteger() && to.isInteger())) return undefined;
  if (keyOf(reduced.reactant) !== pair.oxidant.oxidisedKey || keyOf(oxidised.reactant) !== pair.reductant.reducedKey)
    return undefined;
  const [before, after] = [accountOf(reduced.reactant, reduced.element), accountOf(reduced.product, reduced.element)];
  // A peroxo ion holds oxygen in two states: a pupil's sum gives their average, not what changes.
  if (!before || !numberFrom(before).equals(reduced.from) || !after || !numberFrom(after).equals(reduced.to)) return undefined;
  const electrons = combined.electrons.toNumber();
  const atoms = electrons / numberFrom(before).minus(numberFrom(after)).toNumber();
  return {
    pair,
    equation,
    element: reduced.element,
    before: { formula: bare(reduced.reactant), account: before },
    after: { formula: bare(reduced.product), account: after },
    reductant: bare(oxidised.reactant),
    atoms,
    electrons,
  };
}
