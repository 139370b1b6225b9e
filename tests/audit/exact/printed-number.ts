import { Fraction } from './fraction.ts';
import { type Figures, firstDigit, rounded } from './rounding.ts';

/** A number as it stands on paper. */
export interface PrintedNumber {
  readonly value: Fraction;
  /** decimal places shown, counted from the unit; negative where the last figure shown stands for tens or more */
  readonly places: number;
  readonly hasPlus: boolean;
  readonly text: string;
}

const NUMBER = /^([+\u2212]?)(\d+)(?:\.(\d+))?(?: × 10\^(-?\d+))?$/;
const FRACTION = /^([+\u2212]?)(?:(\d+) )?(\d+)\/(\d+)$/;
const HALF = /^([+\u2212]?)(\d*)½$/;

/** Reads `+1.56`, `2.449 × 10^-4`, `−5/2`, `+2½`. A hyphen in place of the minus sign is not read. @returns undefined for anything else */
export function readNumber(text: string): PrintedNumber | undefined {
  const sign = (mark: string, value: Fraction) => (mark === '\u2212' ? value.negative() : value);
  const plain = NUMBER.exec(text);
  if (plain) {
    const [, mark, whole, decimals = '', exponent = '0'] = plain;
    const places = decimals.length - Number(exponent);
    const digits = BigInt(`${whole}${decimals}`);
    const value = places >= 0 ? Fraction.of(digits, 10n ** BigInt(places)) : Fraction.of(digits * 10n ** BigInt(-places));
    return { value: sign(mark!, value), places, hasPlus: mark === '+', text };
  }
  const half = HALF.exec(text);
  if (half) {
    const value = Fraction.of(2n * BigInt(half[2] || '0') + 1n, 2n);
    return { value: sign(half[1]!, value), places: Number.POSITIVE_INFINITY, hasPlus: half[1] === '+', text };
  }
  const fraction = FRACTION.exec(text);
  if (!fraction) return undefined;
  const [, mark, whole = '0', above, below] = fraction;
  const value = Fraction.of(BigInt(whole) * BigInt(below!) + BigInt(above!), BigInt(below!));
  return { value: sign(mark!, value), places: Number.POSITIVE_INFINITY, hasPlus: mark === '+', text };
}

/**
 * How a figure ought to be printed: plain from 0.001 to 100 000, else in standard form; a true minus; a plus where signs are shown.
 * @param signed potentials and oxidation numbers show their plus; zero has no sign
 */
export function writeNumber(value: Fraction, figures: Figures, signed = false): string {
  const shown = rounded(value, figures);
  const mark = shown.side() < 0 ? '\u2212' : signed && shown.side() > 0 ? '+' : '';
  const size = shown.size();
  if (figures === 'whole') return mark + writeWhole(size);
  const places = 'places' in figures ? figures.places : figures.significant - 1 - firstDigit(shown);
  const isPlain =
    size.side() === 0 || (size.compare(Fraction.of(1, 1000)) >= 0 && size.compare(Fraction.of(100000)) < 0 && places >= 0);
  if (isPlain) return mark + writePlaces(size, places);
  const exponent = firstDigit(size);
  const tens = Fraction.of(10n ** BigInt(Math.abs(exponent)));
  return `${mark}${writePlaces(exponent >= 0 ? size.divide(tens) : size.multiply(tens), places + exponent)} × 10^${exponent}`;
}

function writePlaces(size: Fraction, places: number): string {
  const shown = Math.max(places, 0);
  const digits = ((size.above * 10n ** BigInt(shown)) / size.below).toString().padStart(shown + 1, '0');
  return shown === 0 ? digits : `${digits.slice(0, -shown)}.${digits.slice(-shown)}`;
}

/** All decimals of a number that ends, otherwise a fraction. */
function writeWhole(size: Fraction): string {
  for (let places = 0; places <= 8; places += 1) {
    if ((size.above * 10n ** BigInt(places)) % size.below === 0n) return writePlaces(size, places);
  }
  return size.toString();
}
