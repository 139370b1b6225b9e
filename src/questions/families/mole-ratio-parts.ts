import { joined } from '../../chemistry/cell.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import type { Inline } from '../../document/inline.ts';
import { quantity, species, text } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import { ratioIn } from '../amount-ratio.ts';
import { numberOf } from '../number-of.ts';
import { methodPoint, valuePoint } from '../point.ts';
import type { Part, Point } from '../question.ts';
import { shorterFigures } from '../shorter-figures.ts';
import { showNumber } from '../show-value.ts';
import type { Values } from '../value.ts';
import type { RatioPlan } from './mole-ratio-plan.ts';
import { lastStep, symbolOf } from './mole-ratio-steps.ts';

/** The written parts: equation where it is asked, ratio, known amount, and what is asked for. `values` are worked as printed. */
export function ratioParts(plan: RatioPlan, words: Words, context: WordsContext, values: Values, volumeUnit: string): Part[] {
  return [
    ...(plan.equationPart ? [equationPart(plan, plan.equationPart, words, context)] : []),
    ratioPart(plan, words, context),
    amountPart(plan, words, context, values),
    lastPart(plan, words, context, values, volumeUnit),
  ];
}

function equationPart({ drawn }: RatioPlan, id: string, words: Words, context: WordsContext): Part {
  const built = drawn.told === 'changes';
  return {
    id,
    command: 'Write',
    objective: 'application',
    maths: 0,
    practical: 0,
    prompt: words.inline('equation', context),
    hints: [words.inline(built ? 'equation-hint-built' : 'equation-hint')],
    space: { kind: 'equation', arrow: 'forward', count: 1 },
    points: [
      methodPoint({ step: 'reaction', earns: words.inline('point-reaction', context) }),
      valuePoint({
        step: 'equation',
        earns: words.inline('point-equation'),
        refuse: [words.inline('refuse-electrons')],
        ignore: [words.inline('ignore-arrow')],
      }),
    ],
    answers: ['equation'],
  };
}

function ratioPart(plan: RatioPlan, words: Words, context: WordsContext): Part {
  const { drawn, found, known } = plan;
  const { left, right } = ratioIn(joined(drawn.oxidant, drawn.reductant).equation, found.species, known.species);
  const label: Inline[] = [species(found.species), text(' : '), species(known.species), text(' =')];
  return {
    id: plan.ratioPart,
    command: 'Give',
    objective: 'application',
    maths: 0,
    practical: 0,
    prompt: words.inline('ratio', context),
    hints: [words.inline('ratio-hint')],
    space: { kind: 'short', labels: [label] },
    points: [
      valuePoint({
        step: 'ratio',
        earns: words.inline('point-ratio', { ...context, ratio: `${left} : ${right}` }),
        also: [words.inline('also-ratio', { inverted: `${right} : ${left}`, hasOwn: plan.equationPart !== undefined })],
        carries: plan.equationPart !== undefined,
      }),
    ],
    answers: ['ratio'],
  };
}

function amountPart(plan: RatioPlan, words: Words, context: WordsContext, values: Values): Part {
  const { weighsKnown, known } = plan;
  const isSalt = weighsKnown && !known.isMetal;
  const value = numberOf(values, 'amount');
  const shorter = shorterFigures(value).map((figure) => quantity(figure, 'mol'));
  const also = [...shorter.map((rounded) => words.inline('also-rounded', { rounded })), words.inline('also-figures')];
  const method = weighsKnown ? 'point-amount-mass' : 'point-amount-solution';
  const shown = quantity(showNumber(value, { sf: 4 }), 'mol');
  return {
    id: plan.amountPart,
    command: 'Calculate',
    objective: 'application',
    maths: isSalt ? 2 : 1,
    practical: 1,
    prompt: words.inline(weighsKnown ? 'amount-mass' : 'amount-solution', context),
    hints: [words.inline(weighsKnown ? 'amount-hint-mass' : 'amount-hint-solution')],
    space: { kind: 'working', marks: isSalt ? 2 : 1, symbol: [symbolOf('n', known.species)], unit: 'mol' },
    points: [
      ...(isSalt ? [molarPoint('molar-known', values, words)] : []),
      valuePoint({ step: 'amount', earns: words.inline(method, { shown }), also, carries: isSalt }),
    ],
    answers: ['amount'],
  };
}

function molarPoint(step: string, values: Values, words: Words): Point {
  const shown = quantity(showNumber(numberOf(values, step), { dp: 1 }), 'g mol^-1');
  return methodPoint({ step, earns: words.inline('point-molar', { shown }) });
}

function lastPart(plan: RatioPlan, words: Words, context: WordsContext, values: Values, volumeUnit: string): Part {
  const { drawn, found, weighsFound } = plan;
  const { measure } = drawn.found;
  const isSalt = weighsFound && !found.isMetal;
  const marks = measure === 'amount' ? 1 : isSalt ? 3 : 2;
  const unit = measure === 'amount' ? 'mol' : weighsFound ? 'g' : volumeUnit;
  const letter = measure === 'amount' ? 'n' : weighsFound ? 'm' : 'V';
  const id = lastStep(plan);
  const shown = quantity(showNumber(numberOf(values, id), { sf: 3 }), unit);
  const through = quantity(showNumber(numberOf(values, 'found-amount'), { sf: 4 }), 'mol');
  return {
    id: plan.lastPart,
    command: 'Calculate',
    objective: 'application',
    maths: marks,
    practical: 1,
    prompt: words.inline(`asked-${measure}`, context),
    hints: [words.inline(`asked-hint-${measure}`, context)],
    space: { kind: 'working', marks, symbol: [symbolOf(letter, weighsFound ? found.salt : found.species)], unit },
    points: [
      ...(measure === 'amount'
        ? []
        : [
            methodPoint({
              step: 'found-amount',
              earns: words.inline('point-found', { foundAmount: [symbolOf('n', found.species)], through }),
              carries: true,
            }),
          ]),
      ...(isSalt ? [molarPoint('molar-found', values, words)] : []),
      valuePoint({
        step: id,
        earns: words.inline(`point-${measure}`, { shown }),
        also: [words.inline('also-figures')],
        carries: true,
      }),
    ],
    answers: [id],
  };
}

/** What a page calls the species in identities and facts. */
export const nameOf = (plan: RatioPlan): string =>
  `${keyOf(plan.known.species)} ${plan.drawn.known.measure} to ${plan.drawn.found.measure}`;
