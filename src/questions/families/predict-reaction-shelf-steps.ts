import type { Formula } from '../../chemistry/formula.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { species } from '../../document/inlines.ts';
import { symbol } from '../../document/symbols.ts';
import type { Rational } from '../../exact/rational.ts';
import { combinedValue } from '../combined-value.ts';
import { minus, node } from '../expression.ts';
import { numberOf, valueAt } from '../number-of.ts';
import { numberStep, numberValue } from '../number-step.ts';
import type { Step } from '../question.ts';
import { plainStep, wordsValue } from '../statement-step.ts';
import type { Value, Values } from '../value.ts';
import { bare } from '../without-states.ts';
import { datumOf } from './predict-reaction-context.ts';
import { type Asked, formulaOf } from './predict-reaction-draw.ts';
import { pairedWith, type Shelf } from './predict-reaction-shelf.ts';

/** Steps of a question about three reagents: which reacts, its E°cell, why the others do not, the equation. */
export function shelfSteps(shelf: Shelf): Step[] {
  const { subject, reacts, unable, order } = shelf;
  const data = [subject, ...order].map(({ couple }) => datumOf(couple));
  return [
    plainStep('reagent', 'a', data, 'an oxidising agent reacts with a reducing agent of a less positive couple', () =>
      speciesValue(formulaOf(reacts)),
    ),
    emfStep(shelf, 'emf', 'a', reacts, (values) => emfWith(shelf, chosen(shelf, values), values)),
    emfStep(shelf, 'emf-other', 'b', unable, (values) => {
      const left = chosen(shelf, values) === unable ? reacts : unable;
      const found = emfWith(shelf, left, values);
      return left === unable ? found : found.negate();
    }),
    plainStep('alike', 'b', ['reagent'], 'two agents of one kind do not react', (values) => alikeValue(shelf, values)),
    plainStep('direction', 'c', ['reagent'], 'the couple with the more positive potential is reduced', (values) => {
      const { reduced, oxidised } = pairedWith(shelf, chosen(shelf, values));
      const filled = { oxidant: species(bare(reduced.oxidised)), reductant: species(bare(oxidised.reduced)) };
      return wordsValue(`${reduced.id} ${oxidised.id}`, shelf.words.inline('answer-direction', filled));
    }),
    plainStep('equation', 'c', ['direction', 'reagent'], 'the electrons given equal the electrons taken', (values) => {
      const { reduced, oxidised } = pairedWith(shelf, chosen(shelf, values));
      return combinedValue(reduced, oxidised);
    }),
  ];
}

export const speciesValue = (formula: Formula): Value => ({ kind: 'species', formula });

/** The reagent that the pupil picked. */
export function chosen({ order }: Shelf, values: Values): Asked {
  const value = valueAt(values, 'reagent');
  if (value.kind !== 'species') throw new Error('expected a species at `reagent`');
  return order.find((asked) => keyOf(formulaOf(asked)) === keyOf(value.formula))!;
}

/** E°cell of the subject with a reagent, as one who takes that reagent to react (or not to) works it out. */
function emfWith(shelf: Shelf, reagent: Asked, values: Values): Rational {
  const { reduced, oxidised } = pairedWith(shelf, reagent);
  return numberOf(values, datumOf(reduced)).minus(numberOf(values, datumOf(oxidised)));
}

/** A cell potential whose printed line is that of the right answer, and whose value follows the reagent picked. */
function emfStep(shelf: Shelf, id: string, part: string, reagent: Asked, value: (values: Values) => Rational): Step {
  const { reduced, oxidised } = pairedWith(shelf, reagent);
  const right = numberStep({
    id,
    part,
    principle: 'cell potential = potential of the half-cell that is reduced minus potential of the one that is oxidised',
    expression: minus(node(datumOf(reduced)), node(datumOf(oxidised))),
    unit: 'V',
    signed: true,
    printed: { dp: 2 },
    left: [symbol('E°cell')],
    shown: () => ({ dp: 2 }),
  });
  const needs = ['reagent', ...[shelf.subject, ...shelf.order].map(({ couple }) => datumOf(couple))];
  return { ...right, needs, work: (values) => numberValue(value(values), { unit: 'V', signed: true }) };
}

function alikeValue(shelf: Shelf, values: Values): Value {
  const { alike, words, context } = shelf;
  return chosen(shelf, values) === alike
    ? wordsValue('missed', words.inline('answer-alike-missed', context))
    : wordsValue('alike', words.inline('point-alike', context));
}
