import { keyOf } from '../../chemistry/write-formula.ts';
import { text } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import { methodPoint, statementPoint, valuePoint } from '../point.ts';
import type { Part, Point } from '../question.ts';
import type { CombineFacts } from './combine-halves-facts.ts';

const plain = { maths: 0, practical: 0, objective: 'application' } as const;

/** The written parts, least demanding first. With potentials the direction comes first, and the factors are not asked for by name. */
export function combineParts(facts: CombineFacts, context: WordsContext, tables: Tables, words: Words): Part[] {
  return facts.drawn.given === 'with potentials'
    ? [directionPart(facts, context, words), equationPart(facts, context, words), electronsPart(facts, context, words)]
    : [factorsPart(facts, context, words), equationPart(facts, context, words), agentPart(facts, context, tables, words)];
}

function factorsPoint({ halves }: CombineFacts, words: Words): Point {
  const [first, second] = halves.map(({ factor }) => String(factor));
  return methodPoint({
    step: 'factors',
    earns: words.inline('point-factors', { first, second }),
    also: [words.inline('also-factors')],
  });
}

function factorsPart(facts: CombineFacts, context: WordsContext, words: Words): Part {
  return {
    ...plain,
    id: 'a',
    command: 'Deduce',
    maths: 1,
    prompt: words.inline('factors', context),
    hints: [words.inline('factors-hint')],
    space: { kind: 'short', labels: facts.halves.map(({ label }) => words.inline('label-factor', { label })) },
    points: [factorsPoint(facts, words)],
    answers: ['factors'],
  };
}

function equationPart(facts: CombineFacts, context: WordsContext, words: Words): Part {
  const { given } = facts.drawn;
  const isFound = given === 'with potentials';
  const sides = methodPoint({
    step: 'sides',
    earns: words.inline(isFound ? 'point-sides' : 'point-species', context),
    carries: isFound,
  });
  return {
    ...plain,
    id: 'b',
    command: 'Write',
    prompt: words.inline(isFound ? 'equation-stretch' : 'equation', context),
    hints: [words.inline(given === 'as they run' ? 'equation-hint-run' : 'equation-hint')],
    space: { kind: 'equation', arrow: 'forward', count: 1 },
    points: [
      sides,
      ...(isFound ? [factorsPoint(facts, words)] : []),
      valuePoint({
        step: 'tidy',
        earns: words.inline('point-equation'),
        refuse: [words.inline('refuse-left-in')],
        ignore: [words.inline('ignore-arrow')],
      }),
    ],
    answers: ['equation'],
  };
}

function agentPart({ oxidant }: CombineFacts, context: WordsContext, tables: Tables, words: Words): Part {
  return {
    ...plain,
    id: 'c',
    command: 'Give',
    prompt: words.inline('agent', context),
    hints: [words.inline('agent-hint')],
    space: { kind: 'lines', count: 1 },
    points: [
      valuePoint({
        step: 'agent',
        earns: words.inline('point-agent', context),
        also: [[text(tables.speciesOf(keyOf(oxidant)).name)]],
        refuse: [words.inline('refuse-product', context)],
      }),
    ],
    answers: ['agent'],
  };
}

function directionPart({ reduced }: CombineFacts, context: WordsContext, words: Words): Part {
  return {
    ...plain,
    id: 'a',
    command: 'Explain',
    objective: 'analysis',
    prompt: words.inline('direction', context),
    hints: [words.inline('direction-hint')],
    space: { kind: 'lines', count: 4 },
    points: [
      statementPoint({
        step: 'direction',
        earns: words.inline('point-direction', { ...context, label: reduced.label }),
        refuse: [words.inline('refuse-direction')],
      }),
      statementPoint({ step: 'agent', earns: words.inline('point-takes', context), carries: true }),
    ],
    answers: ['direction', 'agent'],
  };
}

function electronsPart({ combined }: CombineFacts, context: WordsContext, words: Words): Part {
  return {
    ...plain,
    id: 'c',
    command: 'Deduce',
    maths: 1,
    prompt: words.inline('electrons', context),
    hints: [words.inline('electrons-hint')],
    space: { kind: 'lines', count: 1 },
    points: [
      valuePoint({
        step: 'electrons',
        earns: words.inline('point-electrons', { electrons: String(combined.electrons) }),
        also: [words.inline('also-electrons')],
      }),
    ],
    answers: ['electrons'],
  };
}
