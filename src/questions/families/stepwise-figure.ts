import type { Block } from '../../document/block.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import { potentialLadder } from '../potential-ladder.ts';
import type { Ladder } from './stepwise-ladder.ts';

/** The couples of the element and of the reagent on a ladder, with the way of the electrons in each step that takes place. */
export function drawnLadder({ rungs, next, reagent, isReduction }: Ladder, context: WordsContext, words: Words): Block {
  const steps = rungs.map(({ couple }) => couple);
  const pairs = steps.map((couple) => (isReduction ? ([reagent, couple] as const) : ([couple, reagent] as const)));
  return potentialLadder([...new Set([...steps, next.couple, reagent])], pairs, words.inline('ladder', context));
}
