import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Tables } from '../potentials/tables.ts';
import { isBanned } from './may-meet.ts';

/** Anions of the acids that a mixture is acidified with; nitric acid is itself an oxidant. */
const ANIONS: readonly SpeciesKey[] = ['SO4^2-', 'Cl^-'];

/** True when dilute sulfuric or hydrochloric acid can be added to what is named: its anion neither falls out nor reacts. */
export function acidStands(present: readonly SpeciesKey[], tables: Tables): boolean {
  return ANIONS.some((anion) => standsWith(anion, present, tables));
}

/** True when an anion can stand in acid with every species named. */
export function standsWith(anion: SpeciesKey, present: readonly SpeciesKey[], tables: Tables): boolean {
  const fallsOut = tables.facts.pairs.some(
    ({ verdict, oxidant, reductant, media }) =>
      verdict === 'precipitates' &&
      (!media || media.includes('acid')) &&
      ((oxidant === anion && present.includes(reductant)) || (reductant === anion && present.includes(oxidant))),
  );
  // one by one: what the species named do to each other is another question
  return !fallsOut && present.every((key) => !isBanned([anion, key], tables, 'acid'));
}
