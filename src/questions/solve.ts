import { type Rounding, round } from '../exact/rounding.ts';
import type { Item, Slip, Step } from './question.ts';
import type { NodeId, Value, Values } from './value.ts';

/** How intermediate numbers are carried on: in full, as they are printed in the working, or by a rule for each step. */
export type Carrying = 'full' | 'printed' | ((step: Step) => Rounding);

/**
 * Works every step of an item.
 * @param slip put in the place of its step's own work; everything after it is worked rightly from what it gives
 * @returns data as printed and the value of every step
 */
export function solve(item: Pick<Item, 'data' | 'steps' | 'parts'>, carrying: Carrying = 'full', slip?: Slip): Values {
  const values = new Map<NodeId, Value>(item.data.map(({ id, value, printed }) => [id, roundValue(value, printed)]));
  const restarts = new Map(
    item.parts.flatMap(({ id, restart }) => (restart ? [[restart.step, { part: id, shown: restart.shown }] as const] : [])),
  );
  for (const step of item.steps) {
    const seen = restarts.size === 0 ? values : withRestarts(values, restarts, step);
    const value = slip?.at === step.id ? slip.work(seen) : step.work(seen);
    values.set(step.id, roundValue(value, ruleFor(carrying, step)));
  }
  return values;
}

function ruleFor(carrying: Carrying, step: Step): Rounding {
  if (carrying === 'full') return 'exact';
  return carrying === 'printed' ? step.printed : carrying(step);
}

/** A later part goes on from the value that an earlier part shows, whatever the pupil found there. */
function withRestarts(values: Values, restarts: ReadonlyMap<NodeId, { part: string; shown: Value }>, step: Step): Values {
  const seen = new Map(values);
  for (const [id, { part, shown }] of restarts) if (part !== step.part && seen.has(id)) seen.set(id, shown);
  return seen;
}

/** Rounds a number; leaves every other kind of value alone. */
export function roundValue(value: Value, rule: Rounding): Value {
  return value.kind === 'number' && rule !== 'exact' ? { ...value, value: round(value.value, rule) } : value;
}
