import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { averageOxidationNumber, oxidationNumbers } from '../../src/chemistry/oxidation-numbers.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';

interface Case {
  readonly id: string;
  readonly source: string;
  readonly given: { readonly species?: string; readonly element?: string };
  readonly answer: {
    readonly oxidation_number?: number;
    readonly oxidation_numbers?: Readonly<Record<string, number | readonly { readonly state: number; readonly atoms: number }[]>>;
  };
}

/** Worked examples and exercises with printed answers; each case names its source. */
const cases: readonly Case[] = JSON.parse(readFileSync(new URL('data/worked-oxidation-number.json', import.meta.url), 'utf8'));

describe('published oxidation numbers', () => {
  const all = cases.filter((each) => each.given.species !== undefined);
  it.each(all)('are ours: $id, $source', ({ given, answer }) => {
    const formula = parseFormula(given.species!);
    const expected = answer.oxidation_numbers ?? { [given.element!]: answer.oxidation_number! };
    for (const [symbol, printed] of Object.entries(expected)) {
      // Mixed states are printed one by one; the rules give their average.
      const sites = typeof printed === 'number' ? [{ state: printed, atoms: 1 }] : printed;
      const atoms = sites.reduce((sum, site) => sum + site.atoms, 0);
      const average = sites.reduce((sum, site) => sum + site.state * site.atoms, 0) / atoms;
      expect(averageOxidationNumber(formula, symbol)!.toNumber()).toBeCloseTo(average, 12);
    }
    if (answer.oxidation_numbers) {
      expect(new Set(oxidationNumbers(formula).sites.map((site) => site.element))).toEqual(new Set(Object.keys(expected)));
    }
  });
  it('number 20', () => {
    expect(all).toHaveLength(20);
  });
});
