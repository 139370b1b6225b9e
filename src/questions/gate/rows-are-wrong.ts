import { round } from '../../exact/rounding.ts';
import { acceptedRange } from '../accepted-range.ts';
import type { GateRule } from './rule.ts';

/** No "if you see this" figure is one a marker would accept as right. */
export const rowsAreWrong: GateRule = {
  id: 'rows-are-wrong',
  holds: 'no figure of an "if you see this" row falls inside the accepted range of its answer',
  check: ({ item, rows }) =>
    item.parts.flatMap((part) =>
      part.answers.flatMap((id) => {
        const step = item.steps.find((each) => each.id === id)!;
        if (step.printed === 'exact') return [];
        const range = acceptedRange(item, id);
        return rows.flatMap((row) => {
          const seen = row.seen.get(part.id)?.find((each) => each.step === id);
          if (seen?.value.kind !== 'number') return [];
          const figure = round(seen.value.value, step.printed);
          const inside = figure.compare(range.least) >= 0 && figure.compare(range.most) <= 0;
          return inside ? [`${row.slip} gives ${figure} at \`${id}\`, inside the accepted range`] : [];
        });
      }),
    ),
};
