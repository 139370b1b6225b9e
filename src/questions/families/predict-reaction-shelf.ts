import { keyOf } from '../../chemistry/write-formula.ts';
import { joined } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import { askedContext, coupleContext } from './predict-reaction-context.ts';
import { type Asked, formulaOf, type ShelfDraw } from './predict-reaction-draw.ts';

/** A question about one species and three reagents. */
export interface Shelf extends ShelfDraw {
  readonly isOxidant: boolean;
  readonly context: WordsContext;
  readonly words: Words;
}

export function shelfOf(draw: ShelfDraw, tables: Tables, words: Words): Shelf {
  const { subject, reacts, unable, alike, order, medium } = draw;
  const isOxidant = subject.form === 'oxidised';
  const named = order.map((asked) => words.inline('reagent', askedContext('species', asked, tables)));
  return {
    ...draw,
    isOxidant,
    words,
    context: {
      ...askedContext('subject', subject, tables),
      ...askedContext('reacts', reacts, tables),
      ...askedContext('unable', unable, tables),
      ...askedContext('alike', alike, tables),
      ...coupleContext('subject', subject.couple),
      ...coupleContext('reacts', reacts.couple),
      ...coupleContext('unable', unable.couple),
      reagents: joined(named, ', ', ' and '),
      inAcid: medium === 'acid',
      isOxidant,
    },
  };
}

/** The couples of the reaction between the subject and a reagent, as one who picks that reagent would run them. */
export function pairedWith({ subject, alike, isOxidant }: ShelfDraw & Pick<Shelf, 'isOxidant'>, reagent: Asked) {
  const [one, other] = [subject.couple, reagent.couple];
  // Two agents of one kind make no reaction: whoever joins them lets the more positive couple be reduced.
  const subjectTakes = reagent === alike ? one.printed.value.compare(other.printed.value) > 0 : isOxidant;
  return subjectTakes ? { reduced: one, oxidised: other } : { reduced: other, oxidised: one };
}

/** The exercise: the subject, and the reagents whatever their order. */
export const shelfIdentity = ({ subject, order }: ShelfDraw): string =>
  `${keyOf(formulaOf(subject))} against ${order
    .map((asked) => keyOf(formulaOf(asked)))
    .sort()
    .join(', ')}`;
