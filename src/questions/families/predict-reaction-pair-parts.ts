import { standardEmf } from '../../chemistry/cell.ts';
import { quantity } from '../../document/inlines.ts';
import { symbol } from '../../document/symbols.ts';
import type { WordsContext } from '../../document/words.ts';
import { printDecimal } from '../../exact/decimal.ts';
import { statementPoint, valuePoint } from '../point.ts';
import type { Part, Point } from '../question.ts';
import { equationPart } from './predict-reaction-equation.ts';
import type { Pair } from './predict-reaction-pair.ts';

/** The parts about two species: E°cell, the prediction with its reason, the equation. */
export function pairParts(pair: Pair): Part[] {
  const { words, context, high, low } = pair;
  return [
    emfPart(pair),
    verdictPart(pair),
    equationPart(words, context, 'equation', { reduced: high, oxidised: low }, pair.roles !== undefined),
  ];
}

function emfPart({ words, context, roles, reacts }: Pair): Part {
  const isNegative = roles !== undefined && !reacts;
  return {
    id: 'a',
    command: 'Calculate',
    objective: 'application',
    maths: 1,
    practical: 0,
    prompt: words.inline(roles ? 'emf' : 'emf-cell', context),
    hints: [words.inline('emf-hint')],
    space: { kind: 'working', marks: 1, symbol: [symbol('E°cell')], unit: 'V' },
    points: [
      valuePoint({
        step: 'emf',
        earns: words.inline(isNegative ? 'point-emf-negative' : 'point-emf'),
        also: isNegative ? [] : [words.inline('sign-optional')],
        refuse: [words.inline(isNegative ? 'refuse-no-minus' : 'refuse-multiplied')],
      }),
    ],
    answers: ['emf'],
  };
}

function verdictPart(pair: Pair): Part {
  const { words, context, roles } = pair;
  return {
    id: 'b',
    command: 'Explain',
    objective: 'analysis',
    maths: 0,
    practical: 0,
    prompt: words.inline('verdict', context),
    hints: [words.inline('verdict-hint')],
    space: { kind: 'lines', count: 4 },
    points: roles ? opposedPoints(pair) : alikePoints(pair),
    answers: [roles ? 'compare' : 'sides', 'verdict'],
  };
}

function opposedPoints({ words, context, roles, reacts }: Pair): Point[] {
  const { taker, giver } = roles!;
  const emf = quantity(printDecimal(standardEmf(giver.couple, taker.couple, 'printed'), true), 'V');
  const filled: WordsContext = { ...context, emf };
  return [
    statementPoint({
      step: 'compare',
      earns: words.inline('point-compare', filled),
      also: [words.inline('also-compare', filled)],
      refuse: [words.inline('refuse-compare')],
    }),
    statementPoint({
      step: 'verdict',
      earns: words.inline(reacts ? 'point-yes' : 'point-no', filled),
      refuse: [words.inline('refuse-verdict')],
      carries: true,
    }),
  ];
}

function alikePoints({ words, context, kind }: Pair): Point[] {
  return [
    statementPoint({
      step: 'sides',
      earns: words.inline(`point-${kind}`, context),
      also: [words.inline(`also-${kind}`, context)],
    }),
    statementPoint({
      step: 'verdict',
      earns: words.inline(`answer-${kind}`, context),
      refuse: [words.inline('refuse-emf-decides')],
    }),
  ];
}
