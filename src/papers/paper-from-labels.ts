import { Fault } from '../exact/fault.ts';
import { makeQuestion } from '../questions/make-question.ts';
import type { Question } from '../questions/question.ts';
import { familyOf } from './allowed-families.ts';
import { type AskedOfAll, askOf } from './ask-of.ts';
import { conflictBetween } from './conflicts.ts';
import { type Means, paperFrom } from './make-paper.ts';
import type { Paper } from './paper.ts';
import { placeKeys } from './place-keys.ts';
import { labelText, type QuestionLabel } from './question-label.ts';
import type { SheetRequest } from './request.ts';

/** The question that a label stands for. */
export function questionOf(label: QuestionLabel, slot: string, request: AskedOfAll, { tables, wording }: Means): Question {
  const ask = askOf(request, label.level, label.answering);
  return makeQuestion(familyOf(label.family), { slot, variant: 0, code: label.code }, ask, tables, wording);
}

/**
 * A paper of chosen questions, in the order given.
 * @throws Fault `conflict` when one of them answers another, naming both
 */
export function paperFromLabels(labels: readonly QuestionLabel[], request: SheetRequest, means: Means): Paper {
  const questions = labels.map((label, at) => questionOf(label, `s${at + 1}`, request, means));
  questions.forEach((question, at) => {
    const earlier = questions.findIndex((other, before) => before < at && conflictBetween(question, other));
    if (earlier < 0) return;
    const [one, other] = [labels[earlier]!, labels[at]!].map(labelText);
    throw new Fault(
      'conflict',
      `\`${one}\` and \`${other}\` cannot stand on one sheet: ${conflictBetween(question, questions[earlier]!)}`,
    );
  });
  return paperFrom(request, placeKeys(questions, request.seed), means);
}
