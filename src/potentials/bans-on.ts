import type { Medium } from '../chemistry/couple.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Ban } from './tables.ts';

/**
 * The bans on reagents and on procedures that stand against what is put together in a medium.
 * @param present species, and formulas of the substances that bring them
 */
export function bansOn(present: readonly SpeciesKey[], bans: readonly Ban[], medium: Medium): Ban[] {
  const holds = (listed: readonly SpeciesKey[]) => listed.some((key) => key === '*' || present.includes(key));
  return bans.filter(
    ({ first, second, media, where, unless }) =>
      where !== 'salt bridge' &&
      (media === undefined || media.includes(medium)) &&
      holds(first) &&
      holds(second) &&
      !unless.some((key) => present.includes(key)),
  );
}
