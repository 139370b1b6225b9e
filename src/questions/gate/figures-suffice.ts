import { decimalAt, figuresOf } from '../../exact/decimal.ts';
import type { Datum, Item } from '../question.ts';
import type { GateRule } from './rule.ts';

/** Figures that are asked of an answer; working prints a fourth, which no datum has to bear. */
const ASKED = 3;

/**
 * An answer has no more significant figures than its data. Numbers without a unit (relative atomic masses, which are added, so that their
 * places count) are left out.
 */
export const figuresSuffice: GateRule = {
  id: 'figures-suffice',
  holds: 'every measured value that a product or quotient rests on is printed to as many significant figures as the answer',
  check: ({ item }) =>
    item.parts
      .flatMap(({ answers }) => answers)
      .flatMap((id) => {
        const rule = item.steps.find((step) => step.id === id)!.printed;
        if (rule === 'exact' || !('sf' in rule)) return [];
        const asked = Math.min(rule.sf, ASKED);
        return dataOf(item, id).flatMap((datum) => {
          const figures = figuresIn(datum);
          return figures !== undefined && figures < asked
            ? [`\`${datum.id}\` has ${figures} significant figures, the answer to \`${id}\` has ${asked}`]
            : [];
        });
      }),
};

/** Data that a step rests on, itself or through others. */
function dataOf(item: Item, id: string): Datum[] {
  const needed = new Set([id]);
  for (const step of item.steps.toReversed()) if (needed.has(step.id)) for (const need of step.needs) needed.add(need);
  return item.data.filter((datum) => needed.has(datum.id));
}

/** @returns nothing where significant figures are not what counts */
function figuresIn({ value, printed }: Datum): number | undefined {
  if (value.kind !== 'number' || value.unit === '' || value.value.isZero() || printed === 'exact') return undefined;
  return 'sf' in printed ? printed.sf : figuresOf(decimalAt(value.value, printed.dp));
}
