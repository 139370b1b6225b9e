import { Rational } from '../exact/rational.ts';
import { magnitudeOf } from '../exact/rounding.ts';

/**
 * Natural logarithm of a positive rational of any size, as the nearest doubles give it: the power of ten is split off
 * exactly, so that numbers outside the range of doubles are no trouble.
 */
export function naturalLog(value: Rational): number {
  if (value.sign() <= 0) throw new RangeError('a logarithm needs a number above zero');
  const power = magnitudeOf(value);
  const ten = 10n ** BigInt(Math.abs(power));
  const mantissa = power >= 0 ? value.over(Rational.of(ten)) : value.times(Rational.of(ten));
  return Math.log(toDouble(mantissa)) + power * Math.LN10;
}

/** A number that may lie far outside the range of doubles: mantissa × 10^exponent, 1 ≤ |mantissa| < 10. */
export interface Scientific {
  readonly mantissa: number;
  readonly exponent: number;
}

/** e to a power, of any size. */
export function exponential(power: number): Scientific {
  const tens = power / Math.LN10;
  const exponent = Math.floor(tens);
  const mantissa = Math.exp((tens - exponent) * Math.LN10);
  return mantissa >= 10 ? { mantissa: mantissa / 10, exponent: exponent + 1 } : { mantissa, exponent };
}

/** `6.8e+9`: a scientific number with so many significant figures, rounded half away from zero. */
export function scientificText({ mantissa, exponent }: Scientific, figures: number): string {
  const text = mantissa.toFixed(figures - 1);
  if (text.startsWith('10')) return scientificText({ mantissa: mantissa / 10, exponent: exponent + 1 }, figures);
  return `${text}e${exponent < 0 ? '-' : '+'}${Math.abs(exponent)}`;
}

/** The nearest double of a rational between 1 and 10, whose parts may be too long for doubles. */
function toDouble(value: Rational): number {
  return Number((value.n * 10n ** 20n) / value.d) / 1e20;
}
