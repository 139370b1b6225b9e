import { Rational } from '../exact/rational.ts';
import { elementOf } from './elements.ts';
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

/** Atoms of one element in one state. */
export interface State {
  readonly atoms: number;
  readonly number: number;
}

const states = (...pairs: readonly (readonly [atoms: number, number: number])[]): readonly State[] =>
  pairs.map(([atoms, number]) => ({ atoms, number }));
const SPINEL = states([1, 2], [2, 3]);

/** Elements whose atoms differ, by what the formula holds. Chains of sulfur: the end atoms' bonds are counted (common practice, no source). */
const UNLIKE: readonly (readonly [RegExp, element: string, readonly State[]])[] = [
  [/S2O3/, 'S', states([1, 5], [1, -1])],
  [/S4O6/, 'S', states([2, 5], [2, 0])],
  [/^Fe3O4$/, 'Fe', SPINEL],
  [/^Co3O4$/, 'Co', SPINEL],
  [/^Mn3O4$/, 'Mn', SPINEL],
  [/^Pb3O4$/, 'Pb', states([2, 2], [1, 4])],
  // from memory
  [/^Pb2O3$/, 'Pb', states([1, 2], [1, 4])],
  [/^Sb2O4$/, 'Sb', states([1, 3], [1, 5])],
];

/** The sites of a species with bonds the rules cannot see. */
export function specialSites(key: SpeciesKey): Special | undefined {
  return SPECIAL.get(key);
}

/** The element of a species whose atoms are not in one state, and the states; undefined where all are alike. */
export function unlikeStates(key: SpeciesKey): { readonly element: string; readonly states: readonly State[] } | undefined {
  const found = UNLIKE.find(([held]) => held.test(key));
  return found && { element: found[1], states: found[2] };
}

/** What the average of this species stands for: `an average: one iron atom is +2, two are +3`. */
export function averageNote(key: SpeciesKey): string | undefined {
  const unlike = unlikeStates(key);
  if (!unlike) return undefined;
  const { name } = elementOf(unlike.element);
  const told = unlike.states.map(({ atoms, number }, at) => {
    const noun = at > 0 ? '' : ` ${name} ${atoms === 1 ? 'atom' : 'atoms'}`;
    return `${COUNTS[atoms]}${noun} ${atoms === 1 ? 'is' : 'are'} ${signedNumber(number)}`;
  });
  return `an average: ${told.join(', ')}`;
}

/** Numbers of atoms in words. */
export const COUNTS: readonly string[] = ['', 'one', 'two', 'three', 'four'];

/** An oxidation number with its sign; zero has none. */
export function signedNumber(number: number): string {
  return `${number > 0 ? '+' : number < 0 ? '\u2212' : ''}${Math.abs(number)}`;
}
