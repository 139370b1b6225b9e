import type { Couple } from '../../chemistry/couple.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { species } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import { askedContext, coupleContext, ranked } from './predict-reaction-context.ts';
import { type Asked, formulaOf, type PairDraw } from './predict-reaction-draw.ts';

/** Which species is which in a question about two of them. */
export interface Pair {
  readonly draw: PairDraw;
  readonly high: Couple;
  readonly low: Couple;
  /** the species that would take electrons and the one that would give them; absent when both are the same kind of agent */
  readonly roles?: { readonly taker: Asked; readonly giver: Asked };
  /** what two agents of one kind are */
  readonly kind: 'opposed' | 'oxidants' | 'reductants';
  readonly reacts: boolean;
  readonly context: WordsContext;
  readonly words: Words;
}

export function pairOf(draw: PairDraw, tables: Tables, words: Words): Pair {
  const { first, second, medium } = draw;
  const { high, low } = ranked(first.couple, second.couple);
  const isOpposed = first.form !== second.form;
  const [taker, giver] = first.form === 'oxidised' ? [first, second] : [second, first];
  const inAcid = medium === 'acid';
  return {
    draw,
    high,
    low,
    ...(isOpposed ? { roles: { taker, giver } } : {}),
    kind: isOpposed ? 'opposed' : first.form === 'oxidised' ? 'oxidants' : 'reductants',
    reacts: isOpposed && taker.couple === high,
    words,
    context: {
      ...askedContext('first', first, tables),
      ...askedContext('second', second, tables),
      ...coupleContext('high', high),
      ...coupleContext('low', low),
      inAcid,
      roles: isOpposed,
      ...(isOpposed ? { taker: species(formulaOf(taker)), giver: species(formulaOf(giver)) } : {}),
    },
  };
}

/** The exercise: the two species, whatever the order. */
export const pairIdentity = ({ first, second }: PairDraw): string =>
  [first, second]
    .map((asked) => keyOf(formulaOf(asked)))
    .sort()
    .join(' with ');
