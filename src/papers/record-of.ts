import { itemMarks } from '../questions/part-marks.ts';
import type { Question } from '../questions/question.ts';
import { isChoice } from './candidates.ts';
import type { Paper } from './paper.ts';
import { keyPlaceOf } from './place-keys.ts';
import type { PaperRecord } from './record.ts';

/** The record of a paper: enough to make it again, with no answer in it. */
export function recordOf(paper: Paper): PaperRecord {
  return {
    kind: 'couplet-record',
    made: paper.made,
    request: paper.request,
    title: paper.title,
    marks: paper.marks,
    minutes: paper.minutes,
    questions: paper.questions.map((question, at) => ({
      number: at + 1,
      slot: question.slot,
      family: question.family,
      variant: question.variant,
      code: question.code,
      level: question.level,
      answering: isChoice(question) ? 'choice' : 'written',
      marks: itemMarks(question),
      ...keyOf(question),
    })),
  };
}

function keyOf(question: Question): { readonly keyPlace?: number } {
  const keyPlace = keyPlaceOf(question);
  return keyPlace === undefined ? {} : { keyPlace };
}
