import type { Couple, Medium } from '../chemistry/couple.ts';
import type { Restriction } from '../chemistry/facts.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';

/** Two couples that claim to be the usual one of a species in a medium. */
export interface Clash {
  readonly species: SpeciesKey;
  readonly as: 'oxidant' | 'reductant';
  readonly medium: Medium;
  readonly couples: readonly [Couple, Couple];
}

/**
 * Each oxidant (reductant) has one usual product per medium. Couples that a restriction ties to named partners do not count:
 * they act
 * only with those.
 */
export function clashesOf(couples: readonly Couple[], restrictions: readonly Restriction[]): Clash[] {
  return (['oxidant', 'reductant'] as const).flatMap((as) => {
    const restricted = new Set(restrictions.filter((entry) => entry.as === as).map((entry) => entry.couple));
    const first = new Map<string, Couple>();
    return couples
      .filter(({ id }) => !restricted.has(id))
      .flatMap((couple) => usualMedia(couple, as).map((medium) => ({ couple, medium })))
      .flatMap(({ couple, medium }): Clash[] => {
        const species = as === 'oxidant' ? couple.oxidisedKey : couple.reducedKey;
        const other = first.get(`${species} ${medium}`);
        if (!other) first.set(`${species} ${medium}`, couple);
        return other ? [{ species, as, medium, couples: [other, couple] }] : [];
      });
  });
}

/** Media in which the couple is the usual one of its oxidised (reduced) form. */
export function usualMedia(couple: Couple, as: 'oxidant' | 'reductant'): readonly Medium[] {
  return as === 'oxidant' ? couple.usualOxidant : couple.usualReductant;
}
