import { Fraction } from '../exact/fraction.ts';
import { nullSpace, wholeNumbers } from '../exact/null-space.ts';
import { type Side, type Sides, speciesOf } from './sides.ts';

/** What goes in must come out: atoms of each element, and charge. @returns each that does not, in words */
export function imbalances(equation: Sides): string[] {
  const [left, right] = [contents(equation.left), contents(equation.right)];
  return [...new Set([...left.keys(), ...right.keys()])].flatMap((what) => {
    const [before, after] = [left.get(what) ?? Fraction.zero, right.get(what) ?? Fraction.zero];
    return before.equals(after) ? [] : [`${what}: ${before} on the left, ${after} on the right`];
  });
}

function contents(side: Side): Map<string, Fraction> {
  const total = new Map<string, Fraction>();
  for (const [key, amount] of side) {
    const { atoms, charge } = speciesOf(key);
    for (const [what, each] of [...atoms, ['charge', charge] as const]) {
      total.set(what, (total.get(what) ?? Fraction.zero).add(amount.multiply(Fraction.of(each))));
    }
  }
  return total;
}

/**
 * The coefficients that the species alone call for.
 * @returns the one balanced equation, or in how many independent ways it can be balanced when that is not one
 */
export function balanced(left: readonly string[], right: readonly string[]): Sides | number {
  const keys = [...left, ...right];
  const sign = keys.map((_, at) => (at < left.length ? 1 : -1));
  const species = keys.map(speciesOf);
  const elements = [...new Set(species.flatMap(({ atoms }) => [...atoms.keys()]))];
  const rows = [
    ...elements.map((element) => species.map(({ atoms }, at) => Fraction.of((atoms.get(element) ?? 0) * sign[at]!))),
    species.map(({ charge }, at) => Fraction.of(charge * sign[at]!)),
  ];
  const ways = nullSpace(rows);
  if (ways.length !== 1) return ways.length;
  const whole = wholeNumbers(ways[0]!);
  if (whole.some((each) => each.side() <= 0)) return 0;
  const named = (own: readonly string[], from: number) => new Map(own.map((key, at) => [key, whole[from + at]!] as const));
  return { left: named(left, 0), right: named(right, left.length) };
}
