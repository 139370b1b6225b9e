import type { Couple } from './couple.ts';
import type { Bystander, Facts, PairFact, Restriction, Speciation } from './facts.ts';
import type { SpeciesKey } from './formula.ts';

/** Couples by the species that acts, and facts by the couple or species that they are about. Built once for each table. */
export interface CoupleIndex {
  readonly byOxidised: ReadonlyMap<SpeciesKey, readonly Couple[]>;
  readonly byReduced: ReadonlyMap<SpeciesKey, readonly Couple[]>;
}

/** Facts by what they are about. */
export interface FactIndex {
  readonly restrictions: ReadonlyMap<string, readonly Restriction[]>;
  readonly oxidants: ReadonlyMap<SpeciesKey, readonly PairFact[]>;
  readonly bystanders: ReadonlyMap<string, Bystander>;
  readonly speciations: ReadonlyMap<string, Speciation>;
  readonly pairs: readonly PairFact[];
}

const COUPLES = new WeakMap<readonly Couple[], CoupleIndex>();
const FACTS = new WeakMap<Facts, FactIndex>();

export function indexCouples(couples: readonly Couple[]): CoupleIndex {
  let index = COUPLES.get(couples);
  if (!index) {
    index = {
      byOxidised: grouped(couples, (couple) => couple.oxidisedKey),
      byReduced: grouped(couples, (couple) => couple.reducedKey),
    };
    COUPLES.set(couples, index);
  }
  return index;
}

export function indexFacts(facts: Facts): FactIndex {
  let index = FACTS.get(facts);
  if (!index) {
    index = {
      restrictions: grouped(facts.restrictions, (row) => `${row.as} ${row.couple}`),
      oxidants: grouped(facts.pairs, (row) => row.oxidant),
      bystanders: new Map(facts.bystanders.map((row) => [`${row.as} ${row.species}`, row])),
      speciations: new Map(facts.speciations.map((row) => [`${row.medium} ${row.species}`, row])),
      pairs: facts.pairs,
    };
    FACTS.set(facts, index);
  }
  return index;
}

function grouped<T>(rows: readonly T[], keyOfRow: (row: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const key = keyOfRow(row);
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return groups;
}
