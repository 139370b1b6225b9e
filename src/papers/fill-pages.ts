import type { Document } from '../document/document.ts';
import { itemMarks } from '../questions/part-marks.ts';
import type { Question } from '../questions/question.ts';

/** Measures a sheet: what the turns of its pages cost when its questions stand in another order, given as places. */
export type MeasureOrders = (sheet: Document) => (order: readonly number[]) => number;

/** Questions whose marks differ by no more than this are of one band of demand: which comes first is free. */
const BAND = 1;
/** Orders tried at most, so that a long paper takes no longer than it is worth. */
const TRIES = 4000;

/**
 * Changes the order inside bands of demand so that pages are filled: two questions change places, or one moves, for as long as that
 * makes pages better. No question comes before an easier one of a lower band, and no two of one strategy come together, unless they did.
 */
export function fillPages(questions: readonly Question[], cost: (order: readonly number[]) => number): Question[] {
  const at = (order: readonly number[]): Question[] => order.map((place) => questions[place]!);
  const allowed = { disorder: disorder(questions), neighbours: neighbours(questions) };
  const mayStand = (order: readonly number[]): boolean =>
    disorder(at(order)) <= allowed.disorder && neighbours(at(order)) <= allowed.neighbours;
  let best = { order: [...questions.keys()], cost: cost([...questions.keys()]) };
  let tries = 0;
  for (let isBetter = true; isBetter; ) {
    isBetter = false;
    for (const order of changesOf(best.order)) {
      if (tries >= TRIES) break;
      if (!mayStand(order)) continue;
      tries += 1;
      const found = cost(order);
      if (found >= best.cost - LEAST_GAIN) continue;
      best = { order, cost: found };
      isBetter = true;
      break;
    }
  }
  return at(best.order);
}

/** A page that is an eighth white costs a third of one; what gains less than a quarter is not worth another order. */
const LEAST_GAIN = 0.25;

/** The order with two places exchanged, and with one question moved elsewhere. */
function* changesOf(order: readonly number[]): Generator<number[]> {
  for (const one of order.keys()) {
    for (let other = one + 1; other < order.length; other += 1) yield order.with(one, order[other]!).with(other, order[one]!);
  }
  for (const from of order.keys()) {
    const rest = order.toSpliced(from, 1);
    for (const to of order.keys()) if (Math.abs(to - from) > 1) yield rest.toSpliced(to, 0, order[from]!);
  }
}

/** Pairs in which the more demanding question, by more than a band, comes first. */
function disorder(questions: readonly Question[]): number {
  const demand = questions.map(itemMarks);
  return demand.reduce((sum, marks, at) => sum + demand.slice(at + 1).filter((later) => marks > later + BAND).length, 0);
}

/** How often two of one strategy stand side by side. */
export function neighbours(questions: readonly Question[]): number {
  return questions.filter(({ strategy }, at) => strategy === questions[at + 1]?.strategy).length;
}
