import { symbol } from '../../document/symbols.ts';
import type { Words } from '../../document/words.ts';
import type { Ask } from '../family.ts';
import { statementPoint, valuePoint } from '../point.ts';
import type { Part } from '../question.ts';
import type { CellFacts } from './cell-emf-facts.ts';
import { cellLadder } from './cell-emf-figure.ts';
import { runContext } from './cell-emf-steps.ts';

/** The written parts, least demanding first. */
export function cellParts(facts: CellFacts, words: Words, ask: Ask): Part[] {
  const { labels, negative, positive } = facts;
  const context = runContext(negative, positive);
  const emf: Part = {
    id: 'a',
    command: 'Calculate',
    objective: 'application',
    maths: 1,
    practical: 0,
    prompt: words.inline('emf', labels),
    hints: [words.inline('emf-hint')],
    space: { kind: 'working', marks: 1, symbol: [symbol('E°cell')], unit: 'V' },
    points: [
      valuePoint({
        step: 'emf',
        earns: words.inline('point-emf'),
        also: [words.inline('sign-optional')],
        refuse: [words.inline('refuse-negative')],
      }),
    ],
    answers: ['emf'],
  };
  const equation: Part = {
    id: 'b',
    command: 'Write',
    objective: 'application',
    maths: 0,
    practical: 0,
    prompt: words.inline('equation', labels),
    hints: [words.inline('equation-hint')],
    space: { kind: 'equation', arrow: 'forward', count: 1 },
    points: [
      statementPoint({ step: 'direction', earns: words.inline('point-direction', context) }),
      valuePoint({
        step: 'equation',
        earns: words.inline('point-equation'),
        refuse: [words.inline('refuse-electrons-left')],
        ignore: [words.inline('ignore-arrow')],
        carries: true,
      }),
    ],
    answers: ['equation'],
  };
  const electrons: Part = {
    id: 'c',
    command: 'Explain',
    objective: 'analysis',
    maths: 0,
    practical: 0,
    prompt: words.inline('electrons', labels),
    hints: [words.inline('electrons-hint')],
    space: { kind: 'lines', count: 4 },
    points: [
      statementPoint({
        step: 'flow',
        earns: words.inline('point-flow', context),
        also: [words.inline('also-flow'), words.inline('also-flow-poles')],
        carries: true,
      }),
      statementPoint({
        step: 'why',
        earns: words.inline('point-why', context),
        also: [words.inline('also-why', context)],
        refuse: [words.inline('refuse-why')],
      }),
    ],
    answers: ['flow', 'why'],
    explains: [cellLadder(facts, words)],
  };
  return ask.level === 'stretch' ? [emf, equation, electrons, bridgePart(facts, words)] : [emf, equation, electrons];
}

function bridgePart({ labels, negative, positive }: CellFacts, words: Words): Part {
  return {
    id: 'd',
    command: 'State',
    objective: 'application',
    maths: 0,
    practical: 0,
    prompt: words.inline('bridge', labels),
    hints: [words.inline('bridge-hint')],
    space: { kind: 'lines', count: 1 },
    points: [
      statementPoint({ step: 'bridge', earns: words.inline('point-bridge', runContext(negative, positive)), carries: true }),
    ],
    answers: ['bridge'],
  };
}
