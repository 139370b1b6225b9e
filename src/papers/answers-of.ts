import type { Block, Filled } from '../document/block.ts';
import type { Inline } from '../document/inline.ts';
import { strong } from '../document/inlines.ts';
import type { Part, Question } from '../questions/question.ts';
import { showValue } from '../questions/show-value.ts';
import { solve } from '../questions/solve.ts';
import type { NodeId, Values } from '../questions/value.ts';
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

/**
 * What a pupil who is right writes into the space of a part: its working, and its answers.
 * @param shown steps that are printed on the sheet
 */
export function filledIn(question: Question, part: Part, shown: ReadonlySet<NodeId>): Filled {
  const values = solve(question, 'printed');
  const steps = question.steps.filter(({ id, part: own }) => own === part.id && !shown.has(id));
  const worked = new Set(steps.flatMap(({ id, line }) => (line ? [id] : [])));
  const answers = part.answers.flatMap((id) => {
    if (shown.has(id)) return [];
    const value = values.get(id)!;
    if (part.space.kind === 'short' && value.kind === 'words' && value.each)
      return value.each.map((content) => ({ content, worked: false }));
    const { printed } = question.steps.find((step) => step.id === id)!;
    return [{ content: showValue(value, printed), worked: worked.has(id) }];
  });
  return { working: steps.flatMap(({ line }) => (line ? [line(values)] : [])), answers };
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
