import { quantity, species, text } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import { printNumber } from '../../exact/print-number.ts';
import { numberOf } from '../number-of.ts';
import { methodPoint, valuePoint } from '../point.ts';
import type { Part, Point } from '../question.ts';
import { shorterFigures } from '../shorter-figures.ts';
import { showNumber } from '../show-value.ts';
import { solve } from '../solve.ts';
import type { Values } from '../value.ts';
import type { Titration } from './titration-concentration-build.ts';
import { titrationData } from './titration-concentration-data.ts';
import { lastStep, symbolOf, titrationSteps } from './titration-concentration-steps.ts';
import { endPart } from './titration-end.ts';

/** The written parts: amount, equation, concentration, end point. */
export function titrationParts(titration: Titration, words: Words): Part[] {
  const values = solve({ data: titrationData(titration), steps: titrationSteps(titration, words), parts: [] }, 'printed');
  return [
    amountPart(titration, words, values),
    equationPart(titration, words),
    concentrationPart(titration, words, values),
    endPart(titration, words),
  ];
}

function amountPart(titration: Titration, words: Words, values: Values): Part {
  const { context, knownVolume, known, units } = titration;
  const shown = quantity(showNumber(numberOf(values, 'amount'), { sf: 4 }), 'mol');
  return {
    id: 'a',
    command: 'Calculate',
    objective: 'application',
    maths: 1,
    practical: 0,
    prompt: words.inline(knownVolume === 'titre' ? 'amount-titre' : 'amount-portion', context),
    hints: [words.inline('amount-hint', context)],
    space: { kind: 'working', marks: 1, symbol: [symbolOf('n', known)], unit: 'mol' },
    points: [
      valuePoint({
        step: 'amount',
        earns: words.inline('point-amount', { shown, litre: quantity('', units.volume === 'mL' ? 'L' : 'dm^3') }),
        also: [
          ...shorterFigures(numberOf(values, 'amount')).map((figure) =>
            words.inline('also-rounded', { rounded: quantity(figure, 'mol') }),
          ),
          words.inline('also-figures'),
        ],
        refuse: [words.inline('refuse-amount', { volume: quantity('', units.volume) })],
      }),
    ],
    answers: ['amount'],
  };
}

function equationPart({ context, system, ask }: Titration, words: Words): Part {
  return {
    id: 'b',
    command: 'Write',
    objective: 'application',
    maths: 0,
    practical: 0,
    prompt: words.inline(system.acid ? 'equation-acid' : 'equation-neutral', context),
    hints: [words.inline(ask.level === 'core' ? 'equation-hint' : 'equation-hint-built')],
    space: { kind: 'equation', arrow: 'forward', count: 1 },
    points: [
      methodPoint({ step: 'reaction', earns: words.inline('point-direction', context) }),
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

function concentrationPart(titration: Titration, words: Words, values: Values): Part {
  const { context, dilution, found, units } = titration;
  const last = lastStep(titration).id;
  return {
    id: 'c',
    command: 'Calculate',
    objective: 'application',
    maths: dilution ? 3 : 2,
    practical: 1,
    prompt: words.inline(dilution ? 'concentration-stock' : 'concentration', context),
    hints: [words.inline(dilution ? 'concentration-hint-stock' : 'concentration-hint', context)],
    space: {
      kind: 'working',
      marks: dilution ? 3 : 2,
      symbol: dilution ? [symbolOf('c', found), text(' in the stock')] : [symbolOf('c', found)],
      unit: units.concentration,
    },
    points: concentrationPoints(titration, words, values),
    answers: [last],
  };
}

function concentrationPoints(titration: Titration, words: Words, values: Values): Point[] {
  const { found, known, units, dilution, foundVolume } = titration;
  const context: WordsContext = {
    left: species(found.reacts),
    right: species(known.reacts),
    unknownAmount: [symbolOf('n', found)],
    ratio: `${found.coefficient} : ${known.coefficient}`,
    amount: quantity(showNumber(numberOf(values, 'found-amount'), { sf: 4 }), 'mol'),
    answer: quantity(showNumber(numberOf(values, 'concentration'), { sf: dilution ? 4 : 3 }), units.concentration),
  };
  const measured = words.inline(foundVolume === 'portion' ? 'measured-pipette' : 'measured-burette');
  const figures = [words.inline('also-figures')];
  return [
    methodPoint({
      step: 'ratio',
      earns: words.inline('point-ratio', context),
      also: [words.inline('also-ratio')],
      carries: true,
    }),
    valuePoint({
      step: 'concentration',
      earns: words.inline('point-concentration', { ...context, measured }),
      also: dilution ? [words.inline('also-whole-flask', inFlask(titration, dilution, values))] : figures,
      carries: true,
    }),
    ...(dilution
      ? [
          valuePoint({
            step: 'stock',
            earns: words.inline('point-dilution', {
              flask: printNumber(dilution.flask),
              sample: printNumber(dilution.sample),
              answer: quantity(showNumber(numberOf(values, 'stock'), { sf: 3 }), units.concentration),
            }),
            also: [...figures, words.inline('also-from-flask', { sample: quantity(printNumber(dilution.sample), units.volume) })],
            carries: true,
          }),
        ]
      : []),
  ];
}

/** The other way to the stock: the amount in the whole flask first. */
function inFlask(
  { portion, foundVolume, titre }: Titration,
  { flask }: NonNullable<Titration['dilution']>,
  values: Values,
): WordsContext {
  const measured = foundVolume === 'portion' ? portion : titre;
  const amount = numberOf(values, 'found-amount').times(flask.value).over(measured.value);
  return { flask: printNumber(flask), portion: printNumber(measured), amount: quantity(showNumber(amount, { sf: 4 }), 'mol') };
}
