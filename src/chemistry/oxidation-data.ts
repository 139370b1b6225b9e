import { Rational } from '../exact/rational.ts';
import type { SpeciesKey } from './formula.ts';
import type { Site } from './oxidation-sites.ts';

/** A species whose bonds the rules cannot see. */
interface Special {
  readonly sites: readonly Site[];
  readonly rule: string;
}

const site = (element: string, number: number, atoms: number): Site => ({ element, number: Rational.of(number), atoms });

/** Peroxo and disulfide bonds. Structures: IUPAC, Nomenclature of Inorganic Chemistry, Recommendations 2005, table IX. */
const SPECIAL: ReadonlyMap<SpeciesKey, Special> = new Map([
  [
    'S2O8^2-',
    { sites: [site('S', 6, 2), site('O', -2, 6), site('O', -1, 2)], rule: 'one O–O bond: two of the oxygen atoms are −1' },
  ],
  [
    'HSO5^-',
    {
      sites: [site('H', 1, 1), site('S', 6, 1), site('O', -2, 3), site('O', -1, 2)],
      rule: 'one O–O bond: two of the oxygen atoms are −1',
    },
  ],
  [
    'SO5^2-',
    { sites: [site('S', 6, 1), site('O', -2, 3), site('O', -1, 2)], rule: 'one O–O bond: two of the oxygen atoms are −1' },
  ],
  [
    'H2SO5',
    {
      sites: [site('H', 1, 2), site('S', 6, 1), site('O', -2, 3), site('O', -1, 2)],
      rule: 'one O–O bond: two of the oxygen atoms are −1',
    },
  ],
  [
    'CrO5',
    { sites: [site('Cr', 6, 1), site('O', -2, 1), site('O', -1, 4)], rule: 'two O–O bonds: four of the oxygen atoms are −1' },
  ],
  ['CrO8^3-', { sites: [site('Cr', 5, 1), site('O', -1, 8)], rule: 'four O–O bonds: all oxygen atoms are −1' }],
  ['FeS2', { sites: [site('Fe', 2, 1), site('S', -1, 2)], rule: 'one S–S bond: sulfur is −1' }],
]);

/** What an average hides, by what the formula holds; said beside it. */
const AVERAGES: readonly (readonly [RegExp, string])[] = [
  [/S2O3/, 'an average: the two sulfur atoms differ (+5 and −1)'],
  [/S4O6/, 'an average: two sulfur atoms are +5, two are 0'],
  [/^Fe3O4$/, 'an average: one iron is +2, two are +3'],
  [/^Co3O4$/, 'an average: one cobalt is +2, two are +3'],
  [/^Mn3O4$/, 'an average: one manganese is +2, two are +3'],
  [/^Pb3O4$/, 'an average: two lead are +2, one is +4'],
];

/** The sites of a species with bonds the rules cannot see. */
export function specialSites(key: SpeciesKey): Special | undefined {
  return SPECIAL.get(key);
}

/** What the average of this species stands for. */
export function averageNote(key: SpeciesKey): string | undefined {
  return AVERAGES.find(([held]) => held.test(key))?.[1];
}
