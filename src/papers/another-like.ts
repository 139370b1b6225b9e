import { Fault } from '../exact/fault.ts';
import type { Question } from '../questions/question.ts';
import { codeOf } from '../random/code.ts';
import type { AskedOfAll } from './ask-of.ts';
import { conflictBetween } from './conflicts.ts';
import type { Means } from './make-paper.ts';
import { questionOf } from './paper-from-labels.ts';
import { labelOf } from './question-label.ts';

/** Codes that are tried: demand features are few, so a parallel question comes up soon or there is none. */
const MOST_TRIES = 400;

/**
 * A question like another: same family, level and demand features, so the same marks and minutes, with other chemistry; where there is
 * no other chemistry, with other figures.
 * @param beside questions it has to stand beside without telling or repeating anything
 * @throws Fault `no-other` when none is found
 */
export function anotherLike(question: Question, beside: readonly Question[], request: AskedOfAll, means: Means): Question {
  const features = JSON.stringify(question.features);
  let second: Question | undefined;
  for (let turn = 0; turn < MOST_TRIES; turn += 1) {
    const label = { ...labelOf(question), code: codeOf([question.code, 'another', turn]) };
    const other = questionOf(label, question.slot, request, means);
    const isParallel = JSON.stringify(other.features) === features && !beside.some((each) => conflictBetween(other, each));
    if (!isParallel) continue;
    if (other.identity !== question.identity) return other;
    if (!samePage(other, question)) second ??= other;
  }
  if (second) return second;
  throw new Fault('no-other', `no other \`${question.family}\` question of the same demand can be had with this table`);
}

function samePage(one: Question, other: Question): boolean {
  return JSON.stringify([one.stem, one.data]) === JSON.stringify([other.stem, other.data]);
}
