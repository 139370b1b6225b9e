import { keyOf } from '../../chemistry/write-formula.ts';
import { quantity, species } from '../../document/inlines.ts';
import { symbol } from '../../document/symbols.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import { methodPoint, statementPoint, valuePoint } from '../point.ts';
import type { Part, Point } from '../question.ts';
import { showNumber } from '../show-value.ts';
import { drawnLadder } from './stepwise-figure.ts';
import { emfOf, type Ladder, type Rung } from './stepwise-ladder.ts';
import { coloursPart, numbersPart } from './stepwise-look-parts.ts';
import type { LadderPlan } from './stepwise-plan.ts';

/** The parts of a ladder question in order. */
export function ladderParts(ladder: Ladder, plan: LadderPlan, context: WordsContext, tables: Tables, words: Words): Part[] {
  const look = plan.sees ? coloursPart(ladder, plan, tables, words) : numbersPart(ladder, plan, context, words);
  const stop = stopPart(ladder, plan, context, words);
  return plan.level === 'core'
    ? [
        firstEmfPart(plan, context, words),
        firstEquationPart(ladder, plan, context, words),
        finalPart(ladder, plan, context, tables, words),
        stop,
        look,
      ]
    : [chainPart(ladder, plan, context, tables, words), stop, overallPart(ladder, plan, context, words), look];
}

const plain = { maths: 0, practical: 0 } as const;

function volts({ rung, ladder }: { readonly rung: Rung; readonly ladder: Ladder }) {
  return quantity(showNumber(emfOf(rung.couple, ladder.reagent, ladder.isReduction), { dp: 2 }, true), 'V');
}

function firstEmfPart({ emfPart }: LadderPlan, context: WordsContext, words: Words): Part {
  return {
    id: emfPart,
    command: 'Calculate',
    objective: 'application',
    maths: 1,
    practical: 0,
    prompt: words.inline('first-emf', context),
    hints: [words.inline('first-emf-hint')],
    space: { kind: 'working', marks: 1, symbol: [symbol('E°cell')], unit: 'V' },
    points: [
      valuePoint({
        step: 'emf-1',
        earns: words.inline('point-emf'),
        also: [words.inline('also-unit')],
        refuse: [words.inline('refuse-multiplied')],
      }),
    ],
    answers: ['emf-1'],
  };
}

function firstEquationPart({ rungs, product }: Ladder, { firstPart }: LadderPlan, context: WordsContext, words: Words): Part {
  const filled = { ...context, next: species(rungs[0]!.to), reagentProduct: species(product) };
  return {
    ...plain,
    id: firstPart!,
    command: 'Write',
    objective: 'application',
    prompt: words.inline('first-equation', context),
    hints: [words.inline('first-equation-hint')],
    space: { kind: 'equation', arrow: 'forward', count: 1 },
    points: [methodPoint({ step: 'species', earns: words.inline('point-species', filled) }), balancedPoint('equation', words)],
    answers: ['equation'],
  };
}

function balancedPoint(step: string, words: Words): Point {
  return valuePoint({
    step,
    earns: words.inline('point-balanced'),
    refuse: [words.inline('refuse-electrons')],
    ignore: [words.inline('ignore-arrow')],
    carries: true,
  });
}

function finalPoint({ rungs }: Ladder, tables: Tables, words: Words): Point {
  const final = rungs.at(-1)!.to;
  return statementPoint({
    step: 'final',
    earns: words.inline('point-final', { final: species(final) }),
    also: [words.inline('also-final', { name: tables.speciesOf(keyOf(final)).name })],
  });
}

function finalPart(ladder: Ladder, { finalPart: id }: LadderPlan, context: WordsContext, tables: Tables, words: Words): Part {
  return {
    ...plain,
    id,
    command: 'Deduce',
    objective: 'analysis',
    prompt: words.inline('final', context),
    hints: [words.inline('final-hint', context)],
    space: { kind: 'lines', count: 1 },
    points: [finalPoint(ladder, tables, words)],
    answers: ['final'],
    explains: [drawnLadder(ladder, context, words)],
  };
}

/** Stretch: every step's E°cell and the species left, without signposts. */
function chainPart(ladder: Ladder, plan: LadderPlan, context: WordsContext, tables: Tables, words: Words): Part {
  const steps = plan.emfs.map((at) => {
    const rung = ladder.rungs[at]!;
    const earns = words.inline('point-emf-step', {
      from: species(rung.from),
      to: species(rung.to),
      value: volts({ rung, ladder }),
    });
    return valuePoint({ step: `emf-${at + 1}`, earns, also: [words.inline('also-unit')] });
  });
  return {
    id: plan.emfPart,
    command: 'Deduce',
    objective: 'analysis',
    maths: steps.length,
    practical: 0,
    prompt: words.inline('chain', context),
    hints: [words.inline('final-hint', context)],
    space: { kind: 'lines', count: 2 * (steps.length + 1) },
    points: [...steps, finalPoint(ladder, tables, words)],
    answers: [...plan.emfs.map((at) => `emf-${at + 1}`), 'final'],
    explains: [drawnLadder(ladder, context, words)],
  };
}

function stopPart(ladder: Ladder, { stopPart: id }: LadderPlan, context: WordsContext, words: Words): Part {
  const { next } = ladder;
  const filled = { ...context, from: species(next.from), to: species(next.to), value: volts({ rung: next, ladder }) };
  return {
    id,
    command: 'Explain',
    objective: 'analysis',
    maths: 1,
    practical: 0,
    prompt: words.inline('stop', context),
    hints: [words.inline('stop-hint', context)],
    space: { kind: 'lines', count: 4 },
    points: [
      // the next step from a wrong species, rightly worked, earns the mark
      valuePoint({ step: 'stop-emf', earns: words.inline('point-stop-emf', filled), carries: true }),
      statementPoint({ step: 'stop', earns: words.inline('point-stop', filled), refuse: [words.inline('refuse-stop')] }),
    ],
    answers: ['stop-emf', 'stop'],
  };
}

function overallPart({ rungs }: Ladder, { overallPart: id }: LadderPlan, context: WordsContext, words: Words): Part {
  const isChain = rungs.length > 1;
  return {
    ...plain,
    id: id!,
    command: 'Write',
    objective: 'application',
    prompt: words.inline(isChain ? 'overall' : 'single', context),
    hints: [words.inline(isChain ? 'overall-hint' : 'first-equation-hint', context)],
    space: { kind: 'equation', arrow: 'forward', count: 1 },
    points: [
      methodPoint({ step: 'overall-species', earns: words.inline('point-species-overall', context), carries: true }),
      balancedPoint('overall', words),
    ],
    answers: ['overall'],
  };
}
