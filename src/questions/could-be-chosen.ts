import { cancelEquation } from '../chemistry/terms.ts';
import { Rational } from '../exact/rational.ts';
import type { Rounding } from '../exact/rounding.ts';
import { sameValue } from './same-value.ts';
import { showNumber } from './show-value.ts';
import type { Value } from './value.ts';

/**
 * A figure further from the right one than this factor is absurd rather than wrong: nobody would choose it. Thirty by common practice, and
 * a ratio of six to one turned upside down, which cannot be shown in any other way. A signed figure (a potential) is measured from a zero
 * of its own: a sum or a difference near it is nothing absurd.
 */
const ABSURD = Rational.of(36);

/**
 * True when a wrong value may stand beside the right one as an option: a figure of a size that somebody could believe and written in the
 * same notation, an equation that says something else than the right one (not the same with a species left on both sides, which is true).
 */
export function couldBeChosen(wrong: Value, right: Value, rule: Rounding): boolean {
  if (wrong.kind === 'number' && right.kind === 'number') {
    return (
      (right.signed || !isAbsurd(wrong.value, right.value)) &&
      isStandardForm(wrong.value, rule) === isStandardForm(right.value, rule)
    );
  }
  if (wrong.kind === 'equation' && right.kind === 'equation') {
    return !sameValue({ ...wrong, equation: cancelEquation(wrong.equation) }, right, rule);
  }
  return true;
}

function isAbsurd(wrong: Rational, right: Rational): boolean {
  if (wrong.isZero() || right.isZero()) return false;
  const factor = wrong.over(right).abs();
  return factor.compare(ABSURD) > 0 || factor.compare(Rational.one.over(ABSURD)) < 0;
}

const isStandardForm = (value: Rational, rule: Rounding): boolean => showNumber(value, rule).includes('×');
