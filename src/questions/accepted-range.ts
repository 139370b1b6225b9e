import type { Rational } from '../exact/rational.ts';
import { type Rounding, round } from '../exact/rounding.ts';
import { numberOf } from './number-of.ts';
import type { Datum, Item, Slip, Step } from './question.ts';
import { solve } from './solve.ts';
import type { NodeId } from './value.ts';

/** How a pupil keeps a number on the way; the working prints four figures, fewer than three are not accepted. */
const KEPT: readonly Rounding[] = ['exact', { sf: 3 }, { sf: 4 }, { sf: 5 }];

/**
 * Least and greatest printed answer at a numeric step when each of the numbers before it is kept in full or rounded to three, four or
 * five significant figures, in every combination: the figures a marker accepts.
 * @throws Error when the step is not numeric: a fault of the family
 */
export function acceptedRange(item: Item, id: NodeId, slip?: Slip): { readonly least: Rational; readonly most: Rational } {
  const step = item.steps.find((each) => each.id === id)!;
  const before = roundedBefore(item, step);
  const open = opened(item, [step.id, ...before], slip);
  const found: Rational[] = [];
  for (let choice = 0; choice < KEPT.length ** before.length; choice += 1) {
    const kept = new Map(before.map((each, at) => [each, KEPT[Math.floor(choice / KEPT.length ** at) % KEPT.length]!] as const));
    const values = solve(open, (each) => kept.get(each.id) ?? 'exact', slip);
    found.push(round(numberOf(values, id), step.printed));
  }
  found.sort((a, b) => a.compare(b));
  return { least: found[0]!, most: found.at(-1)! };
}

/** The item up to a step, with only this, some before it and what lies between left to work; the rest is given in full. */
function opened(item: Item, ids: readonly NodeId[], slip: Slip | undefined): Pick<Item, 'data' | 'steps' | 'parts'> {
  const left = new Set(ids);
  const upTo = item.steps.slice(0, item.steps.findIndex(({ id }) => id === ids[0]) + 1);
  for (const { id, needs } of upTo) if (needs.some((need) => left.has(need))) left.add(id);
  const values = solve(item, 'full', slip);
  const given = upTo
    .filter(({ id }) => !left.has(id))
    .map(({ id }): Datum => ({ id, role: '', value: values.get(id)!, printed: 'exact' }));
  return { data: [...item.data, ...given], steps: upTo.filter(({ id }) => left.has(id)), parts: item.parts };
}

/** Numeric steps that the step depends on and that a pupil may round: whole numbers are not. */
function roundedBefore(item: Item, step: Step): NodeId[] {
  const byId = new Map(item.steps.map((each) => [each.id, each]));
  const seen = new Set<NodeId>();
  const visit = (id: NodeId) => {
    const each = byId.get(id);
    if (!each || seen.has(id)) return;
    seen.add(id);
    each.needs.forEach(visit);
  };
  step.needs.forEach(visit);
  return [...seen].filter((id) => byId.get(id)!.printed !== 'exact');
}
