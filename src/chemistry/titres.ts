import type { Decimal } from '../exact/decimal.ts';
import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';

/** cm³, how close titres must be to be concordant. */
export const CONCORDANT = Rational.of(1, 10);

/** Titres that agree, and their mean. */
export interface Concordance {
  /** places in the list of titres, in order */
  readonly used: readonly number[];
  /** cm³, exact */
  readonly mean: Rational;
}

/**
 * The largest set of titres that lie within 0.10 cm³ of one another, and its mean.
 * @param titres cm³, rough one included or not: it falls out by itself
 * @throws Fault `no-concordant` when no two agree, `many-concordant` when two largest sets exist
 */
export function concordantTitres(titres: readonly Decimal[], within: Rational = CONCORDANT): Concordance {
  const values = titres.map((titre) => titre.value);
  const sets = values.map((low) => values.flatMap((value, at) => (isIn(value, low, within) ? [at] : [])));
  const size = Math.max(0, ...sets.map((set) => set.length));
  const largest = [...new Map(sets.filter((set) => set.length === size).map((set) => [set.join(), set])).values()];
  if (size < 2) throw new Fault('no-concordant', 'no two titres agree within 0.10 cm³', {});
  if (largest.length > 1) throw new Fault('many-concordant', 'two sets of titres agree equally well', {});
  const used = largest[0]!;
  const sum = used.reduce((total, at) => total.plus(values[at]!), Rational.zero);
  return { used, mean: sum.over(Rational.of(used.length)) };
}

function isIn(value: Rational, low: Rational, within: Rational): boolean {
  return value.compare(low) >= 0 && value.minus(low).compare(within) <= 0;
}

/** Percentage uncertainty of a quantity that was read `times` times with an uncertainty `each`: a titre is read twice. */
export function percentageUncertainty(quantity: Rational, each: Rational, times = 1): Rational {
  return each.times(Rational.of(times * 100)).over(quantity);
}
