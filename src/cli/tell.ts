import { type Decimal, decimalText, printDecimal } from '../exact/decimal.ts';
import type { Rational } from '../exact/rational.ts';

/** Lines one below the other; what is absent is left out. */
export function lines(...parts: readonly (string | undefined | readonly string[])[]): string {
  return parts.flatMap((part) => part ?? []).join('\n');
}

/** Rows of cells, each column as wide as its widest cell. */
export function columns(rows: readonly (readonly string[])[], indent = '  '): string[] {
  const widths = rows.reduce<number[]>((all, row) => row.map((cell, at) => Math.max(all[at] ?? 0, [...cell].length)), []);
  const padded = (cell: string, at: number) => cell + ' '.repeat(Math.max(0, (widths[at] ?? 0) - [...cell].length));
  return rows.map((row) => `${indent}${row.map(padded).join('  ')}`.trimEnd());
}

/** `a, b and c` */
export function listed(words: readonly string[]): string {
  return [words.slice(0, -1).join(', '), words.at(-1)].filter(Boolean).join(' and ');
}

/** A potential as it is spoken of: sign always, true minus, digits as published. */
export function volts(potential: Decimal): string {
  return `${printDecimal(potential, true)} V`;
}

/** A terminating decimal in full, any other number as a fraction: exact either way, and parses back. */
export function exactText(value: Rational): string {
  const places = decimalPlaces(value.d);
  return places === undefined ? value.toString() : decimalText({ value, places });
}

/** Decimal places that a denominator needs; undefined when it holds a prime other than 2 and 5. */
function decimalPlaces(denominator: bigint): number | undefined {
  let [rest, twos, fives] = [denominator, 0, 0];
  for (; rest % 2n === 0n; rest /= 2n) twos += 1;
  for (; rest % 5n === 0n; rest /= 5n) fives += 1;
  return rest === 1n ? Math.max(twos, fives) : undefined;
}

/** With its sign, for machines: `+6`, `-1/2`, `0`. */
export function signed(number: Rational): string {
  return `${number.sign() > 0 ? '+' : ''}${number}`;
}
