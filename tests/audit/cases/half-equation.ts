import type { Side } from '../chemistry/sides.ts';
import { type Answer, numberMark } from '../engine/answer.ts';
import { type Answers, type CaseReader, type Node, type PointRule, type Slip, Unreadable } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';
import { writeNumber } from '../exact/printed-number.ts';
import type { ReadPart, ReadQuestion } from '../reading/sheet.ts';
import { everyToken } from '../reading/tokens.ts';
import { chargeOf } from './charge.ts';
import { ELEMENT_NAMES, elementMark } from './elements.ts';
import { atomsIn, type Half, halfOf, type MakeUp, type Medium, oxideElectrons, writtenHalf } from './half.ts';

/** Half-equations from their two species: the partner's first, then the main one with its electrons, then who oxidises. */
export const halfEquation: CaseReader = ({ question, level }) => {
  const { main, partner } = halvesIn(question);
  return {
    nodes: [...(partner ? partnerNodes(partner) : []), ...mainNodes(main), ...(partner ? agentNodes(main, partner) : [])],
    slips: [...mainSlips(main, level), ...(partner ? partnerSlips(main, partner) : [])],
    points: pointsOf(main, partner),
    vocabulary: { labels: ELEMENT_NAMES, numbers: true, words: { left: /on the left/, right: /on the right/ } },
    printed: [main.change.before, main.change.after, atomsIn(main)].map(String),
    faults: partner ? stemFaults(question, main, partner) : [],
  };
};

/** A prompt for a half-equation names its two species in the order in which it runs. */
function halvesIn({ parts, stemText }: ReadQuestion): { main: Half; partner: Half | undefined } {
  const medium: Medium = /alkaline/.test(`${stemText} ${parts[0]?.proseText ?? ''}`) ? 'alkali' : 'acid';
  const asked = parts.flatMap((part) => pairIn(part));
  const [first, ...rest] = asked.map(([subject, product]) => halfOf(subject, product, medium));
  const last = rest.at(-1);
  if (!first) throw new Unreadable('which half-equation is asked for');
  return last ? { main: last, partner: first } : { main: first, partner: undefined };
}

/** The stem says what becomes of the oxidising agent, then of the reducing agent; it may name both before. */
function stemFaults({ stem }: ReadQuestion, main: Half, partner: Half): string[] {
  const [ox, red] = main.isReduction ? [main, partner] : [partner, main];
  const told = everyToken(stem.flat(), 'species').map(({ species }) => species.key);
  const changes = [ox.subject, ox.product, red.subject, red.product];
  const expected = told.length > changes.length ? [ox.subject, red.subject, ...changes] : changes;
  return told.join(' ') === expected.join(' ') ? [] : [`the stem tells of ${told.join(', ')}, not of ${expected.join(', ')}`];
}

function pairIn({ prose, options, proseText }: ReadPart): [string, string][] {
  const [subject, product] = everyToken(prose[0] ?? [], 'species').map(({ species }) => species.key);
  const isHalf = options.length > 0 || /half-equation/.test(proseText);
  return isHalf && subject !== undefined && product !== undefined ? [[subject, product]] : [];
}

const plain = (value: Fraction): Answer => ({ kind: 'number', value, unit: '' });
const valueAt = (answers: Answers, id: string): Fraction => {
  const answer = answers.get(id);
  return answer?.kind === 'number' ? answer.value : Fraction.zero;
};
const makeUpAt = (answers: Answers, id: string): MakeUp => {
  const answer = answers.get(id);
  const word = answer?.kind === 'said' ? answer.marks[0] : undefined;
  return word === 'word oxygen gas' ? 'oxygen gas' : word === 'word hydrogen ions' ? 'hydrogen ions' : 'right';
};
const makeUp = (id: string, how: MakeUp): Node => ({
  id,
  needs: [],
  figures: 'whole',
  work: () => ({ kind: 'said', marks: [`word ${how}`] }),
});
const equation = (half: Half, how: MakeUp, perUnit: Fraction, placing?: 'wrong side' | 'none'): Answer => ({
  kind: 'equation',
  sides: writtenHalf(half, how, perUnit, placing),
});

function partnerNodes(partner: Half): Node[] {
  const one = partner.change.before.subtract(partner.change.after).size().divide(partner.units);
  const written: Written = (answers, how) =>
    how === 'one atom'
      ? equation(partner, makeUpAt(answers, 'partner-makeup'), one)
      : equation(partner, makeUpAt(answers, 'partner-makeup'), partner.perUnit, how === 'right' ? undefined : how);
  return [
    makeUp('partner-makeup', 'right'),
    charge('partner-charge', ['partner-makeup'], written),
    {
      id: 'partner',
      needs: ['partner-makeup', 'partner-charge'],
      figures: 'whole',
      work: (answers) => written(answers, placedAt(answers, 'partner-charge')),
    },
  ];
}

/** How the electrons are written: as they should be, turned, left out, or those of one atom alone. */
type Placed = 'right' | 'wrong side' | 'none' | 'one atom';
type Written = (answers: Answers, placed: Placed) => Answer;

const said = (...marks: string[]): Answer => ({ kind: 'said', marks });
const placed = (how: Placed): Answer => said(`word ${how}`);
const placedAt = (answers: Answers, id: string): Placed => {
  const answer = answers.get(id);
  const word = answer?.kind === 'said' ? answer.marks[0] : undefined;
  return (['wrong side', 'none', 'one atom'] as const).find((each) => word === `word ${each}`) ?? 'right';
};

/** Whether both sides bear the same charge is looked at by itself, whatever has become of the atoms. */
const charge = (id: string, needs: readonly string[], written: Written): Node => ({
  id,
  needs,
  figures: 'whole',
  work: (answers) => {
    const answer = written(answers, 'right');
    const sum = (terms: Side) =>
      [...terms].reduce((total, [key, amount]) => total.add(chargeOf(key).multiply(amount)), Fraction.zero);
    const isEven = answer.kind === 'equation' && sum(answer.sides.left).equals(sum(answer.sides.right));
    return isEven ? placed('right') : said('word uneven');
  },
});

function mainNodes(main: Half): Node[] {
  const { change, subject } = main;
  const step = change.before.subtract(change.after).size();
  const written: Written = (answers, how) =>
    equation(
      main,
      makeUpAt(answers, 'makeup'),
      valueAt(answers, 'electrons'),
      how === 'wrong side' || how === 'none' ? how : undefined,
    );
  return [
    { id: 'change', needs: [], figures: { places: 0 }, left: [], work: () => plain(step) },
    {
      id: 'electrons',
      needs: ['change'],
      figures: { places: 0 },
      left: [`species ${subject}`],
      work: (answers) => plain(atomsIn(main).multiply(valueAt(answers, 'change'))),
    },
    makeUp('makeup', 'right'),
    charge('charge', ['makeup', 'electrons'], written),
    {
      id: 'half',
      needs: ['makeup', 'electrons', 'charge'],
      figures: 'whole',
      work: (answers) => written(answers, placedAt(answers, 'charge')),
    },
  ];
}

function agentNodes(main: Half, partner: Half): Node[] {
  const oxidant = main.isReduction ? main : partner;
  return [
    { id: 'falls', needs: [], figures: 'whole', work: () => ({ kind: 'said', marks: [elementMark(oxidant.change.element)] }) },
    { id: 'agent', needs: [], figures: 'whole', work: () => ({ kind: 'species', key: oxidant.subject }) },
  ];
}

function mainSlips(main: Half, level: string): Slip[] {
  const { subject, product, medium } = main;
  const charges = chargeOf(subject).subtract(chargeOf(product)).size();
  // Of the charges or the oxygens no oxidation number is got, so its change is not earned either.
  const instead = ['RX-ION-CHARGE-CHANGE', 'RX-OXIDE-TRANSFER'];
  const electrons = (id: string, work: (answers: Answers) => Fraction): Slip => ({
    id,
    at: 'electrons',
    ...(instead.includes(id) ? { skips: ['change'] } : {}),
    work: (answers) => plain(work(answers)),
  });
  return [
    { id: 'HE-ELECTRON-SIDE', at: 'charge', work: () => placed('wrong side') },
    // At stretch their number is not asked for before, and what is not written shows no count.
    level === 'core'
      ? { id: 'HE-ELECTRONS-MISSING', at: 'charge', work: () => placed('none') }
      : electrons('HE-ELECTRONS-MISSING', () => Fraction.zero),
    electrons('RX-ION-CHARGE-CHANGE', () => charges),
    electrons('HE-ELECTRONS-PER-ATOM', (answers) => valueAt(answers, 'change')),
    electrons('RX-OXIDE-TRANSFER', () => oxideElectrons(main)),
    { id: 'ON-PEROXIDE', at: 'change', tells: ['number \u22122'], work: () => plain(Fraction.of(2)) },
    ...makeUpSlips('makeup', medium),
  ];
}

function makeUpSlips(at: string, medium: Medium): Slip[] {
  const slip = (id: string, how: MakeUp): Slip => ({ id, at, work: () => ({ kind: 'said', marks: [`word ${how}`] }) });
  return medium === 'acid' ? [slip('HE-OXYGEN-GAS', 'oxygen gas')] : [slip('HE-H-IN-ALKALI', 'hydrogen ions')];
}

function partnerSlips(main: Half, partner: Half): Slip[] {
  return [
    { id: 'HE-ELECTRON-SIDE', at: 'partner-charge', work: () => placed('wrong side') },
    { id: 'HE-ELECTRONS-PER-ATOM', at: 'partner-charge', work: () => placed('one atom') },
    ...makeUpSlips('partner-makeup', partner.medium),
    { id: 'RX-AGENT-SWAP', at: 'agent', work: () => ({ kind: 'species', key: (main.isReduction ? partner : main).subject }) },
  ];
}

function pointsOf(main: Half, partner: Half | undefined): Record<string, PointRule> {
  const oxidant = main.isReduction || !partner ? main : partner;
  const signed = (value: Fraction) => numberMark(writeNumber(value, 'whole', true), '');
  const { change, perUnit, subject } = main;
  const atoms = atomsIn(main);
  const several = atoms.equals(Fraction.one) ? [] : [`number ${atoms}`];
  const falls = oxidant.change;
  // What is oxidised tells as well which of the two is the oxidising agent.
  const reductant = oxidant === main ? partner : main;
  const up = reductant?.change;
  const rises =
    reductant && up?.before.isWhole() && up.after.isWhole()
      ? [
          elementMark(up.element),
          signed(up.before),
          signed(up.after),
          `species ${reductant.subject}`,
          `species ${oxidant.subject}`,
        ]
      : undefined;
  return {
    ...(partner
      ? {
          'partner-makeup:method': { earns: makeUpMarks(partner), ...noAcid(partner) },
          'partner-charge:value': { earns: electronMarks(partner) },
        }
      : {}),
    'change:method': {
      earns: [
        elementMark(change.element),
        signed(change.before),
        signed(change.after),
        `number ${change.before.subtract(change.after).size()}`,
      ],
    },
    'electrons:value': { earns: [...several, elementMark(change.element), `number ${perUnit}`, `species ${subject}`] },
    'makeup:method': { earns: makeUpMarks(main), ...noAcid(main) },
    'charge:value': { earns: electronMarks(main) },
    'falls:statement': {
      earns: [elementMark(falls.element), signed(falls.before), signed(falls.after)],
      ...(rises ? { also: [rises] } : {}),
    },
    'agent:statement': { earns: [`species ${oxidant.subject}`], named: oxidant.subject },
  };
}

/** In alkali hydrogen ions are refused. */
const noAcid = ({ medium }: Half): Partial<PointRule> => (medium === 'alkali' ? { not: [['species H^+']] } : {});

const counted = (amount: Fraction, key: string): string[] =>
  amount.equals(Fraction.one) ? [`species ${key}`] : [`number ${amount}`, `species ${key}`];

/** `4 H⁺ on the left, 2 H₂O on the right`: what is put in beside the two species. */
function makeUpMarks({ skeleton, subject, product }: Half): string[] {
  const put = (own: Side, where: string) => {
    const terms = [...own].filter(([key]) => ['H^+', 'OH^-', 'H2O'].includes(key) && key !== subject && key !== product);
    return terms.length === 0 ? [] : [...terms.flatMap(([key, amount]) => counted(amount, key)), `word ${where}`];
  };
  return [...put(skeleton.left, 'left'), ...put(skeleton.right, 'right')];
}

function electronMarks({ perUnit, units, isReduction }: Half): string[] {
  return [...counted(perUnit.multiply(units), 'e^-'), `word ${isReduction ? 'left' : 'right'}`];
}
