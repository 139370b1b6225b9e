import { Fault } from '../exact/fault.ts';
import { keyPlaces } from '../questions/choice.ts';
import { anotherLike } from './another-like.ts';
import { type Means, paperFrom } from './make-paper.ts';
import type { Paper } from './paper.ts';
import { keyPlaceOf, withKeyAt } from './place-keys.ts';

/**
 * The same paper with one question replaced by another of the same demand. The others stay as they are, to the byte.
 * @param number as printed, from 1
 * @throws Fault `no-such-question`, `no-other`
 */
export function swapQuestion(paper: Paper, number: number, means: Means): Paper {
  const old = paper.questions[number - 1];
  if (!old)
    throw new Fault('no-such-question', `expected a question number from 1 to ${paper.questions.length}, found ${number}`);
  const beside = paper.questions.filter((question) => question !== old);
  const other = anotherLike(old, beside, paper.request, means);
  const place = keyPlaceOf(old);
  const fits = place !== undefined && other.parts[0] && keyPlaces(other.parts[0]).includes(place);
  const placed = fits ? withKeyAt(other, place) : other;
  const questions = paper.questions.map((question) => (question === old ? placed : question));
  return { ...paperFrom(paper.request, questions, means), title: paper.title };
}
