import type { SpeciesKey } from '../../chemistry/formula.ts';
import type { Tables } from '../../potentials/tables.ts';
import { type HonestPair, honestPairs } from '../honest-pairs.ts';
import type { Level } from '../question.ts';

/** Reactants that a class knows by the end of a first course (common practice, no source). */
const KNOWN_OXIDANTS: readonly SpeciesKey[] = [
  'MnO4^-',
  'Cr2O7^2-',
  'VO2^+',
  'VO^2+',
  'V^3+',
  'Fe^3+',
  'MnO2',
  'H2O2',
  'S2O8^2-',
  'Cl2',
  'Br2',
  'I2',
  'Cu^2+',
  'Ag^+',
  'Ni^2+',
  'Pb^2+',
  'Sn^4+',
  'Cr^3+',
];
const KNOWN_REDUCTANTS: readonly SpeciesKey[] = [
  'Mg',
  'Zn',
  'Fe',
  'Cu',
  'Sn',
  'Fe^2+',
  'Sn^2+',
  'I^-',
  'Br^-',
  'SO2',
  'S2O3^2-',
  'H2O2',
  'C2O4^2-',
  'H2C2O4',
  'V^3+',
  'V^2+',
  'VO^2+',
  'Cr^2+',
];

/** Not written about as if on the bench: too poisonous, or too dear. */
const NOT_ASKED: readonly SpeciesKey[] = ['Hg^2+', 'Cd^2+', 'Cd', 'Au^3+'];

/** Alkali: what reacts in a class's time (common practice, no source). Halogens are left out, since they disproportionate there. */
const ALKALI_OXIDANTS: readonly SpeciesKey[] = ['MnO4^-', 'HO2^-', 'ClO^-', '[Fe(CN)6]^3-', 'CrO4^2-'];
const ALKALI_REDUCTANTS: readonly SpeciesKey[] = ['Cr(OH)3', 'Mn(OH)2', 'Fe(OH)2', 'Co(OH)2', 'SO3^2-', 'S2O3^2-', 'Zn'];

const KNOWN = new WeakMap<Tables, Record<Level, readonly HonestPair[]>>();

/**
 * Reactions in solution that are asked about, one for each pair of couples and medium: in acid where H⁺ takes part, in alkali (stretch
 * alone) where OH⁻ does, otherwise in neutral solution if they react there.
 */
export function reactingPairs(tables: Tables, level: Level): readonly HonestPair[] {
  let found = KNOWN.get(tables);
  if (!found) {
    const all = [...inWater(tables), ...inAlkali(tables)];
    found = { core: all.filter(isKnown), stretch: all };
    KNOWN.set(tables, found);
  }
  return found[level];
}

function inWater(tables: Tables): HonestPair[] {
  const neutral = honestPairs(tables, 'neutral');
  const isNeutral = (pair: HonestPair) =>
    neutral.some(({ oxidant, reductant }) => oxidant === pair.oxidant && reductant === pair.reductant);
  const acid = honestPairs(tables, 'acid').filter((pair) => !isNeutral(pair));
  return [...neutral, ...acid].filter(({ oxidant, reductant }) => {
    const reactants = [oxidant.oxidisedKey, reductant.reducedKey];
    // Complexes of cyanide are not put in acid; the metal ions that a neutral reaction leaves would mostly precipitate them.
    return !reactants.some((key) => NOT_ASKED.includes(key) || key.includes('CN')) && !isTooSlow(reactants[0]!, reactants[1]!);
  });
}

/** Partners with which these react in a class's time; potentials would allow more (common practice, no source). */
const SLOW_OXIDANTS: Readonly<Record<SpeciesKey, readonly SpeciesKey[]>> = {
  'S2O8^2-': ['I^-', 'Fe^2+', 'Sn^2+', 'Cr^2+', 'V^2+', 'Ti^3+', 'Cu'],
  'ClO3^-': ['I^-', 'Fe^2+', 'SO2', 'Cr^2+'],
  MnO2: ['Fe^2+', 'I^-', 'SO2', 'Sn^2+', 'C2O4^2-', 'H2C2O4', 'H2O2', 'Ti^3+', 'VO^2+'],
};

/** Silver is dissolved by hardly anything that a class would take for it. */
function isTooSlow(oxidant: SpeciesKey, reductant: SpeciesKey): boolean {
  return reductant === 'Ag' || SLOW_OXIDANTS[oxidant]?.includes(reductant) === false;
}

function inAlkali(tables: Tables): HonestPair[] {
  const weak = honestPairs(tables, 'alkali');
  const isWeak = (pair: HonestPair) =>
    weak.some(({ oxidant, reductant }) => oxidant === pair.oxidant && reductant === pair.reductant);
  const strong = honestPairs(tables, 'strong-alkali').filter((pair) => !isWeak(pair));
  return [...weak, ...strong].filter(
    ({ oxidant, reductant }) =>
      ALKALI_OXIDANTS.includes(oxidant.oxidisedKey) &&
      ALKALI_REDUCTANTS.includes(reductant.reducedKey) &&
      !isSluggish(oxidant.oxidisedKey, reductant.reducedKey),
  );
}

/** Allowed by potentials, but not met: chromate and sulfite hardly react in alkali, iron(II) with hexacyanidoferrate gives a
 * pigment, manganate(VII) with manganese(II) one oxide from both. */
function isSluggish(oxidant: SpeciesKey, reductant: SpeciesKey): boolean {
  return (
    (oxidant === 'CrO4^2-' && reductant !== 'Fe(OH)2') ||
    (oxidant === '[Fe(CN)6]^3-' && (reductant === 'Fe(OH)2' || reductant === 'Zn')) ||
    (oxidant === 'MnO4^-' && (reductant === 'Zn' || reductant === 'Mn(OH)2'))
  );
}

function isKnown({ oxidant, reductant, medium }: HonestPair): boolean {
  const inCore = KNOWN_OXIDANTS.includes(oxidant.oxidisedKey) && KNOWN_REDUCTANTS.includes(reductant.reducedKey);
  return inCore && (medium === 'acid' || medium === 'neutral');
}

/** True when a species stands in both couples, on whatever side: iodate(V) with iodide. */
export function sharesSpecies({ oxidant, reductant }: HonestPair): boolean {
  const own = [oxidant.oxidisedKey, oxidant.reducedKey];
  return own.includes(reductant.oxidisedKey) || own.includes(reductant.reducedKey);
}
