import type { Formula } from '../../chemistry/formula.ts';
import { nameOf, type SpeciesName } from '../../chemistry/name.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import { signed } from '../tell.ts';

/** What `couplet name --json` prints of one input; null for what does not apply. */
export interface NameAnswer {
  readonly input: string;
  readonly name: string;
  /** another name in use; null when there is none */
  readonly tradeName: string | null;
  /** of the central atom of a complex */
  readonly oxidationNumber: string | null;
  readonly coordinationNumber: string | null;
  readonly shape: string | null;
}

/** An input with its name. */
export interface Named extends SpeciesName {
  readonly input: string;
  readonly formula: Formula;
}

/** @throws Fault `no-name`, `undecided`, or a fault of the text */
export function name(input: string): Named {
  const formula = parseFormula(input);
  return { input, formula, ...nameOf(formula) };
}

export function nameAnswer({ input, name: own, tradeName, oxidationNumber, coordinationNumber, shape }: Named): NameAnswer {
  return {
    input,
    name: own,
    tradeName: tradeName ?? null,
    oxidationNumber: oxidationNumber === undefined ? null : signed(oxidationNumber),
    coordinationNumber: coordinationNumber?.toString() ?? null,
    shape: shape ?? null,
  };
}
