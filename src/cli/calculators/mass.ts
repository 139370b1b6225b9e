import type { Formula } from '../../chemistry/formula.ts';
import { type MassPart, massParts, molarMass } from '../../chemistry/molar-mass.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import type { Decimal } from '../../exact/decimal.ts';
import { Fault } from '../../exact/fault.ts';
import type { Tables } from '../../potentials/tables.ts';
import { exactText } from '../tell.ts';

/** What `couplet mass --json` prints of one input. Everything in g mol⁻¹, exact sums of the published masses. */
export interface MassAnswer {
  readonly input: string;
  readonly molarMass: string;
  readonly parts: readonly { readonly element: string; readonly atoms: string; readonly each: string; readonly mass: string }[];
}

/** An input with its molar mass. */
export interface Weighed {
  readonly input: string;
  readonly formula: Formula;
  readonly total: Decimal;
  readonly parts: readonly MassPart[];
}

/** Relative atomic masses as published, not as rounded on the periodic-table extract. */
export function publishedMasses(table: Tables['atomicMasses']): ReadonlyMap<string, Decimal> {
  return new Map([...table].map(([symbol, { published }]) => [symbol, published]));
}

/** @throws Fault `no-atomic-mass`, `no-atoms` for an electron, or a fault of the text */
export function mass(input: string, masses: ReadonlyMap<string, Decimal>): Weighed {
  const formula = parseFormula(input);
  const parts = massParts(formula, masses);
  if (parts.length === 0) throw new Fault('no-atoms', `expected a formula with atoms in it, found \`${input}\``);
  return { input, formula, total: molarMass(formula, masses), parts };
}

export function massAnswer({ input, total, parts }: Weighed): MassAnswer {
  return {
    input,
    molarMass: exactText(total.value),
    parts: parts.map(({ symbol, atoms, each, sum }) => ({
      element: symbol,
      atoms: String(atoms),
      each: exactText(each.value),
      mass: exactText(sum.value),
    })),
  };
}
