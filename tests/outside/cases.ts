import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { Rational } from '../../src/exact/rational.ts';

/**
 * A worked example or exercise with its printed answer. The source stands in the case; `given` and `answer` depend on the
 * kind.
 */
export interface WorkedCase<Given = unknown, Answer = unknown> {
  readonly id: string;
  readonly given: Given;
  readonly answer: Answer;
  readonly source: string;
  readonly rounding?: {
    readonly printed: string | Readonly<Record<string, string>>;
    readonly tolerance_last_digit_units?: number;
    readonly tolerance_abs?: number;
  } | null;
  readonly note?: string;
}

/** Cases of one kind, copied from open sources. */
export function casesOf<Given, Answer>(kind: string): WorkedCase<Given, Answer>[] {
  return JSON.parse(readFileSync(new URL(`data/worked-${kind}.json`, import.meta.url), 'utf8'));
}

/** One unit of the last figure of a printed number; trailing zeros of a whole number are not counted as figures. */
export function lastFigure(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.replace('−', '-').toLowerCase().split('e');
  const places = mantissa.includes('.') ? mantissa.split('.')[1]!.length : -/0*$/.exec(mantissa.replace(/^-?0$/, ''))![0].length;
  return Number(`1e${Number(exponent) - places}`);
}

/**
 * True to the last figure that is printed. `units` is the tolerance in last figures: a half, unless the source rounded on the
 * way.
 */
export function expectPrinted(value: Rational | number, printed: string | number, units = 0.5): void {
  const text = String(printed);
  const found = value instanceof Rational ? value.toNumber() : value;
  const off = Math.abs(found - Number(text.replace('−', '-'))) / lastFigure(text);
  // A millionth of a figure for the double that is compared.
  expect(off, `${found} is printed ${text}`).toBeLessThanOrEqual(units + 1e-6);
}

/** What a case prints for a quantity, and the tolerance it states for it. */
export function printedOf(each: WorkedCase, name: string): [text: string | number, units: number] {
  const printed = each.rounding?.printed;
  const text = typeof printed === 'object' ? printed[name] : printed;
  return [
    text ?? (each.answer as Readonly<Record<string, string | number>>)[name]!,
    each.rounding?.tolerance_last_digit_units ?? 0.5,
  ];
}

export const r = (value: string | number): Rational => Rational.parse(String(value));
