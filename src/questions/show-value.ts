import type { Inline } from '../document/inline.ts';
import { decimalAt, decimalWithFigures, MINUS } from '../exact/decimal.ts';
import { printNumber } from '../exact/print-number.ts';
import type { Rational } from '../exact/rational.ts';
import { type Rounding, round } from '../exact/rounding.ts';
import type { Value } from './value.ts';

/** A number as it is printed under a rounding rule: `+1.56`, `4.690 × 10^-4`. Exact values print all their decimals, or a fraction. */
export function showNumber(value: Rational, rule: Rounding, signed = false): string {
  if (rule === 'exact') return printExact(value, signed);
  return printNumber('dp' in rule ? decimalAt(value, rule.dp) : decimalWithFigures(value, rule.sf), signed);
}

/** A terminating decimal of up to eight places in full, anything else as a fraction. */
function printExact(value: Rational, signed: boolean): string {
  for (let places = 0; places <= 8; places += 1) {
    if (round(value, { dp: places }).equals(value)) return printNumber({ value, places }, signed);
  }
  const sign = value.sign() < 0 ? MINUS : signed ? '+' : '';
  return `${sign}${value.abs()}`;
}

/**
 * A value as inlines.
 * @param role the datum or step it prints, so that a finished page can be audited
 */
export function showValue(value: Value, rule: Rounding, role?: string): Inline[] {
  const tagged = role === undefined ? {} : { role };
  switch (value.kind) {
    case 'number':
      return [{ kind: 'quantity', number: showNumber(value.value, rule, value.signed), unit: value.unit, ...tagged }];
    case 'equation':
      return [{ kind: 'equation', equation: value.equation, arrow: value.arrow, ...tagged }];
    case 'species':
      return [{ kind: 'formula', formula: value.formula, ...tagged }];
    case 'ratio':
      return [{ kind: 'quantity', number: `${value.left} : ${value.right}`, unit: '', ...tagged }];
    case 'words':
      return [...value.content];
    case 'list':
      return value.values.flatMap((each, at) => [...(at === 0 ? [] : [joinerOf(value, at)]), ...showValue(each, rule, role)]);
  }
}

function joinerOf(list: Extract<Value, { kind: 'list' }>, at: number): Inline {
  if (list.joiner === 'then') return { kind: 'text', text: ' → ' };
  return { kind: 'text', text: at === list.values.length - 1 ? ' and ' : ', ' };
}
