import type { Item } from '../question.ts';
import type { GateRule } from './rule.ts';

/** "Carries on" tells a marker to look back; there has to be something of the pupil's to look back to. */
export const carriesFromSomething: GateRule = {
  id: 'carries-from-something',
  holds: 'a mark that carries on rests on an earlier step that is answered or marked itself',
  check: ({ item }) => {
    const written = new Set(item.parts.flatMap(({ answers, points }) => [...answers, ...points.map(({ step }) => step)]));
    return item.parts.flatMap(({ points }) =>
      points.flatMap(({ id, step, carries }) =>
        carries && !stepsBefore(item, step).some((each) => written.has(each))
          ? [`\`${id}\` carries on, though nothing that a pupil wrote comes before it`]
          : [],
      ),
    );
  },
};

/** Every step that one rests on. */
function stepsBefore({ steps }: Item, id: string): string[] {
  const found = new Set([id]);
  for (const step of steps.toReversed()) if (found.has(step.id)) for (const need of step.needs) found.add(need);
  return [...found].filter((each) => each !== id);
}
