import { itemMarks } from '../questions/part-marks.ts';
import type { Question } from '../questions/question.ts';

/**
 * Least demanding first, and no two neighbours of one strategy where that can be had. Demand inside one level goes by marks: the
 * longer chain is the harder one. Ties keep the order of choosing, so the same paper is always in the same order.
 */
export function order(questions: readonly Question[]): Question[] {
  const left = questions
    .map((question, at) => ({ question, at, demand: itemMarks(question) }))
    .sort((a, b) => a.demand - b.demand || a.at - b.at);
  const ordered: Question[] = [];
  while (left.length > 0) {
    const last = ordered.at(-1)?.strategy;
    const crowded = mostCommon(left.map(({ question }) => question.strategy));
    // A strategy that fills more than half of what is left has to go now, or it will end up beside itself.
    const forced =
      crowded.count * 2 > left.length && crowded.strategy !== last
        ? left.findIndex(({ question }) => question.strategy === crowded.strategy)
        : -1;
    const apart = left.findIndex(({ question }) => question.strategy !== last);
    const [taken] = left.splice(forced >= 0 ? forced : Math.max(apart, 0), 1);
    ordered.push(taken!.question);
  }
  return ordered;
}

function mostCommon(strategies: readonly string[]): { readonly strategy: string; readonly count: number } {
  const counts = new Map<string, number>();
  for (const strategy of strategies) counts.set(strategy, (counts.get(strategy) ?? 0) + 1);
  const [strategy, count] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? ['', 0];
  return { strategy, count };
}
