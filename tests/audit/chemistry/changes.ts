import type { Fraction } from '../exact/fraction.ts';
import { oxidationNumber } from './oxidation-number.ts';
import { type Side, type Sides, speciesOf } from './sides.ts';

/** An element whose oxidation number changes: from which species to which. */
export interface Change {
  readonly element: string;
  readonly from: string;
  readonly to: string;
  readonly before: Fraction;
  readonly after: Fraction;
}

interface State {
  readonly key: string;
  readonly number: Fraction;
}

/** What an equation oxidises and reduces. An element whose states stand alike on both sides (the oxygen of water) does not change. */
export function changesIn({ left, right }: Sides): Change[] {
  const elements = new Set([...left.keys()].flatMap((key) => [...speciesOf(key).atoms.keys()]));
  return [...elements].flatMap((element) => {
    const [before, after] = [statesOf(left, element), statesOf(right, element)];
    const from = before.filter(({ number }) => !after.some((each) => each.number.equals(number)));
    const to = after.filter(({ number }) => !before.some((each) => each.number.equals(number)));
    // A state that is left for one that stands on both sides: peroxide that becomes hydroxide while water takes part.
    const one = from[0] ?? (to.length > 0 ? before[0] : undefined);
    const other = to[0] ?? (from.length > 0 ? after[0] : undefined);
    return one && other ? [{ element, from: one.key, to: other.key, before: one.number, after: other.number }] : [];
  });
}

function statesOf(side: Side, element: string): State[] {
  return [...side.keys()].flatMap((key) => {
    const number = oxidationNumber(key, element);
    return number ? [{ key, number }] : [];
  });
}
