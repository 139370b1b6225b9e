import { elementsIn } from '../../chemistry/composition.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { averageOxidationNumber, oxidationNumbers } from '../../chemistry/oxidation-numbers.ts';
import type { OxidationNumbers } from '../../chemistry/oxidation-sites.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import { signed } from '../tell.ts';

/** What `couplet oxidation --json` prints of one input. Numbers have an ASCII sign: `+6`, `-1/2`. */
export interface OxidationAnswer {
  readonly input: string;
  /** by element, averaged over its atoms */
  readonly numbers: Readonly<Record<string, string>>;
  /** an element stands twice when its atoms differ */
  readonly sites: readonly { readonly element: string; readonly number: string; readonly atoms: string }[];
  readonly rules: readonly string[];
}

/** An input with its oxidation numbers. */
export interface Numbered extends OxidationNumbers {
  readonly input: string;
  readonly formula: Formula;
}

/** @throws Fault `undecided` when the rules do not decide, or a fault of the text */
export function oxidation(input: string): Numbered {
  const formula = parseFormula(input);
  return { input, formula, ...oxidationNumbers(formula) };
}

export function oxidationAnswer({ input, formula, sites, rules }: Numbered): OxidationAnswer {
  const numbers = elementsIn(formula).map((symbol) => [symbol, signed(averageOxidationNumber(formula, symbol)!)]);
  return {
    input,
    numbers: Object.fromEntries(numbers),
    sites: sites.map(({ element, number, atoms }) => ({ element, number: signed(number), atoms: String(atoms) })),
    rules,
  };
}
