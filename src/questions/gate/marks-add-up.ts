import { leastMarks } from '../command-words.ts';
import type { GateRule } from './rule.ts';

/** Points, steps and parts fit one another, and each part carries what its command word asks. */
export const marksAddUp: GateRule = {
  id: 'marks-add-up',
  holds: 'every mark has a step of its own part, every answer is a step, and an explanation carries two marks or more',
  check: ({ item }) => {
    const stepPart = new Map(item.steps.map(({ id, part }) => [id, part]));
    const points = item.parts.flatMap((part) => part.points.map((point) => ({ part, point })));
    const ids = points.map(({ point }) => point.id);
    return [
      ...points.flatMap(({ part, point }) =>
        stepPart.get(point.step) === part.id ? [] : [`point \`${point.id}\` marks no step of part ${part.id}`],
      ),
      ...points.flatMap(({ point }) => (point.accept[0]?.length ? [] : [`point \`${point.id}\` does not say what earns it`])),
      ...(new Set(ids).size === ids.length ? [] : ['two points share an id']),
      ...item.parts.flatMap((part) => [
        ...(part.points.length >= leastMarks(part.command)
          ? []
          : [`part ${part.id}: ${part.command} needs ${leastMarks(part.command)} marks`]),
        ...(part.answers.length > 0 ? [] : [`part ${part.id} has no answer`]),
        ...part.answers.flatMap((id) => (stepPart.get(id) === part.id ? [] : [`answer \`${id}\` is no step of part ${part.id}`])),
        ...(part.maths <= part.points.length && part.practical <= part.points.length
          ? []
          : [`part ${part.id} counts more special marks than marks`]),
        ...((part.command === 'Show that') === (part.restart !== undefined)
          ? []
          : [`part ${part.id}: a shown value and the words Show that go together`]),
      ]),
    ];
  },
};
