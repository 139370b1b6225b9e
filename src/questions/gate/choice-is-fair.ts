import { Rational } from '../../exact/rational.ts';
import type { Part } from '../question.ts';
import { sameValue } from '../same-value.ts';
import { plainText } from './inlines-of.ts';
import type { GateRule } from './rule.ts';

/** The hard rules for multiple choice that the item alone can break (after Haladyna, Downing & Rodriguez 2002). */
export const choiceIsFair: GateRule = {
  id: 'choice-is-fair',
  holds: 'one right option, no two alike, each wrong one with its own misconception and feedback, numbers ascending, no padding',
  check: ({ item, values }) =>
    item.parts.flatMap((part) => {
      if (!part.options) return [];
      const step = item.steps.find(({ id }) => id === part.answers[0])!;
      const right = part.options.filter(({ value }) => sameValue(value, values.get(step.id)!, step.printed));
      const wrong = part.options.filter(({ slip }) => slip !== undefined);
      const alike = part.options.some((a, at) =>
        part.options!.slice(at + 1).some((b) => sameValue(a.value, b.value, step.printed)),
      );
      return [
        ...(right.length === 1 && right[0]!.slip === undefined ? [] : ['there is not exactly one right option']),
        ...(alike ? ['two options are alike'] : []),
        ...(wrong.length === part.options.length - 1 && new Set(wrong.map(({ slip }) => slip)).size === wrong.length
          ? []
          : ['wrong options need a misconception each']),
        ...(part.options.length === 3 || part.options.length === 4 ? [] : ['three or four options are expected']),
        ...(wrong.every(({ feedback }) => feedback !== '' && feedback.split(/\s+/).length <= 30)
          ? []
          : ['feedback is missing or over thirty words']),
        ...(ascending(part) ? [] : ['numeric options do not ascend']),
        ...(part.points.length === 1 ? [] : ['a choice carries one mark']),
        ...stemProblems([...plainText(part.prompt).split(/\s+/)]),
      ];
    }),
};

function ascending(part: Part): boolean {
  const numbers = part.options!.flatMap(({ value }) => (value.kind === 'number' ? [value.value] : []));
  return numbers.every((value, at) => at === 0 || value.compare(numbers[at - 1] ?? Rational.zero) > 0);
}

function stemProblems(words: readonly string[]): string[] {
  return words.length <= 60 ? [] : ['the question is over sixty words'];
}
