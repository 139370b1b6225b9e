import type { Rational } from '../exact/rational.ts';
import { round } from '../exact/rounding.ts';
import { numberOf } from './number-of.ts';
import type { Item, Slip, Step } from './question.ts';
import { solve } from './solve.ts';
import type { NodeId } from './value.ts';

/**
 * Least and greatest printed answer at a numeric step when any of the numbers before it are rounded to three significant figures or
 * not: the figures a marker accepts.
 * @throws Error when the step is not numeric: a fault of the family
 */
export function acceptedRange(item: Item, id: NodeId, slip?: Slip): { readonly least: Rational; readonly most: Rational } {
  const step = item.steps.find((each) => each.id === id)!;
  const before = roundedBefore(item, step);
  const found: Rational[] = [];
  for (let choice = 0; choice < 2 ** before.length; choice += 1) {
    const rounded = new Set(before.filter((_, at) => (choice >> at) & 1));
    const values = solve(item, (each) => (rounded.has(each.id) ? { sf: 3 } : 'exact'), slip);
    found.push(round(numberOf(values, id), step.printed));
  }
  found.sort((a, b) => a.compare(b));
  return { least: found[0]!, most: found.at(-1)! };
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
