import type { Couple } from '../../chemistry/couple.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Draws } from '../../random/draws.ts';
import { type Ask, family } from '../family.ts';
import { inUse } from '../half-cell.ts';
import { buildCell } from './cell-emf-build.ts';
import { cellOf } from './cell-emf-cell.ts';

/** What a draw fixes: two half-cells in printed order, and at stretch a third that is only there to be passed over. */
export interface CellDraw {
  readonly first: Couple;
  readonly second: Couple;
  readonly decoy?: Couple;
}

/** Half-cells that a class does not meet as such: violent, poisonous, explosive when kept, or an ion that does not last in the water or acid of a cell. */
const NOT_SET_UP = ['F2', 'Hg^2+', 'Cd^2+', 'Co^3+', 'Mn^3+', 'Au^3+', 'NO3^-', 'Cu^+', 'MnO4^2-', '[Ag(NH3)2]^+'];
/** Forms that give platinum no steady potential, because they react too slowly there (common practice, no source). */
const TOO_SLOW = ['S2O3^2-', 'SO2', 'H2C2O4', 'C2O4^2-', 'ClO3^-', 'BrO3^-', 'IO3^-', 'HOCl', 'S2O8^2-', 'H2O2'];
/** Half-cells that a class knows, by their oxidised form. */
const FAMILIAR = [
  'Mg^2+',
  'Al^3+',
  'Zn^2+',
  'Fe^2+',
  'Co^2+',
  'Ni^2+',
  'Sn^2+',
  'Pb^2+',
  'Cu^2+',
  'Ag^+',
  'Fe^3+',
  'H^+',
  'Cl2',
  'Br2',
  'I2',
  'V^3+',
  'Cr^3+',
  'Sn^4+',
];
/** Two half-cells closer than this are left for questions about borderline cases. */
const LEAST_EMF = Rational.parse('0.10');

export const cellEmf = family<CellDraw>({
  id: 'cell-emf',
  title: 'Cell e.m.f. and the reaction in a cell',
  asksFor: 'the e.m.f. of a cell, the equation for its reaction, and where electrons and ions go',
  topics: ['electrode-potentials'],
  strategy: 'difference of potentials',
  demand: ['acid', 'electron ratio', 'signs', 'decoy', 'ions in the bridge'],
  answering: ['written', 'choice'],
  misconceptions: [
    'EP-ADD',
    'EP-SIGN-DROPPED',
    'EP-REVERSED',
    'EP-MULTIPLIED',
    'EP-STRENGTH-REVERSED',
    'EP-LEFT-IS-ANODE',
    'HE-ADD-UNSCALED',
    'HE-SCALE-OWN',
    'HE-H-NOT-CANCELLED',
    'EP-ELECTRONS-IN-SOLUTION',
    'EP-BRIDGE-DIRECTION',
  ],
  draw,
  build: buildCell,
});

function draw(draws: Draws, tables: Tables, { level }: Ask): CellDraw | undefined {
  const ready = tables.couples.filter((couple) => canBeSetUp(couple, tables));
  const suited = ready.filter((couple) => (level === 'core') === isSimple(couple));
  const first = draws.pick(suited);
  const second = draws.pick(level === 'core' ? suited : ready);
  if (!apart(first, second)) return undefined;
  if (level === 'core') return { first, second };
  const decoy = draws.pick(ready);
  return apart(decoy, first) && apart(decoy, second) ? { first, second, decoy } : undefined;
}

function canBeSetUp(couple: Couple, tables: Tables): boolean {
  const safe =
    inUse(couple) &&
    (couple.medium === 'neutral' || couple.medium === 'acid') &&
    ![...NOT_SET_UP, ...TOO_SLOW].some((key) => key === couple.oxidisedKey || key === couple.reducedKey);
  return safe && cellOf(couple, tables) !== undefined;
}

/** Core half-cells are familiar, and contain the two forms and nothing else. */
function isSimple(couple: Couple): boolean {
  return FAMILIAR.includes(couple.oxidisedKey) && couple.half.left.length === 2 && couple.half.right.length === 1;
}

/** Different couples with no species in common, and potentials far enough apart. */
function apart(one: Couple, other: Couple): boolean {
  const shared = [one.oxidisedKey, one.reducedKey].some((key) => key === other.oxidisedKey || key === other.reducedKey);
  return !shared && one.printed.value.minus(other.printed.value).abs().compare(LEAST_EMF) >= 0;
}
