import { standardEmf, THRESHOLD } from '../chemistry/cell.ts';
import type { Couple } from '../chemistry/couple.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Decimal } from '../exact/decimal.ts';
import { decimalText } from '../exact/decimal.ts';
import { type Ladder, laddersOf, pathOf } from './ladder-paths.ts';
import type { Tables } from './tables.ts';

/** What E°cell, as printed, says of a pair: at least +0.10 V, at most −0.10 V, or too close to call. */
export type Outcome = 'reacts' | 'borderline' | 'does not react';

/** A couple whose potential is not the same in both tables. */
export interface ValueDifference {
  readonly id: string;
  readonly first: Decimal;
  readonly second: Decimal;
}

/** The oxidised form of one couple with the reduced form of another, told apart by the two tables. */
export interface FlippedPair {
  readonly oxidant: string;
  readonly reductant: string;
  readonly first: { readonly emf: Decimal; readonly outcome: Outcome };
  readonly second: { readonly emf: Decimal; readonly outcome: Outcome };
}

/** A ladder that takes another way, or stops at another rung. */
export interface FlippedLadder extends Ladder {
  readonly first: readonly SpeciesKey[];
  readonly second: readonly SpeciesKey[];
}

/** How two tables differ, and which answers flip. */
export interface TableComparison {
  readonly values: readonly ValueDifference[];
  readonly onlyFirst: readonly string[];
  readonly onlySecond: readonly string[];
  readonly pairs: readonly FlippedPair[];
  readonly ladders: readonly FlippedLadder[];
}

/** Compares two tables by the potentials as printed, which sheets compute from; values that differ as stored are told too. */
export function compareTables(first: Tables, second: Tables): TableComparison {
  const shared = first.couples.flatMap((one) => {
    const other = second.couples.find((each) => each.id === one.id);
    return other ? [{ one, other }] : [];
  });
  const ids = new Set(shared.map(({ one }) => one.id));
  const values = shared
    .filter(({ one, other }) => decimalText(one.stored) !== decimalText(other.stored))
    .map(({ one, other }) => ({ id: one.id, first: one.stored, second: other.stored }));
  return {
    values,
    onlyFirst: first.couples.map(({ id }) => id).filter((id) => !ids.has(id)),
    onlySecond: second.couples.map(({ id }) => id).filter((id) => !ids.has(id)),
    pairs: flippedPairs(shared),
    ladders: flippedLadders(first, second),
  };
}

interface Shared {
  readonly one: Couple;
  readonly other: Couple;
}

/** Each pair of couples that can meet in one medium, once, as the reaction that one of the tables lets happen. */
function flippedPairs(shared: readonly Shared[]): FlippedPair[] {
  const used = shared.filter(({ one, other }) => !one.calculationOnly && !other.calculationOnly);
  return used.flatMap((upper, at) =>
    used
      .slice(0, at)
      .filter((lower) => canMeet(upper.one, lower.one))
      .flatMap((lower) => {
        const [onward, back] = [flip(upper, lower), flip(lower, upper)];
        if (onward.first.outcome === onward.second.outcome) return [];
        return onward.first.outcome === 'reacts' || onward.second.outcome === 'reacts' ? [onward] : [back];
      }),
  );
}

/** True when one can be the oxidant and the other the reductant in some medium. */
function canMeet(one: Couple, other: Couple): boolean {
  const shares = (oxidant: Couple, reductant: Couple) =>
    oxidant.usualOxidant.some((medium) => reductant.usualReductant.includes(medium));
  return shares(one, other) || shares(other, one);
}

function flip(oxidant: Shared, reductant: Shared): FlippedPair {
  const first = outcomeOf(standardEmf(reductant.one, oxidant.one, 'printed'));
  const second = outcomeOf(standardEmf(reductant.other, oxidant.other, 'printed'));
  return { oxidant: oxidant.one.id, reductant: reductant.one.id, first, second };
}

function outcomeOf(emf: Decimal): FlippedPair['first'] {
  if (emf.value.abs().compare(THRESHOLD) < 0) return { emf, outcome: 'borderline' };
  return { emf, outcome: emf.value.sign() > 0 ? 'reacts' : 'does not react' };
}

function flippedLadders(first: Tables, second: Tables): FlippedLadder[] {
  const known = new Set(laddersOf(second).map(nameOf));
  return laddersOf(first)
    .filter((ladder) => known.has(nameOf(ladder)))
    .map((ladder) => ({ ...ladder, first: pathOf(ladder, first), second: pathOf(ladder, second) }))
    .filter((ladder) => ladder.first.join() !== ladder.second.join());
}

function nameOf({ start, reagent }: Ladder): string {
  return `${start} ${reagent}`;
}
