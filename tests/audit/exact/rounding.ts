import { Fraction } from './fraction.ts';

/** How a figure is printed: to decimal places, to significant figures, or as it is. */
export type Figures = { readonly places: number } | { readonly significant: number } | 'whole';

const power = (exponent: number): Fraction =>
  exponent >= 0 ? Fraction.of(10n ** BigInt(exponent)) : Fraction.of(1n, 10n ** BigInt(-exponent));

/** Rounded to decimal places, halves away from zero. Negative places round to tens, hundreds … */
export function toPlaces(value: Fraction, places: number): Fraction {
  const scaled = value.multiply(power(places));
  const size = scaled.size();
  const whole = (size.above * 2n + size.below) / (size.below * 2n);
  return Fraction.of(scaled.side() < 0 ? -whole : whole).multiply(power(-places));
}

/** The power of ten of the first digit: 0 for 1 to 9.99, −3 for 0.001. Zero has 0. */
export function firstDigit(value: Fraction): number {
  const size = value.size();
  if (size.side() === 0) return 0;
  let guess = size.above.toString().length - size.below.toString().length;
  while (power(guess).compare(size) > 0) guess -= 1;
  while (power(guess + 1).compare(size) <= 0) guess += 1;
  return guess;
}

export function toFigures(value: Fraction, significant: number): Fraction {
  return toPlaces(value, significant - 1 - firstDigit(value));
}

export function rounded(value: Fraction, figures: Figures): Fraction {
  if (figures === 'whole') return value;
  return 'places' in figures ? toPlaces(value, figures.places) : toFigures(value, figures.significant);
}
