import { Rational } from './rational.ts';

/** A rule that turns an exact value into the one that is printed. */
export type Rounding = { readonly dp: number } | { readonly sf: number } | 'exact';

/** Nearest integer, halves away from zero. */
export function halfAwayFromZero(value: Rational): bigint {
  const doubled = value.abs().n * 2n + value.d;
  const magnitude = doubled / (value.d * 2n);
  return value.n < 0n ? -magnitude : magnitude;
}

/** Rounds to a number of decimal places (negative places round to tens, hundreds …), halves away from zero. */
export function roundToPlaces(value: Rational, places: number): Rational {
  const scale = places >= 0 ? Rational.of(10n ** BigInt(places)) : Rational.of(1n, 10n ** BigInt(-places));
  return Rational.of(halfAwayFromZero(value.times(scale))).over(scale);
}

/** Power of ten of the leading digit: 0 for 3.2, −2 for 0.032; 0 for zero itself. */
export function magnitudeOf(value: Rational): number {
  if (value.isZero()) return 0;
  const size = value.abs();
  let power = size.n.toString().length - size.d.toString().length;
  const tenTo = (p: number) => (p >= 0 ? Rational.of(10n ** BigInt(p)) : Rational.of(1n, 10n ** BigInt(-p)));
  if (size.compare(tenTo(power)) < 0) power -= 1;
  return power;
}

/** Rounds to a number of significant figures, halves away from zero. */
export function roundToFigures(value: Rational, figures: number): Rational {
  return roundToPlaces(value, figures - 1 - magnitudeOf(value));
}

/** Applies a rounding rule; `exact` leaves the value alone. */
export function round(value: Rational, rule: Rounding): Rational {
  if (rule === 'exact') return value;
  return 'dp' in rule ? roundToPlaces(value, rule.dp) : roundToFigures(value, rule.sf);
}
