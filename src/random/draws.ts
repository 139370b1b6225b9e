import seedrandom from 'seedrandom';
import type { Decimal } from '../exact/decimal.ts';
import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';

/** Draws from one seeded stream. Every method consumes the stream, so the order of calls is part of a question's identity. */
export interface Draws {
  /** a whole number from `least` to `most`, both included */
  integer(least: number, most: number): number;
  /** @throws Fault `empty-draw` when there is nothing to pick from */
  pick<T>(items: readonly T[]): T;
  /** picks in proportion to the weights, which are whole numbers and not all zero */
  weighted<T>(items: readonly { readonly item: T; readonly weight: number }[]): T;
  /** a new array in random order; the argument stays as it is */
  shuffle<T>(items: readonly T[]): T[];
  /** a decimal on the grid `least`, `least + step` … up to `most`, printed with `places` decimals */
  decimal(least: string, most: string, step: string, places: number): Decimal;
  /** true in `times` cases out of `outOf` */
  chance(times: number, outOf: number): boolean;
}

/**
 * The stream that belongs to a label. The same label always gives the same draws, on every machine.
 * @throws Fault `empty-seed`: an empty label would make the generator seed itself from the clock
 */
export function drawsFrom(label: string): Draws {
  if (label === '') throw new Fault('empty-seed', 'a seed needs at least one character');
  const next = seedrandom(label);
  const integer = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  const pick = <T>(items: readonly T[]): T => {
    if (items.length === 0) throw new Fault('empty-draw', 'there is nothing to draw from');
    return items[integer(0, items.length - 1)]!;
  };
  return {
    integer,
    pick,
    weighted: (items) => weightedPick(items, integer),
    shuffle: (items) => shuffled(items, integer),
    decimal: (least, most, step, places) => {
      const [from, to, by] = [Rational.parse(least), Rational.parse(most), Rational.parse(step)];
      const steps = Number(to.minus(from).over(by).n / to.minus(from).over(by).d);
      return { value: from.plus(by.times(Rational.of(integer(0, steps)))), places };
    },
    chance: (times, outOf) => integer(1, outOf) <= times,
  };
}

type IntegerDraw = (least: number, most: number) => number;

function weightedPick<T>(items: readonly { readonly item: T; readonly weight: number }[], integer: IntegerDraw): T {
  const total = items.reduce((sum, { weight }) => sum + weight, 0);
  if (total <= 0) throw new Fault('empty-draw', 'there is nothing to draw from');
  let left = integer(1, total);
  for (const { item, weight } of items) {
    left -= weight;
    if (left <= 0) return item;
  }
  return items[items.length - 1]!.item;
}

/** Fisher–Yates, from the end. */
function shuffled<T>(items: readonly T[], integer: IntegerDraw): T[] {
  const order = [...items];
  for (let last = order.length - 1; last > 0; last -= 1) {
    const other = integer(0, last);
    [order[last], order[other]] = [order[other]!, order[last]!];
  }
  return order;
}
