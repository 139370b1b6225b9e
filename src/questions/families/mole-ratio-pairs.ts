import { elementsIn } from '../../chemistry/composition.ts';
import type { Couple, Medium } from '../../chemistry/couple.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Draws } from '../../random/draws.ts';
import { inUse } from '../half-cell.ts';
import type { HonestPair } from '../honest-pairs.ts';
import { mediumOf, reactsCleanly } from '../meeting.ts';
import type { Level } from '../question.ts';
import { reactingPairs } from './reacting-pairs.ts';

/** An oxidant and a reductant whose one reaction can be counted on, and how it is brought about. */
export interface ReactingPair {
  readonly oxidant: Couple;
  readonly reductant: Couple;
  readonly medium: Medium;
  /** `warmed to about 65 °C` */
  readonly condition?: string;
}

/** Couples that a class knows. */
const FAMILIAR: readonly string[] = [
  'Zn^2+/Zn',
  'Mg^2+/Mg',
  'Fe^2+/Fe',
  'Cu^2+/Cu',
  'Ag^+/Ag',
  'Sn^4+/Sn^2+',
  'Fe^3+/Fe^2+',
  'Br2/Br^-',
  'I2/I^-',
  'SO4^2-/SO2',
  'S4O6^2-/S2O3^2-',
  'O2/H2O2',
  'H2O2/H2O',
  'MnO4^-/Mn^2+',
  'Cr2O7^2-/Cr^3+',
];
/** Too poisonous to be weighed out in a question, or kept only as a gas. */
const LEFT_OUT: readonly string[] = ['Hg^2+', 'Cd', 'Cl2', '[Fe(CN)6]^4-', '[Fe(CN)6]^3-'];

/** A pair of couples: now and then one that is titrated, which brings the reactions that need warmth. */
export function drawPair(draws: Draws, tables: Tables, level: Level): ReactingPair {
  return draws.chance(1, 6) ? titrated(draws, tables, level) : draws.pick(countable(tables, level));
}

function titrated(draws: Draws, tables: Tables, level: Level): ReactingPair {
  const system = draws.pick(tables.titrations.filter((each) => level === 'stretch' || each.level === 'core'));
  const [one, other] = [tables.couple(system.titrant), tables.couple(system.analyte)];
  const [oxidant, reductant] = one.printed.value.compare(other.printed.value) > 0 ? [one, other] : [other, one];
  const { condition } = system;
  return { oxidant, reductant, medium: system.acid ? 'acid' : 'neutral', ...(condition ? { condition } : {}) };
}

const KNOWN = new WeakMap<Tables, Partial<Record<Level, readonly ReactingPair[]>>>();

/** Pairs that can be counted on: known to react in a class's time, in reacting amounts to nothing but what is printed. */
function countable(tables: Tables, level: Level): readonly ReactingPair[] {
  const known = KNOWN.get(tables) ?? {};
  KNOWN.set(tables, known);
  known[level] ??= reactingPairs(tables, level)
    .filter((pair) => !pair.needs && fits(pair, tables, level))
    .map(toPair);
  return known[level];
}

function toPair({ oxidant, reductant }: HonestPair): ReactingPair {
  return { oxidant, reductant, medium: mediumOf([oxidant, reductant], [oxidant.oxidised, reductant.reduced]) };
}

function fits(pair: HonestPair, tables: Tables, level: Level): boolean {
  const { oxidant, reductant } = pair;
  if (![oxidant, reductant].every((couple) => isUsable(couple, level)) || sharesElement(oxidant, reductant)) return false;
  // A metal in acid is dissolved by the acid as well, or by no acid at all: neither is asked about here.
  const inAcid = toPair(pair).medium === 'acid' && tables.speciesOf(reductant.reducedKey).role === 'metal';
  return !inAcid && reactsCleanly(oxidant, reductant, tables);
}

function isUsable(couple: Couple, level: Level): boolean {
  const { id, medium, oxidisedKey, reducedKey } = couple;
  const known = level === 'stretch' || FAMILIAR.includes(id);
  return known && inUse(couple) && medium !== 'alkali' && !LEFT_OUT.some((key) => key === oxidisedKey || key === reducedKey);
}

/** True when an element other than oxygen and hydrogen stands in both couples: such equations are another exercise. */
function sharesElement(one: Couple, other: Couple): boolean {
  const elements = ({ oxidised, reduced }: Couple) => [...elementsIn(oxidised), ...elementsIn(reduced)];
  return elements(one).some((symbol) => symbol !== 'O' && symbol !== 'H' && elements(other).includes(symbol));
}
