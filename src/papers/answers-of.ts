import type { Block } from '../document/block.ts';
import type { Inline } from '../document/inline.ts';
import { strong } from '../document/inlines.ts';
import type { Part, Question } from '../questions/question.ts';
import { showValue } from '../questions/show-value.ts';
import { solve } from '../questions/solve.ts';
import type { Values } from '../questions/value.ts';
import { optionLetter } from './option-letter.ts';

/** The answers of a part as they stand on the answer line, one run each; the letter of the key before a choice. */
export function answersOf(question: Question, part: Part, values: Values = solve(question, 'printed')): Inline[][] {
  const key = part.options?.findIndex(({ slip }) => slip === undefined);
  return part.answers.map((id) => {
    const step = question.steps.find((each) => each.id === id)!;
    const shown = showValue(values.get(id)!, step.printed, id);
    return key === undefined ? shown : [strong(`${optionLetter(key)}  `), ...shown];
  });
}

/** A part worked: its lines of arithmetic, and the answers that no line ends in. */
export function workedPart(question: Question, part: Part, values: Values = solve(question, 'printed')): Block[] {
  const steps = question.steps.filter((step) => step.part === part.id);
  const lines = steps.flatMap((step) => (step.line ? [step.line(values)] : []));
  const ended = new Set(steps.flatMap(({ id, line }) => (line ? [id] : [])));
  const plain = part.answers.flatMap((id, at) => (ended.has(id) ? [] : [answersOf(question, part, values)[at]!]));
  return [
    ...(lines.length > 0 ? [{ kind: 'working', lines } as const] : []),
    ...plain.map((content): Block => ({ kind: 'paragraph', content })),
  ];
}
