import { Fraction } from '../exact/fraction.ts';
import { wholeNumbers } from '../exact/null-space.ts';
import { readSpecies, type Species } from '../reading/species.ts';

export const ELECTRON = 'e^-';

/** One side of an equation: how many of each species, by caret notation without states. */
export type Side = ReadonlyMap<string, Fraction>;
export interface Sides {
  readonly left: Side;
  readonly right: Side;
}

/** @throws Error when it is no formula */
export function speciesOf(key: string): Species {
  const species = readSpecies(key);
  if (!species) throw new Error(`${key} is not a formula`);
  return species;
}

/** How many of a species stand on a side. */
export const count = (side: Side, key: string): Fraction => side.get(key) ?? Fraction.zero;

/** A side from counts: `side({ 'H^+': 8 })`. */
export function side(counts: Readonly<Record<string, number | Fraction>>): Side {
  return new Map(
    Object.entries(counts).map(([key, each]) => [key, typeof each === 'number' ? Fraction.of(each) : each] as const),
  );
}

export const turnedRound = ({ left, right }: Sides): Sides => ({ left: right, right: left });

export function times({ left, right }: Sides, factor: Fraction): Sides {
  const scaled = (each: Side) => new Map([...each].map(([key, amount]) => [key, amount.multiply(factor)] as const));
  return { left: scaled(left), right: scaled(right) };
}

export function added(one: Sides, other: Sides): Sides {
  return { left: addedSide(one.left, other.left), right: addedSide(one.right, other.right) };
}

function addedSide(one: Side, other: Side): Side {
  const sum = new Map(one);
  for (const [key, amount] of other) sum.set(key, count(sum, key).add(amount));
  return sum;
}

/** What stands on both sides taken away from both. */
export function cancelled({ left, right }: Sides): Sides {
  const rest = (own: Side, other: Side) =>
    new Map(
      [...own].map(([key, amount]) => [key, amount.subtract(count(other, key))] as const).filter(([, each]) => each.side() > 0),
    );
  return { left: rest(left, right), right: rest(right, left) };
}

export function without({ left, right }: Sides, key: string): Sides {
  const dropped = (own: Side) => new Map([...own].filter(([each]) => each !== key));
  return { left: dropped(left), right: dropped(right) };
}

/** In whole numbers without a common factor. */
export function inLowestTerms({ left, right }: Sides): Sides {
  const whole = wholeNumbers([...left.values(), ...right.values()]);
  const named = (own: Side, from: number) => new Map([...own.keys()].map((key, at) => [key, whole[from + at]!] as const));
  return { left: named(left, 0), right: named(right, left.size) };
}

/** One writing for all ways of writing the same equation; order of terms does not count, scale does. */
export function canonical({ left, right }: Sides): string {
  const shown = (own: Side) =>
    [...own]
      .map(([key, amount]) => `${amount} ${key}`)
      .sort()
      .join(' + ');
  return `${shown(left)} -> ${shown(right)}`;
}
