import { keyOf } from '../../chemistry/write-formula.ts';
import type { Inline } from '../../document/inline.ts';
import { quantity, species, text } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import { methodPoint, statementPoint, valuePoint } from '../point.ts';
import type { Level, Part, Point } from '../question.ts';
import type { HalfDraw } from './half-equation.ts';
import type { HalfPlan } from './half-equation-plan.ts';
import { changeIn, mainParts, makeUpWords, unitsOf } from './half-equation-steps.ts';

const plain = { maths: 0, practical: 0, objective: 'application' } as const;

/** The written parts, least demanding first. */
export function halfParts(drawn: HalfDraw, level: Level, tables: Tables, words: Words): Part[] {
  const { main, partner } = drawn;
  const parts = mainParts(level);
  const first = halfPart('a', partner, partnerPoints(partner, words), 'partner', words);
  const electrons = electronPoints(main, level === 'core', words);
  return level === 'core'
    ? [first, electronsPart(main, electrons, words), halfPart(parts.half, main, mainPoints(main, words), 'half', words)]
    : [
        first,
        halfPart(parts.half, main, [electrons[1]!, ...mainPoints(main, words)], 'half', words),
        agentPart(main.isReduction ? [main, partner] : [partner, main], tables, words),
      ];
}

/** What fills the wording about one half-equation. */
export function halfContext({ subject, product, medium, isReduction }: HalfPlan): WordsContext {
  return { subject: species(subject), product: species(product), inAcid: medium === 'acid', isReduction };
}

function halfPart(id: string, plan: HalfPlan, points: readonly Point[], step: string, words: Words): Part {
  const context = halfContext(plan);
  return {
    ...plain,
    id,
    command: 'Write',
    prompt: words.inline('half', context),
    hints: [
      words.inline(!plan.isBuilt ? 'half-hint-simple' : plan.medium === 'acid' ? 'half-hint-acid' : 'half-hint-alkali', context),
    ],
    space: { kind: 'equation', arrow: 'forward', count: 1 },
    points,
    answers: [step],
  };
}

function makeUpPoint(step: string, plan: HalfPlan, words: Words): Point {
  return methodPoint({
    step,
    earns: words.inline('point-makeup', { terms: makeUpWords(plan, words) }),
    refuse: plan.medium === 'acid' ? [] : [words.inline('refuse-acid')],
  });
}

function balancePoint(step: string, plan: HalfPlan, words: Words): Point {
  const count = String(plan.perUnit * unitsOf(plan));
  return valuePoint({
    step,
    earns: words.inline('point-half', {
      ...halfContext(plan),
      electrons: count === '1' ? '' : count,
      side: plan.isReduction ? 'left' : 'right',
    }),
    also: [words.inline('also-half')],
    refuse: [words.inline('refuse-half')],
    ignore: [words.inline('ignore-half')],
  });
}

function partnerPoints(partner: HalfPlan, words: Words): Point[] {
  const balance = balancePoint('partner-charge', partner, words);
  return partner.isBuilt ? [makeUpPoint('partner-makeup', partner, words), balance] : [balance];
}

function mainPoints(main: HalfPlan, words: Words): Point[] {
  return [makeUpPoint('makeup', main, words), balancePoint('charge', main, words)];
}

function electronPoints(main: HalfPlan, isAsked: boolean, words: Words): [Point, Point] {
  const { name, from, to, atoms } = changeIn(main);
  const counted = { element: name, before: signed(from), after: signed(to), change: String(Math.abs(from - to)) };
  const several = { atoms: String(atoms), isSeveral: atoms > 1, electrons: String(main.perUnit), subject: species(main.subject) };
  return [
    methodPoint({ step: 'change', earns: words.inline('point-change', counted), refuse: [words.inline('refuse-bare')] }),
    valuePoint({
      step: 'electrons',
      earns: words.inline('point-electrons', { ...counted, ...several }),
      also: isAsked ? [words.inline('also-bare')] : [],
      carries: true,
    }),
  ];
}

const signed = (value: number) => quantity(`${value > 0 ? '+' : value < 0 ? '\u2212' : ''}${Math.abs(value)}`, '');

function electronsPart(main: HalfPlan, points: readonly Point[], words: Words): Part {
  const context = halfContext(main);
  return {
    ...plain,
    id: 'b',
    command: 'Deduce',
    maths: 1,
    prompt: words.inline('electrons', context),
    hints: [words.inline('electrons-hint', context)],
    space: { kind: 'working', marks: 2, symbol: [text('number of electrons')], unit: '' },
    points,
    answers: ['electrons'],
  };
}

/** The same argued from the other reactant, where its element has whole numbers. */
function risesIn(oxidant: HalfPlan, { change, subject }: HalfPlan, words: Words): Inline[][] {
  if (!change) return [];
  const told = { element: change.name, before: signed(change.from), after: signed(change.to) };
  return [words.inline('also-rises', { ...told, reductant: species(subject), oxidant: species(oxidant.subject) })];
}

function agentPart([oxidant, reductant]: readonly [HalfPlan, HalfPlan], tables: Tables, words: Words): Part {
  const { name, from, to } = changeIn(oxidant);
  return {
    ...plain,
    id: 'c',
    command: 'Explain',
    objective: 'analysis',
    prompt: words.inline('agent'),
    hints: [words.inline('agent-hint')],
    space: { kind: 'lines', count: 4 },
    points: [
      statementPoint({
        step: 'falls',
        earns: words.inline('point-falls', { element: name, before: signed(from), after: signed(to) }),
        also: risesIn(oxidant, reductant, words),
      }),
      statementPoint({
        step: 'agent',
        earns: words.inline('point-agent', { oxidant: species(oxidant.subject) }),
        also: [[text(tables.speciesOf(keyOf(oxidant.subject)).name)]],
        refuse: [words.inline('refuse-agent')],
      }),
    ],
    answers: ['falls', 'agent'],
  };
}
