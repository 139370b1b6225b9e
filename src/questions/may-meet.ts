import type { Medium } from '../chemistry/couple.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { bansOn } from '../potentials/bans-on.ts';
import type { Tables } from '../potentials/tables.ts';

/** Ions that a class makes as it goes, so that no bottle of a salt holds them: vanadium(V) in acid, vanadium(II). Common practice. */
const MADE_FRESH: readonly SpeciesKey[] = ['VO2^+', 'V^2+', 'Cr^2+'];

/** Ways to bring each species, found once for each set of tables: draws ask this of every couple. */
const found = new WeakMap<Tables, Map<string, readonly SpeciesKey[][]>>();

function arrivals(key: SpeciesKey, tables: Tables, medium?: Medium): readonly SpeciesKey[][] {
  const known = found.get(tables) ?? new Map<string, readonly SpeciesKey[][]>();
  found.set(tables, known);
  const name = `${key} ${medium ?? ''}`;
  const ways = known.get(name) ?? waysToBring(key, tables, medium);
  known.set(name, ways);
  return ways;
}

/**
 * Sets of species that bringing in a species puts into the mixture: one for each substance on the shelf that gives it, or that gives what
 * turns into it in that medium (a chromium(III) salt for the hydroxide in alkali).
 */
function waysToBring(key: SpeciesKey, tables: Tables, medium?: Medium): SpeciesKey[][] {
  const sources = tables.facts.speciations
    .filter((row) => row.medium === medium && row.becomes === key)
    .map(({ species }) => species);
  const bottled = tables.salts
    .filter(({ gives }) => gives === key || sources.includes(gives))
    .map((salt) => [key, keyOf(salt.formula), ...salt.with.map((ion) => ion.key)]);
  return MADE_FRESH.includes(key) ? [...bottled, [key]] : bottled;
}

/** True for a species that a substance on the shelf brings, or that a class makes as it goes. */
export function isAtHand(key: SpeciesKey, tables: Tables): boolean {
  return arrivals(key, tables).length > 0;
}

/**
 * True when there is a way to bring two species into one mixture without breaking a ban on reagents or on procedures, the ions that come
 * along with their salts included.
 * @param medium acid when left away
 */
export function mayMeet(one: SpeciesKey, other: SpeciesKey, tables: Tables, medium: Medium = 'acid'): boolean {
  const made = medium === 'alkali' || medium === 'strong-alkali' ? medium : undefined;
  return arrivals(one, tables, made).some((first) =>
    arrivals(other, tables, made).some((second) => !isBanned([...first, ...second], tables, medium)),
  );
}

/** True when a ban on reagents or on procedures stands against what is present together in a medium. */
export function isBanned(present: readonly SpeciesKey[], tables: Tables, medium: Medium): boolean {
  return bansOn(present, tables.bans, medium).length > 0;
}
