import { keyOf } from '../../chemistry/write-formula.ts';
import { quantity, species } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import { methodPoint, statementPoint, valuePoint } from '../point.ts';
import type { Part } from '../question.ts';
import { showNumber } from '../show-value.ts';
import type { Ladder } from './stepwise-ladder.ts';
import type { LadderPlan } from './stepwise-plan.ts';
import { oxidationNumberOf } from './stepwise-steps.ts';

/** The colours of the solution, from the start to the end. */
export function coloursPart({ start, rungs }: Ladder, { lookPart }: LadderPlan, tables: Tables, words: Words): Part {
  const all = [start, ...rungs.map(({ to }) => to)].map((formula) => tables.speciesOf(keyOf(formula)).colour!);
  const between = all.slice(1, -1);
  const accepted = all.flatMap(({ word, accepted: also }) => (also.length > 0 ? [`${word}: ${also.join(', ')}`] : []));
  const also = accepted.length > 0 ? [words.inline('also-colours', { accepted: accepted.join('; ') })] : [];
  const shared = {
    refuse: [words.inline('refuse-clear')],
    ignore: all.some(({ word }) => word === 'yellow') ? [words.inline('ignore-mixed')] : [],
  };
  const ends = statementPoint({
    ...shared,
    step: 'colours',
    earns: words.inline('point-colours-ends', { first: all[0]!.word, last: all.at(-1)!.word }),
    also,
    carries: true,
  });
  const middle = methodPoint({
    ...shared,
    step: 'colours-between',
    earns: words.inline('point-colours-between', { between: between.map(({ word }) => word).join(', ') }),
  });
  return {
    id: lookPart,
    command: 'Describe',
    objective: 'recall',
    maths: 0,
    practical: between.length > 0 ? 2 : 1,
    prompt: words.inline('colours'),
    hints: [words.inline('colours-hint', { element: '' })],
    space: { kind: 'lines', count: between.length > 0 ? 3 : 2 },
    points: between.length > 0 ? [ends, middle] : [ends],
    answers: ['colours'],
  };
}

/** Oxidation numbers: at the start and in the end, or in the end alone. */
export function numbersPart(ladder: Ladder, { lookPart, numbers }: LadderPlan, context: WordsContext, words: Words): Part {
  const { start, rungs, symbol: element } = ladder;
  const final = rungs.at(-1)!.to;
  const value = (formula: typeof start) => quantity(showNumber(oxidationNumberOf(formula, element), 'exact', true), '');
  const refuse = [words.inline('refuse-sign')];
  const filled = { start: species(start), value: value(start) };
  const first = valuePoint({ step: 'number-start', earns: words.inline('point-number-start', filled), refuse });
  const last = valuePoint({
    step: 'number-final',
    earns: words.inline('point-number-final', { final: species(final), value: value(final) }),
    refuse,
    carries: true,
  });
  const both = numbers === 'both';
  return {
    maths: 0,
    practical: 0,
    id: lookPart,
    command: 'Give',
    objective: 'recall',
    prompt: words.inline(both ? 'numbers' : 'number-last', context),
    hints: [words.inline('numbers-hint')],
    space: { kind: 'short', labels: [...(both ? [[species(start)]] : []), words.inline('label-end')] },
    points: both ? [first, last] : [last],
    answers: both ? ['number-start', 'number-final'] : ['number-final'],
    ...(both ? { together: true } : {}),
  };
}
