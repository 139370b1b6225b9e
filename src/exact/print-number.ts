import { type Decimal, printDecimal } from './decimal.ts';
import { Rational } from './rational.ts';
import { magnitudeOf } from './rounding.ts';

const SMALL = Rational.parse('0.001');
const LARGE = Rational.parse('100000');

/**
 * A decimal as it is printed in working and answers: plain between 0.001 and 100 000, otherwise in standard form with the power in
 * caret notation (`4.690 × 10^-4`), which every printer sets as a superscript. Trailing places that are not significant (negative
 * `places`) also call for standard form, so that the figures shown are always the figures meant.
 */
export function printNumber(decimal: Decimal, signed = false): string {
  const size = decimal.value.abs();
  const plain = size.isZero() || (size.compare(SMALL) >= 0 && size.compare(LARGE) < 0 && decimal.places >= 0);
  if (plain) return printDecimal(decimal, signed);
  const power = magnitudeOf(decimal.value);
  const scale = power >= 0 ? Rational.of(1n, 10n ** BigInt(power)) : Rational.of(10n ** BigInt(-power));
  const mantissa: Decimal = { value: decimal.value.times(scale), places: decimal.places + power };
  return `${printDecimal(mantissa, signed)} × 10^${power < 0 ? `-${-power}` : power}`;
}
