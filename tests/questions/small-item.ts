import { text } from '../../src/document/inlines.ts';
import { Rational } from '../../src/exact/rational.ts';
import { type Expression, evaluate, node, number, over, times } from '../../src/questions/expression.ts';
import { numberStep, numberValue } from '../../src/questions/number-step.ts';
import { valuePoint } from '../../src/questions/point.ts';
import type { Datum, Item, Part, Slip } from '../../src/questions/question.ts';

const datum = (id: string, value: string, unit: string): Datum => ({
  id,
  role: id,
  value: { kind: 'number', value: Rational.parse(value), unit },
  printed: { sf: 3 },
});

const part = (id: string, step: string, carries: boolean): Part => ({
  id,
  command: 'Calculate',
  objective: 'application',
  maths: 1,
  practical: 0,
  prompt: [text('Calculate it.')],
  hints: [],
  space: { kind: 'lines', count: 1 },
  points: [valuePoint({ step, earns: [text('right value')], carries })],
  answers: [step],
});

const slip = (id: string, at: string, expression: Expression, unit: string): Slip => ({
  id,
  at,
  work: (values) => numberValue(evaluate(expression, values), { unit }),
  applies: () => true,
  feedback: 'Look again.',
  happened: [text(id)],
});

/** 24.00 cm³ of 0.0200 mol dm⁻³ in part a, five times the amount in 25.0 cm³ in part b: worked by hand, 4.80 × 10⁻⁴ mol and 0.0960 mol dm⁻³. */
export const smallItem: Item = {
  strategy: 'test',
  features: {},
  identity: 'small',
  stem: [],
  data: [datum('c', '0.0200', 'mol dm^-3'), datum('V', '24.0', 'cm^3'), datum('P', '25.0', 'cm^3')],
  steps: [
    numberStep({
      id: 'n',
      part: 'a',
      principle: 'n = cV',
      expression: over(times(node('c'), node('V')), number('1000')),
      unit: 'mol',
      printed: { sf: 4 },
      left: [text('n')],
      shown: () => ({ sf: 3 }),
    }),
    numberStep({
      id: 'x',
      part: 'b',
      principle: 'c = n/V',
      expression: over(times(times(node('n'), number('5')), number('1000')), node('P')),
      unit: 'mol dm^-3',
      printed: { sf: 3 },
      left: [text('c')],
      shown: (id) => (id === 'n' ? { sf: 4 } : { sf: 3 }),
    }),
  ],
  parts: [part('a', 'n', false), part('b', 'x', true)],
  slips: [
    slip('TI-CM3-AS-DM3', 'n', times(node('c'), node('V')), 'mol'),
    slip('TI-RATIO-ONE', 'x', over(times(node('n'), number('1000')), node('P')), 'mol dm^-3'),
    slip('TWIN', 'x', over(times(node('n'), number('1000')), node('P')), 'mol dm^-3'),
    slip('NO-CHANGE', 'x', over(times(times(node('n'), number('5')), number('1000')), node('P')), 'mol dm^-3'),
  ],
  gives: [],
  asks: [],
  cautions: [],
};
