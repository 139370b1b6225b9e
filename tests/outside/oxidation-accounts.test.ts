import { describe, expect, it } from 'vitest';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { evaluate } from '../../src/questions/expression.ts';
import { accountExpression, accountOf, numberFrom } from '../../src/questions/oxidation-account.ts';
import { casesOf } from './cases.ts';

interface Given {
  readonly species?: string;
  readonly element?: string;
}
type States = number | readonly { readonly state: number; readonly atoms: number }[];
interface Answer {
  readonly oxidation_number?: number;
  readonly oxidation_numbers?: Readonly<Record<string, States>>;
}

/** Every element of a published species, with its printed number (the mean where several are printed). */
const printed = casesOf<Given, Answer>('oxidation-number').flatMap(({ given, answer, source }) =>
  given.species === undefined
    ? []
    : Object.entries(answer.oxidation_numbers ?? { [given.element!]: answer.oxidation_number! }).map(([element, states]) => ({
        species: given.species!,
        element,
        source,
        mean: meanOf(states),
      })),
);

function meanOf(states: States): number {
  if (typeof states === 'number') return states;
  const atoms = states.reduce((sum, each) => sum + each.atoms, 0);
  return states.reduce((sum, each) => sum + each.state * each.atoms, 0) / atoms;
}

describe('the sum that the mark scheme writes out', () => {
  it.each(printed)('gives the published number of $element in $species ($source)', ({ species, element, mean }) => {
    const formula = parseFormula(species);
    const account = accountOf(formula, element);
    // In a mixed oxide the oxygen cannot be had from the metal's fraction; it is never asked.
    if (!account) return expect([species, element]).toEqual(['Fe3O4', 'O']);
    expect(numberFrom(account).toNumber()).toBeCloseTo(mean, 12);
    expect(evaluate(accountExpression(account), new Map()).toNumber()).toBeCloseTo(mean, 12);
  });

  it('is tried on enough of them', () => {
    expect(printed.length).toBeGreaterThan(30);
  });
});
