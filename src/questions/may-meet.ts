import type { SpeciesKey } from '../chemistry/formula.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { Tables } from '../potentials/tables.ts';

/** Ions that a class makes as it goes, so that no bottle of a salt holds them: vanadium(V) in acid, vanadium(II). Common practice. */
const MADE_FRESH: readonly SpeciesKey[] = ['VO2^+', 'V^2+', 'Cr^2+'];

/** Sets of species that bringing in a species puts into the mixture: one for each substance on the shelf that gives it. */
function arrivals(key: SpeciesKey, tables: Tables): SpeciesKey[][] {
  const bottled = tables.salts
    .filter(({ gives }) => gives === key)
    .map((salt) => [key, keyOf(salt.formula), ...salt.with.map((ion) => ion.key)]);
  return MADE_FRESH.includes(key) ? [...bottled, [key]] : bottled;
}

/** True for a species that a substance on the shelf brings, or that a class makes as it goes. */
export function isAtHand(key: SpeciesKey, tables: Tables): boolean {
  return arrivals(key, tables).length > 0;
}

/**
 * True when there is a way to bring two species into one mixture in acid without breaking a ban on reagents or on procedures, the ions
 * that come along with their salts included.
 */
export function mayMeet(one: SpeciesKey, other: SpeciesKey, tables: Tables): boolean {
  return arrivals(one, tables).some((first) =>
    arrivals(other, tables).some((second) => !isBanned([...first, ...second], tables)),
  );
}

function isBanned(present: readonly SpeciesKey[], tables: Tables): boolean {
  const holds = (listed: readonly SpeciesKey[]) => listed.some((key) => key === '*' || present.includes(key));
  return tables.bans.some(
    ({ first, second, media, where, unless }) =>
      where !== 'salt bridge' &&
      (media === undefined || media.includes('acid')) &&
      holds(first) &&
      holds(second) &&
      !unless.some((key) => present.includes(key)),
  );
}
