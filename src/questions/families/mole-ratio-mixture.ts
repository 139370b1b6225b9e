import type { SpeciesKey } from '../../chemistry/formula.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import type { Tables } from '../../potentials/tables.ts';
import { isBanned } from '../may-meet.ts';
import type { ReactingPair } from './mole-ratio-pairs.ts';
import { acidFor, type Substance } from './mole-ratio-substance.ts';

/** The anion that an acid brings. */
const BRINGS = { H2SO4: 'SO4^2-', HCl: 'Cl^-' } as const;

/**
 * True when two substances from the shelf, the acid that is added and what is made of them can be in one solution: no ban stands against it,
 * and nothing falls out (silver ions in dilute sulfuric acid, lead(II) ions that are made there).
 */
export function mayStandTogether(one: Substance, other: Substance, pair: ReactingPair, tables: Tables): boolean {
  const { oxidant, reductant, medium } = pair;
  const acid = acidFor({ known: one, found: other });
  const present: SpeciesKey[] = [one, other].flatMap(({ salt }) => [
    salt.gives,
    keyOf(salt.formula),
    ...salt.with.map(({ key }) => key),
  ]);
  if (medium === 'acid') present.push(BRINGS[acid]);
  const made = [...present, oxidant.reducedKey, reductant.oxidisedKey];
  const fallsOut = tables.facts.pairs.some(
    (fact) => fact.verdict === 'precipitates' && made.includes(fact.oxidant) && made.includes(fact.reductant),
  );
  return !fallsOut && !isBanned(present, tables, medium);
}
