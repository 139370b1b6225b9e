import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import type { Sided } from './balance-by-null-space.ts';
import type { Formula } from './formula.ts';

/** A ray while it is built: what is left of each constraint, and how much of each column it takes. */
interface Ray {
  readonly rest: readonly Rational[];
  readonly take: readonly Rational[];
}

const MOST_RAYS = 2000;

/**
 * Independent solutions in which every species stands on its side and every given species takes part.
 * The solutions of a sided balance are a cone; its edges are found by combining columns until each constraint is zero (Farkas
 * 1902), and sums of edges are solutions that use them all.
 * @returns one vector when the sides leave only one solution, two when there are more, or a given species that can take no part
 * @throws Fault `too-many-species`
 */
export function sidedSolutions(
  species: readonly Sided[],
  matrix: readonly (readonly Rational[])[],
): { readonly vectors: readonly (readonly Rational[])[] } | { readonly idle: Formula } {
  const edges = edgesOf(species, matrix);
  const total = edges.reduce(
    add,
    species.map(() => Rational.zero),
  );
  const idle = species.find(({ side }, index) => side !== 0 && total[index]!.isZero());
  if (idle) return { idle: idle.formula };
  const whole = edges.filter((edge) => species.every(({ side }, index) => side === 0 || !edge[index]!.isZero()));
  if (edges.length === 1) return { vectors: edges };
  if (whole.length >= 2) return { vectors: whole.slice(0, 2) };
  const first = whole[0] ?? total;
  return { vectors: [first, add(first, edges.find((edge) => edge !== first)!)] };
}

function add(one: readonly Rational[], other: readonly Rational[]): readonly Rational[] {
  return one.map((entry, index) => entry.plus(other[index]!));
}

function edgesOf(species: readonly Sided[], matrix: readonly (readonly Rational[])[]): (readonly Rational[])[] {
  // A species that may stand on either side is two columns, one for each.
  const columns = species.flatMap(({ side }, index) => (side === 0 ? [1, -1] : [side]).map((sign) => ({ index, sign })));
  const unit = (at: number) => columns.map((_, index) => (index === at ? Rational.one : Rational.zero));
  let rays: Ray[] = columns.map(({ index, sign }, at) => ({
    rest: matrix.map((row) => row[index]!.times(Rational.of(sign))),
    take: unit(at),
  }));
  for (let row = 0; row < matrix.length; row += 1) {
    rays = minimal(withConstraint(rays, row));
    if (rays.length > MOST_RAYS) throw new Fault('too-many-species', 'too many species to balance at once; give fewer', {});
  }
  const vectors = rays.map(({ take }) => {
    const vector = species.map(() => Rational.zero);
    columns.forEach(({ index, sign }, at) => {
      vector[index] = vector[index]!.plus(take[at]!.times(Rational.of(sign)));
    });
    return vector;
  });
  return vectors.filter((vector) => vector.some((entry) => !entry.isZero()));
}

/** The rays on which one constraint is zero: those that have it zero, and every positive one joined with every negative one. */
function withConstraint(rays: readonly Ray[], row: number): Ray[] {
  const of = (sign: number) => rays.filter(({ rest }) => rest[row]!.sign() === sign);
  const joined = of(1).flatMap((up) =>
    of(-1).map((down) => {
      const [a, b] = [down.rest[row]!.abs(), up.rest[row]!];
      const mix = (one: readonly Rational[], other: readonly Rational[]) =>
        one.map((entry, index) => entry.times(a).plus(other[index]!.times(b)));
      return { rest: mix(up.rest, down.rest), take: mix(up.take, down.take) };
    }),
  );
  return [...of(0), ...joined];
}

/** Drops rays that use every column of another one: they are sums of edges. */
function minimal(rays: readonly Ray[]): Ray[] {
  const supports = rays.map(({ take }) => take.map((entry) => !entry.isZero()));
  return rays.filter((_, index) => {
    const own = supports[index]!;
    return !supports.some((other, at) => {
      if (at === index || !other.every((used, column) => !used || own[column])) return false;
      const same = own.every((used, column) => used === other[column]);
      return !same || at < index;
    });
  });
}
