import type { Equation } from '../chemistry/equation.ts';
import type { Formula } from '../chemistry/formula.ts';
import { coefficientOf } from '../chemistry/terms.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { Rational } from '../exact/rational.ts';
import { type Expression, node, over, times } from './expression.ts';
import { valueAt } from './number-of.ts';
import type { Value, Values } from './value.ts';

type Ratio = Extract<Value, { kind: 'ratio' }>;

/** The ratio of the amounts of two reactants as an equation gives it, in lowest terms; 1 for one that has vanished from its left side. */
export function ratioIn(equation: Equation, found: Formula, known: Formula): Ratio {
  const coefficient = (formula: Formula) => {
    const whole = coefficientOf(equation.left, keyOf(formula));
    return whole.isZero() ? Rational.one : whole;
  };
  // 2MnO₄⁻ with 10Br⁻ is one to five.
  const { n, d } = coefficient(found).over(coefficient(known));
  return { kind: 'ratio', left: Rational.of(n), right: Rational.of(d), of: [found, known] };
}

/** The ratio at a node. Another kind of value is a fault of the family that asks. */
export function ratioAt(values: Values, id = 'ratio'): Ratio {
  const value = valueAt(values, id);
  if (value.kind !== 'ratio') throw new Error(`expected a ratio at \`${id}\``);
  return value;
}

/** A number of particles, without a unit. */
export const wholeValue = (value: Rational): Value => ({ kind: 'number', value, unit: '' });

/** The known amount times the ratio as a pupil writes it: a factor of one only where it is the whole ratio. Nodes: `amount`, `found-coefficient`, `known-coefficient`. */
export function writtenRatio(found: Rational, known: Rational): Expression {
  const [up, down] = [node('found-coefficient'), node('known-coefficient')];
  // `× 1` says that the ratio was looked at; without it the line would repeat a number.
  if (found.equals(known)) return times(node('amount'), up);
  if (known.equals(Rational.one)) return times(node('amount'), up);
  return found.equals(Rational.one) ? over(node('amount'), down) : times(node('amount'), over(up, down));
}
