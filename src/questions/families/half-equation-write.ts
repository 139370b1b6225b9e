import { misfit } from '../../chemistry/balanced.ts';
import { hydrogenIon } from '../../chemistry/common-species.ts';
import type { Equation, Term } from '../../chemistry/equation.ts';
import { electron } from '../../chemistry/formula-parts.ts';
import { halfEquation } from '../../chemistry/half-equation.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import { coefficientOf, lowestTerms, reverseEquation } from '../../chemistry/terms.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Rational } from '../../exact/rational.ts';
import type { Value } from '../value.ts';
import { type HalfPlan, isSolvent, withoutElectrons } from './half-equation-plan.ts';

/** How oxygen and hydrogen are made up: rightly, with oxygen gas, or with H⁺ where there is none. */
export type MakeUp = 'right' | 'oxygen gas' | 'hydrogen ions';

/** What else a pupil does with the electrons: nothing wrong, the other side, or none at all. */
export type Placing = 'right' | 'wrong side' | 'none';

const OXYGEN = parseFormula('O2');

/** The half-equation that a pupil writes who makes up atoms in a way, and counts so many electrons for each unit of the subject. */
export function writtenHalf(plan: HalfPlan, makeUp: MakeUp, perUnit: Rational, placing: Placing = 'right'): Value {
  const skeleton = skeletonOf(plan, makeUp);
  const count = perUnit.times(coefficientOf(skeleton.left, keyOf(plan.subject)));
  const electrons: Term[] = placing === 'none' || count.isZero() ? [] : [{ coefficient: count, formula: electron }];
  const onLeft = plan.isReduction === (placing !== 'wrong side');
  const equation: Equation = onLeft
    ? { left: [...skeleton.left, ...electrons], right: skeleton.right }
    : { left: skeleton.left, right: [...skeleton.right, ...electrons] };
  return { kind: 'equation', equation, arrow: 'forward' };
}

function skeletonOf(plan: HalfPlan, makeUp: MakeUp): Equation {
  if (makeUp === 'oxygen gas') return withOxygenGas(plan);
  return makeUp === 'hydrogen ions' ? inAcid(plan) : plan.skeleton;
}

/** Built as if in acid. */
function inAcid({ couple, isReduction }: HalfPlan): Equation {
  const half = halfEquation(couple.oxidised, couple.reduced, 'acid');
  return withoutElectrons(isReduction ? half : reverseEquation(half));
}

/** Oxygen made up with O₂ where it is missing, hydrogen with H⁺; whole coefficients. */
function withOxygenGas({ skeleton }: HalfPlan): Equation {
  const keep = (terms: readonly Term[]) => terms.filter((term) => !isSolvent(term));
  let equation: Equation = { left: keep(skeleton.left), right: keep(skeleton.right) };
  for (const [element, formula, each] of [
    ['O', OXYGEN, 2],
    ['H', hydrogenIon, 1],
  ] as const) {
    const missing = misfit(equation).get(element)?.over(Rational.of(each));
    if (!missing) continue;
    const term: Term = { coefficient: missing.abs(), formula };
    equation =
      missing.sign() > 0 ? { ...equation, left: [...equation.left, term] } : { ...equation, right: [...equation.right, term] };
  }
  return lowestTerms(equation);
}

/** True when oxygen can be made up wrongly with gas: water is put in, and no oxygen gas stands there by right. */
export function temptsToOxygen({ skeleton, subject, product }: HalfPlan): boolean {
  const all = [...skeleton.left, ...skeleton.right];
  const isWaterPutIn =
    all.some(({ formula }) => keyOf(formula) === 'H2O') && ![subject, product].some((formula) => keyOf(formula) === 'H2O');
  return isWaterPutIn && !all.some(({ formula }) => keyOf(formula) === 'O2');
}
