import type { Fraction } from '../exact/fraction.ts';
import { writeNumber } from '../exact/printed-number.ts';
import { rounded } from '../exact/rounding.ts';
import { numberMark } from './answer.ts';

/** How a marker may also see a figure on the way: to three figures, and with fewer where only zeros are left away. One run each. */
export function figuresEnough(value: Fraction, unit: string): string[][] {
  const bare = [1, 2].find((significant) => rounded(value, { significant }).equals(value));
  return [3, ...(bare === undefined ? [] : [bare])].map((significant) => [numberMark(writeNumber(value, { significant }), unit)]);
}
