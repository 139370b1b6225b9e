import { Fault } from './fault.ts';
import { Rational } from './rational.ts';
import { magnitudeOf, roundToFigures, roundToPlaces } from './rounding.ts';

/** The minus sign that is printed (U+2212). */
export const MINUS = '\u2212';

/** A number as it stands on paper: its value and how many decimal places are shown. `places` may be negative (1.2 × 10³ has −2). */
export interface Decimal {
  readonly value: Rational;
  readonly places: number;
}

/**
 * Reads a plain decimal such as `-0.7618` and keeps its places: `0.80` has two.
 * @throws Fault `not-a-number`
 */
export function parseDecimal(text: string): Decimal {
  const plain = text.trim().replace(MINUS, '-');
  const match = /^[+-]?\d+(?:\.(\d+))?$/.exec(plain);
  if (!match) {
    throw new Fault('not-a-number', `expected a decimal number such as -0.76, found \`${text}\``, {
      text,
      at: 0,
      length: text.length,
    });
  }
  return { value: Rational.parse(plain), places: match[1]?.length ?? 0 };
}

/** The value rounded to `places` decimals, ready to print. */
export function decimalAt(value: Rational, places: number): Decimal {
  return { value: roundToPlaces(value, places), places };
}

/** The value rounded to `figures` significant figures, ready to print. 9.996 to three figures is 10.0. */
export function decimalWithFigures(value: Rational, figures: number): Decimal {
  const rounded = roundToFigures(value, figures);
  return { value: rounded, places: figures - 1 - magnitudeOf(rounded) };
}

/** Significant figures shown by a decimal: 0.0250 shows three; zero shows its places plus one. */
export function figuresOf(decimal: Decimal): number {
  return decimal.value.isZero() ? decimal.places + 1 : magnitudeOf(decimal.value) + decimal.places + 1;
}

/** Plain decimal text with a hyphen-minus, for machines: `-0.76`. Parses back. */
export function decimalText({ value, places }: Decimal): string {
  const shown = Math.max(places, 0);
  const scaled = roundToPlaces(value, shown).times(Rational.of(10n ** BigInt(shown)));
  const digits = scaled
    .abs()
    .n.toString()
    .padStart(shown + 1, '0');
  const whole = digits.slice(0, digits.length - shown);
  const sign = value.sign() < 0 && !/^0*$/.test(digits) ? '-' : '';
  return `${sign}${whole}${shown > 0 ? `.${digits.slice(-shown)}` : ''}`;
}

/**
 * Text as printed: true minus, `+` when `signed` and greater than zero, scientific form (`1.20 × 10⁻⁴`, with the power as caret text
 * `×10^-4`) is the printer's affair and not made here.
 */
export function printDecimal(decimal: Decimal, signed = false): string {
  const text = decimalText(decimal).replace('-', MINUS);
  return signed && decimal.value.sign() > 0 ? `+${text}` : text;
}
