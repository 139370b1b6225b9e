import { coloursOf } from '../chemistry/colours.ts';
import { combined } from '../chemistry/half-equations.ts';
import { type Answer, numberMark } from '../engine/answer.ts';
import type { Answers, CaseReader, Node, PointRule, Slip } from '../engine/case.ts';
import { workedAsPrinted } from '../engine/chain.ts';
import { figuresEnough } from '../engine/figures-enough.ts';
import { Fraction } from '../exact/fraction.ts';
import { writeNumber } from '../exact/printed-number.ts';
import { equationSlips } from './equation-slips.ts';
import { figuresIn } from './potentials.ts';
import { ratioIn } from './reagents.ts';
import { type Titration, titrationIn } from './titration.ts';

const THOUSAND = Fraction.of(1000);

/** A concentration from one mean titre: amount, equation, ratio, amount, concentration, and the stock if it was diluted. */
export const titrationConcentration: CaseReader = ({ question }) => {
  const titration = titrationIn(question);
  return {
    nodes: nodesOf(titration),
    slips: slipsOf(titration),
    points: pointsOf(titration),
    vocabulary: { colours: true, numbers: true, words: { pipetted: /that was pipetted/, 'run in': /that was run in/ } },
    printed: figuresIn(question),
    faults: [],
  };
};

const amountOf = (answers: Answers, id: string): Fraction => {
  const answer = answers.get(id);
  return answer?.kind === 'number' ? answer.value : Fraction.zero;
};
const ratioOf = (answers: Answers): { left: Fraction; right: Fraction } => {
  const answer = answers.get('ratio');
  return answer?.kind === 'ratio' ? answer : { left: Fraction.one, right: Fraction.one };
};

function nodesOf(titration: Titration): Node[] {
  const { known, found, concentration, knownVolume, foundVolume, units, dilution, oxidant, reductant } = titration;
  const plain = (id: string, needs: readonly string[], work: Node['work']): Node => ({ id, needs, figures: 'whole', work });
  const figure = (
    id: string,
    needs: readonly string[],
    significant: number,
    symbol: 'n' | 'c',
    of: string,
    work: Node['work'],
  ): Node => ({
    id,
    needs,
    figures: { significant },
    left: [`symbol ${symbol}`, `species ${of}`],
    work,
  });
  const mol = (value: Fraction): Answer => ({ kind: 'number', value, unit: 'mol' });
  const strength = (value: Fraction): Answer => ({ kind: 'number', value, unit: units.concentration });
  const colour = (...words: (readonly string[])[]): Answer => ({
    kind: 'said',
    marks: words.map((each) => `colour ${each.join('|')}`),
  });
  return [
    figure('amount', [], 4, 'n', known, () => mol(concentration.multiply(knownVolume).divide(THOUSAND))),
    plain('reaction', [], () => ({ kind: 'said', marks: reactionMarks(titration) })),
    plain('equation', ['reaction'], () => ({ kind: 'equation', sides: combined(oxidant.half, reductant.half) })),
    plain('ratio', ['equation'], (answers) => {
      const equation = answers.get('equation');
      return {
        kind: 'ratio',
        ...ratioIn(equation?.kind === 'equation' ? equation.sides : { left: new Map(), right: new Map() }, found, known),
      };
    }),
    figure('found-amount', ['amount', 'ratio'], 4, 'n', found, (answers) => {
      const { left, right } = ratioOf(answers);
      return mol(amountOf(answers, 'amount').multiply(left).divide(right));
    }),
    figure('concentration', ['found-amount'], dilution ? 4 : 3, 'c', found, (answers) =>
      strength(amountOf(answers, 'found-amount').multiply(THOUSAND).divide(foundVolume)),
    ),
    ...(dilution
      ? [
          figure('stock', ['concentration'], 3, 'c', found, (answers) =>
            strength(amountOf(answers, 'concentration').multiply(dilution.flask).divide(dilution.sample)),
          ),
        ]
      : []),
    plain('end', [], () => (titration.end ? colour(titration.end.before, titration.end.after) : { kind: 'said', marks: [] })),
    plain('why-strong', [], () => ({ kind: 'said', marks: strongMarks(titration) })),
    plain('why-drop', [], () => ({ kind: 'said', marks: dropMarks(titration) })),
  ];
}

function reactionMarks({ oxidant, reductant }: Titration): string[] {
  return [oxidant.oxidised, reductant.reduced, oxidant.reduced, reductant.oxidised].map((key) => `species ${key}`);
}
const strongMarks = ({ titrant }: Titration) => [
  `species ${titrant.reacts}`,
  `colour ${(coloursOf(titrant.reacts) ?? []).join('|')}`,
];
const dropMarks = ({ titrant }: Titration) => [
  `species ${titrant.product}`,
  `colour ${(coloursOf(titrant.product) ?? []).join('|')}`,
  `colour ${(coloursOf(titrant.reacts) ?? []).join('|')}`,
];

function slipsOf(titration: Titration): Slip[] {
  const { concentration, knownVolume, foundVolume, units, acid, oxidant, reductant, end } = titration;
  const strength = (value: Fraction): Answer => ({ kind: 'number', value, unit: units.concentration });
  const isPipetted = titration.foundVolume === titration.portion;
  return [
    {
      id: 'TI-RATIO-ONE',
      at: 'ratio',
      tells: ['ratio 1 : 1'],
      work: () => ({ kind: 'ratio', left: Fraction.one, right: Fraction.one }),
    },
    {
      id: 'TI-RATIO-INVERTED',
      at: 'ratio',
      work: (answers) => {
        const right = nodesOf(titration)
          .find(({ id }) => id === 'ratio')!
          .work(answers);
        return right.kind === 'ratio' ? { ...right, left: right.right, right: right.left } : right;
      },
    },
    {
      id: 'TI-CM3-AS-DM3',
      at: 'amount',
      tells: [`unit ${units.volume}`, 'number 1000'],
      work: () => ({ kind: 'number', value: concentration.multiply(knownVolume), unit: 'mol' }),
    },
    ...equationSlips('equation', () => ({ reduced: oxidant.half, oxidised: reductant.half })),
    ...dilutionSlips(titration),
    ...(acid && isPipetted
      ? [
          {
            id: 'TI-WATER-COUNTED',
            at: 'concentration',
            work: (answers: Answers) =>
              strength(amountOf(answers, 'found-amount').multiply(THOUSAND).divide(foundVolume.add(acid))),
          },
        ]
      : []),
    ...(end
      ? [
          {
            id: 'TI-ENDPOINT-REVERSED',
            at: 'end',
            work: (): Answer => ({ kind: 'said', marks: [`colour ${end.after.join('|')}`, `colour ${end.before.join('|')}`] }),
          },
        ]
      : []),
  ];
}

/** Ways of going wrong between the portion, the flask and the stock. */
function dilutionSlips({ dilution, units }: Titration): Slip[] {
  if (!dilution) return [];
  const slip = (id: string, at: string, work: (answers: Answers) => Fraction): Slip => ({
    id,
    at,
    work: (answers) => ({ kind: 'number', value: work(answers), unit: units.concentration }),
  });
  return [
    slip('TI-FLASK-VOLUME', 'concentration', (answers) =>
      amountOf(answers, 'found-amount').multiply(THOUSAND).divide(dilution.flask),
    ),
    slip('TI-ALIQUOT-NOT-SCALED', 'stock', (answers) => amountOf(answers, 'concentration')),
    slip('TI-ALIQUOT-INVERTED', 'stock', (answers) =>
      amountOf(answers, 'concentration').multiply(dilution.sample).divide(dilution.flask),
    ),
  ];
}

/** One may go from the portion to the flask by amounts: so many portions fill it. */
function wholeFlask({ dilution, foundVolume, portion, portionText }: Titration, answers: Answers): Pick<PointRule, 'also'> {
  if (!dilution || foundVolume !== portion) return {};
  const held = amountOf(answers, 'found-amount').divide(foundVolume).multiply(dilution.flask);
  const held4 = numberMark(writeNumber(held, { significant: 4 }), 'mol');
  return { also: [[numberMark(dilution.flaskText, ''), numberMark(portionText, ''), held4]] };
}

function pointsOf(titration: Titration): Record<string, PointRule> {
  const { known, found, dilution, units, end } = titration;
  const nodes = nodesOf(titration);
  const answers = workedAsPrinted(nodes);
  const printed = (id: string, figures = nodes.find((node) => node.id === id)!.figures) => {
    const answer = answers.get(id)!;
    return answer.kind === 'number' ? numberMark(writeNumber(answer.value, figures), answer.unit) : '';
  };
  const { left, right } = ratioOf(answers);
  const measured = titration.foundVolume === titration.portion ? 'pipetted' : 'run in';
  return {
    'amount:value': {
      earns: [printed('amount'), `unit ${units.litre}`],
      also: figuresEnough(amountOf(answers, 'amount'), 'mol'),
    },
    'reaction:method': { earns: reactionMarks(titration) },
    'ratio:method': {
      earns: [`species ${found}`, `species ${known}`, `ratio ${left} : ${right}`, `species ${found}`, printed('found-amount')],
    },
    'concentration:value': { earns: [`word ${measured}`, printed('concentration')], ...wholeFlask(titration, answers) },
    ...(dilution
      ? {
          'stock:value': {
            earns: [numberMark(dilution.flaskText, ''), numberMark(dilution.sampleText, ''), printed('stock')],
            also: [[numberMark(dilution.sampleText, units.volume)]],
          },
        }
      : {}),
    ...(end
      ? {
          'end:statement': {
            earns: [`colour ${end.before.join('|')}`, `colour ${end.after.join('|')}`],
            families: [end.before, end.after],
            not: [['colour colourless']],
          },
        }
      : {}),
    'why-strong:statement': { earns: strongMarks(titration) },
    'why-drop:statement': { earns: dropMarks(titration) },
  };
}
