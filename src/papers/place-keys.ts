import { arranged, keyPlaces } from '../questions/choice.ts';
import type { Question } from '../questions/question.ts';
import { drawsFrom } from '../random/draws.ts';

/**
 * Gives the key of each choice question its place, so that letters come up about equally often and never three times running. Numbers
 * stand in ascending order, so a place is had by choosing which wrong options stand below and above, never by shuffling.
 */
export function placeKeys(questions: readonly Question[], seed: string): Question[] {
  const draws = drawsFrom(JSON.stringify(['keys', seed]));
  const used = new Map<number, number>();
  const run: number[] = [];
  return questions.map((question) => {
    const [part] = question.parts;
    if (!part?.choice) return question;
    const possible = keyPlaces(part);
    const fresh = possible.filter((place) => !(run.length >= 2 && run.slice(-2).every((last) => last === place)));
    const open = fresh.length > 0 ? fresh : possible;
    const least = Math.min(...open.map((place) => used.get(place) ?? 0));
    const place = draws.pick(open.filter((each) => (used.get(each) ?? 0) === least));
    used.set(place, (used.get(place) ?? 0) + 1);
    run.push(place);
    return withKeyAt(question, place);
  });
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
