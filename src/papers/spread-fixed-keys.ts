import { keyPlaces } from '../questions/choice.ts';
import { itemMarks } from '../questions/part-marks.ts';
import type { Question } from '../questions/question.ts';
import { neighbours } from './fill-pages.ts';

/**
 * Where three choices running can have their key at one and the same letter only, the middle one changes places with another choice of
 * equal marks, if that brings no two neighbours of one strategy together that were apart.
 */
export function spreadFixedKeys(questions: readonly Question[]): Question[] {
  let spread = [...questions];
  for (let at = 0; at < spread.length; at += 1) {
    if (!middlesOf(spread).has(at)) continue;
    const better = spread.map((_, other) => swapped(spread, at, other)).find((each) => isBetter(each, spread));
    spread = better ?? spread;
  }
  return spread;
}

function isBetter(one: readonly Question[], other: readonly Question[]): boolean {
  const sameDemand = one.every((question, at) => itemMarks(question) === itemMarks(other[at]!));
  return sameDemand && middlesOf(one).size < middlesOf(other).size && neighbours(one) <= neighbours(other);
}

/** Places of the questions in the middle of three choices that leave no choice of letter. */
function middlesOf(questions: readonly Question[]): Set<number> {
  const choices = questions.flatMap(({ parts: [part] }, at) => (part?.choice ? [{ at, places: keyPlaces(part) }] : []));
  const fixed = choices.map(({ places }) => (places.length === 1 ? places[0] : undefined));
  return new Set(
    choices.flatMap(({ at }, turn) =>
      fixed[turn] !== undefined && fixed[turn] === fixed[turn - 1] && fixed[turn] === fixed[turn + 1] ? [at] : [],
    ),
  );
}

const swapped = (questions: readonly Question[], one: number, other: number): Question[] =>
  questions.with(one, questions[other]!).with(other, questions[one]!);
