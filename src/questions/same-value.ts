import type { Equation, Term } from '../chemistry/equation.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { type Rounding, round } from '../exact/rounding.ts';
import type { Value } from './value.ts';

/** True when two values print alike under a rounding rule. Equations are alike when one is a multiple of the other. */
export function sameValue(a: Value, b: Value, rule: Rounding): boolean {
  if (a.kind === 'number' && b.kind === 'number') return a.unit === b.unit && round(a.value, rule).equals(round(b.value, rule));
  if (a.kind === 'equation' && b.kind === 'equation') return equationKey(a.equation) === equationKey(b.equation);
  if (a.kind === 'species' && b.kind === 'species') return keyOf(a.formula) === keyOf(b.formula);
  if (a.kind === 'ratio' && b.kind === 'ratio') return a.left.times(b.right).equals(b.left.times(a.right));
  if (a.kind === 'words' && b.kind === 'words') return a.key === b.key;
  if (a.kind === 'list' && b.kind === 'list') {
    return a.values.length === b.values.length && a.values.every((value, at) => sameValue(value, b.values[at]!, rule));
  }
  return false;
}

/** One text for all multiples of an equation, in whatever order its terms stand. */
export function equationKey(equation: Equation): string {
  const first = [...equation.left, ...equation.right].map(({ formula }) => keyOf(formula)).sort()[0];
  const all = [...equation.left, ...equation.right];
  const unit = all.find(({ formula }) => keyOf(formula) === first)?.coefficient;
  const side = (terms: readonly Term[]) =>
    terms
      .map(({ coefficient, formula }) => `${unit && !unit.isZero() ? coefficient.over(unit) : coefficient} ${keyOf(formula)}`)
      .sort()
      .join(' + ');
  return `${side(equation.left)} -> ${side(equation.right)}`;
}
