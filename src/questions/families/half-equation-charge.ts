import { misfit } from '../../chemistry/balanced.ts';
import type { Step } from '../question.ts';
import { keyAt, plainStep, wordsValue } from '../statement-step.ts';
import type { NodeId, Value, Values } from '../value.ts';
import type { Placing } from './half-equation-write.ts';

/** A half-equation as it is written with its electrons placed in a way. */
export type Written = (values: Values, placing: Balance) => Value;

/** What is done with the electrons: as `Placing`, or (of the partner) counted for one atom only. */
export type Balance = Placing | 'one atom';

export const balanceValue = (balance: Balance | 'unbalanced'): Value => wordsValue(balance, []);

/** Electrons as they were placed; charges that do not balance come of something before. */
export function placingAt(values: Values, id: NodeId): Balance {
  const key = keyAt(values, id);
  return key === 'wrong side' || key === 'none' || key === 'one atom' ? key : 'right';
}

/** The charge by itself, a mark of its own: it can balance though the atoms are made up in a way that is not allowed. */
export function chargeStep(id: NodeId, part: string, needs: readonly NodeId[], written: Written): Step {
  return plainStep(id, part, needs, 'electrons balance the charge', (values) => {
    const value = written(values, 'right');
    return balanceValue(value.kind === 'equation' && misfit(value.equation).has('charge') ? 'unbalanced' : 'right');
  });
}
