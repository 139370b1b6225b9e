import { arranged, keyPlaces } from '../questions/choice.ts';
import type { Question } from '../questions/question.ts';
import { drawsFrom } from '../random/draws.ts';

/**
 * Gives the key of each choice question its place, so that letters come up about equally often and never three times running. Numbers
 * stand in ascending order, so a place is had by choosing which wrong options stand below and above, never by shuffling.
 */
export function placeKeys(questions: readonly Question[], seed: string): Question[] {
  const draws = drawsFrom(JSON.stringify(['keys', seed]));
  const possible = questions.map(({ parts: [part] }) => (part?.choice ? keyPlaces(part) : []));
  const open = possible.filter((each) => each.length > 0);
  const tries = Array.from({ length: STARTS }, () =>
    improved(
      open.map((each) => draws.pick(each)),
      open,
    ),
  );
  const best = tries.reduce((one, other) => (cost(other) < cost(one) ? other : one));
  const places = [...best];
  return questions.map((question, at) => (possible[at]!.length > 0 ? withKeyAt(question, places.shift()!) : question));
}

/** Random first placings, the best of which is kept after it was improved. */
const STARTS = 12;

/** Changes one place after another for as long as that makes the spread better. */
function improved(first: readonly number[], open: readonly (readonly number[])[]): number[] {
  let places = [...first];
  for (let isBetter = true; isBetter; ) {
    isBetter = false;
    for (const [at, possible] of open.entries()) {
      for (const place of possible) {
        const other = places.with(at, place);
        if (cost(other) >= cost(places)) continue;
        places = other;
        isBetter = true;
      }
    }
  }
  return places;
}

/** Three of a kind running weigh more than any uneven spread. */
function cost(places: readonly number[]): number {
  const runs = places.filter((place, at) => place === places[at + 1] && place === places[at + 2]).length;
  const used = new Map<number, number>();
  for (const place of places) used.set(place, (used.get(place) ?? 0) + 1);
  return runs * 10_000 + [...used.values()].reduce((sum, times) => sum + times * times, 0);
}

/** A choice question with its key at a place. */
export function withKeyAt(question: Question, place: number): Question {
  return { ...question, parts: question.parts.map((part) => arranged(part, place)) };
}

/** Where the key of a choice question stands, from zero; nothing for a written one. */
export function keyPlaceOf(question: Question): number | undefined {
  const at = question.parts[0]?.options?.findIndex(({ slip }) => slip === undefined);
  return at === undefined || at < 0 ? undefined : at;
}
