import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Beaker } from '../chemistry/mixture.ts';
import { react } from '../chemistry/react.ts';
import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import { usualMedia } from './check-usual.ts';
import type { Tables } from './tables.ts';
import { CONDITIONS } from './vocabulary.ts';

/** A species that can go down (or up) more than one rung in acid, with an excess of a reagent. */
export interface Ladder {
  readonly start: SpeciesKey;
  readonly reagent: SpeciesKey;
}

/**
 * Ladders of the table in acid: every species with two rungs or more below it with every reductant, and every species with
 * two rungs
 * above it with every oxidant. Bystanders are no reagents.
 */
export function laddersOf(tables: Tables): Ladder[] {
  const [down, up] = [rungsOf(tables, 'oxidant'), rungsOf(tables, 'reductant')];
  return [...ladders(down, up), ...ladders(up, down)];
}

function ladders(
  rungs: readonly (readonly [SpeciesKey, SpeciesKey])[],
  partners: readonly (readonly [SpeciesKey, SpeciesKey])[],
): Ladder[] {
  const starts = [...new Set(rungs.map(([from]) => from))].filter((start) => depthFrom(start, rungs) >= 2);
  const reagents = [...new Set(partners.map(([from]) => from))];
  return starts.flatMap((start) => reagents.filter((reagent) => reagent !== start).map((reagent) => ({ start, reagent })));
}

type Role = 'oxidant' | 'reductant';

/** From what to what a role takes the couples that are usual in acid; bystanders are left out. */
function rungsOf({ couples, facts }: Tables, as: Role): (readonly [SpeciesKey, SpeciesKey])[] {
  const bystanders = facts.bystanders.filter((row) => row.as === as).map((row) => row.species);
  return couples
    .filter((couple) => !couple.calculationOnly && usualMedia(couple, as).includes('acid'))
    .map(({ oxidisedKey, reducedKey }) =>
      as === 'oxidant' ? ([oxidisedKey, reducedKey] as const) : ([reducedKey, oxidisedKey] as const),
    )
    .filter(([from]) => !bystanders.includes(from));
}

/** Rungs one below (above) the other, each the usual product of the one before; the way back is not taken. */
function depthFrom(start: SpeciesKey, rungs: readonly (readonly [SpeciesKey, SpeciesKey])[]): number {
  const been = new Set([start]);
  for (let at = start; ; ) {
    const next = rungs.find(([from, to]) => from === at && !been.has(to));
    if (!next) return been.size - 1;
    at = next[1];
    been.add(at);
  }
}

/**
 * The species that the start turns into, one after the other, by the potentials as printed, every condition declared.
 * @returns only the start when nothing happens
 */
export function pathOf({ start, reagent }: Ladder, tables: Tables): SpeciesKey[] {
  const beaker: Beaker = {
    reactants: [
      { formula: tables.speciesOf(start).formula, amount: Rational.one },
      { formula: tables.speciesOf(reagent).formula, amount: 'excess' },
    ],
    medium: 'acid',
    // all that a question could declare, so that only potentials decide
    values: 'printed',
    given: CONDITIONS,
  };
  try {
    const path = [start];
    for (const { from, to } of react(beaker, tables.couples, tables.facts).steps) if (path.at(-1) === from) path.push(to);
    return path;
  } catch (error) {
    if (error instanceof Fault) return [start]; // two excesses that never come to an end are no ladder
    throw error;
  }
}
