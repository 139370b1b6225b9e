import { combined } from '../chemistry/half-equations.ts';
import { speciesOf } from '../chemistry/sides.ts';
import { type Answer, numberMark } from '../engine/answer.ts';
import { type Answers, type CaseReader, type Node, type PointRule, type Slip, Unreadable } from '../engine/case.ts';
import { workedAsPrinted } from '../engine/chain.ts';
import { figuresEnough } from '../engine/figures-enough.ts';
import { Fraction } from '../exact/fraction.ts';
import { writeNumber } from '../exact/printed-number.ts';
import { valueAt } from './agents.ts';
import { equationSlips } from './equation-slips.ts';
import { figuresIn } from './potentials.ts';
import { type Reagents, ratioIn, reagentsIn } from './reagents.ts';

const THOUSAND = Fraction.of(1000);

/** Reacting amounts: equation, ratio, the known amount, the amount found, and the mass or volume that holds it. */
export const moleRatio: CaseReader = ({ question }) => {
  const reagents = reagentsIn(question);
  const salts = [reagents.knownSalt, reagents.foundSalt].flatMap((salt) =>
    salt === undefined ? [] : [...speciesOf(salt).atoms.values()],
  );
  const nodes = nodesOf(reagents);
  return {
    nodes,
    slips: slipsOf(reagents),
    points: pointsOf(reagents, nodes),
    vocabulary: { numbers: true },
    printed: [...figuresIn(question), ...salts.map(String)],
    faults: [],
  };
};

const isAsked = ({ foundSalt, foundConcentration }: Reagents): boolean =>
  foundSalt !== undefined || foundConcentration !== undefined;

/** g mol⁻¹, from the printed relative atomic masses. */
function molarMass({ masses }: Reagents, salt: string): Fraction {
  return [...speciesOf(salt).atoms].reduce((sum, [element, atoms]) => {
    const mass = masses.get(element);
    if (!mass) throw new Unreadable(`the relative atomic mass of ${element}`);
    return sum.add(mass.value.multiply(Fraction.of(atoms)));
  }, Fraction.zero);
}

/** Molecules of water of crystallisation, after the raised dot. */
const waterIn = (salt: string): number =>
  Number(
    /·(\d*)H2O$/
      .exec(salt)
      ?.slice(1)
      .map((digits) => digits || '1')[0] ?? 0,
  );

const mol = (value: Fraction): Answer => ({ kind: 'number', value, unit: 'mol' });

function ratioAt(answers: Answers): { left: Fraction; right: Fraction } {
  const ratio = answers.get('ratio');
  return ratio?.kind === 'ratio' ? ratio : { left: Fraction.one, right: Fraction.one };
}

function nodesOf(reagents: Reagents): Node[] {
  const { known, found, knownSalt, halves, equation } = reagents;
  const plain = (id: string, needs: readonly string[], work: Node['work']): Node => ({ id, needs, figures: 'whole', work });
  return [
    plain('reaction', [], () => ({ kind: 'said', marks: [] })),
    ...(halves
      ? [plain('equation', ['reaction'], () => ({ kind: 'equation', sides: combined(halves[0].half, halves[1].half) }))]
      : []),
    {
      ...plain('ratio', halves ? ['equation'] : ['printed equation'], (answers) => {
        const own = answers.get('equation');
        return { kind: 'ratio', ...ratioIn(own?.kind === 'equation' ? own.sides : equation, found, known) };
      }),
      left: [`species ${found}`, `species ${known}`],
    },
    ...(knownSalt === undefined ? [] : [molarNode(reagents, 'molar-known', knownSalt)]),
    amountNode(reagents),
    {
      id: 'found-amount',
      needs: ['amount', 'ratio'],
      figures: { significant: isAsked(reagents) ? 4 : 3 },
      left: ['symbol n', `species ${found}`],
      work: (answers) => mol(valueAt(answers, 'amount').multiply(ratioAt(answers).left).divide(ratioAt(answers).right)),
    },
    ...askedNodes(reagents),
  ];
}

function molarNode(reagents: Reagents, id: string, salt: string): Node {
  return {
    id,
    needs: [],
    figures: { places: 1 },
    left: ['symbol M', `species ${salt}`],
    work: () => ({ kind: 'number', value: molarMass(reagents, salt), unit: 'g mol^-1' }),
  };
}

function amountNode({ known, knownSalt, mass, concentration, volume }: Reagents): Node {
  return {
    id: 'amount',
    needs: knownSalt === undefined ? ['c', 'V'] : ['molar-known'],
    figures: { significant: 4 },
    left: ['symbol n', `species ${known}`],
    work: (answers) => {
      if (mass) return mol(mass.value.divide(valueAt(answers, 'molar-known')));
      if (!concentration || !volume) throw new Unreadable('concentration and volume of what is known');
      return mol(concentration.value.multiply(volume.value).divide(THOUSAND));
    },
  };
}

function askedNodes(reagents: Reagents): Node[] {
  const { found, foundSalt, foundConcentration, volumeUnit } = reagents;
  if (foundSalt !== undefined) {
    const work = (answers: Answers): Answer => ({
      kind: 'number',
      value: valueAt(answers, 'found-amount').multiply(valueAt(answers, 'molar-found')),
      unit: 'g',
    });
    const needs = ['found-amount', 'molar-found'];
    return [
      molarNode(reagents, 'molar-found', foundSalt),
      { id: 'asked', needs, figures: { significant: 3 }, left: ['symbol m', `species ${foundSalt}`], work },
    ];
  }
  if (!foundConcentration) return [];
  const work = (answers: Answers): Answer => ({
    kind: 'number',
    value: valueAt(answers, 'found-amount').multiply(THOUSAND).divide(foundConcentration.value),
    unit: volumeUnit,
  });
  return [{ id: 'asked', needs: ['found-amount'], figures: { significant: 3 }, left: ['symbol V', `species ${found}`], work }];
}

function slipsOf(reagents: Reagents): Slip[] {
  const { mass, concentration, volume, volumeUnit, knownSalt, foundSalt, halves, found, known, equation } = reagents;
  const right = ratioIn(equation, found, known);
  const turned: Answer = { kind: 'ratio', left: right.right, right: right.left };
  return [
    {
      id: 'TI-RATIO-ONE',
      at: 'ratio',
      tells: ['ratio 1 : 1'],
      work: () => ({ kind: 'ratio', left: Fraction.one, right: Fraction.one }),
    },
    { id: 'TI-RATIO-INVERTED', at: 'ratio', work: () => turned },
    ...(concentration && volume
      ? [
          {
            id: 'TI-CM3-AS-DM3',
            at: 'amount',
            tells: [`unit ${volumeUnit}`, 'number 1000'],
            work: () => mol(concentration.value.multiply(volume.value)),
          },
        ]
      : []),
    ...(mass
      ? [
          {
            id: 'TI-MASS-RATIO',
            at: 'asked',
            skips: ['found-amount', 'molar-found'],
            work: (answers: Answers): Answer => ({
              kind: 'number',
              value: mass.value.multiply(ratioAt(answers).left).divide(ratioAt(answers).right),
              unit: 'g',
            }),
          },
        ]
      : []),
    ...oneAtom(reagents, 'molar-known', knownSalt),
    ...oneAtom(reagents, 'molar-found', foundSalt),
    ...anhydrous(reagents, 'molar-known', knownSalt),
    ...anhydrous(reagents, 'molar-found', foundSalt),
    ...(halves ? equationSlips('equation', () => ({ reduced: halves[0].half, oxidised: halves[1].half })) : []),
  ];
}

/** The number of the periodic table for an element whose molecules have two atoms. */
function oneAtom({ masses }: Reagents, at: string, salt: string | undefined): Slip[] {
  const [only, ...others] = salt === undefined ? [] : speciesOf(salt).atoms;
  const mass = only && masses.get(only[0]);
  if (!mass || others.length > 0 || only[1] === 1) return [];
  return [{ id: 'TI-ONE-ATOM-M', at, work: () => ({ kind: 'number', value: mass.value, unit: 'g mol^-1' }) }];
}

/** The molar mass without the water of crystallisation. */
function anhydrous(reagents: Reagents, at: string, salt: string | undefined): Slip[] {
  const waters = salt === undefined ? 0 : waterIn(salt);
  if (salt === undefined || waters === 0) return [];
  const value = molarMass(reagents, salt).subtract(molarMass(reagents, 'H2O').multiply(Fraction.of(waters)));
  return [{ id: 'TI-ANHYDROUS-M', at, work: () => ({ kind: 'number', value, unit: 'g mol^-1' }) }];
}

function pointsOf(reagents: Reagents, nodes: readonly Node[]): Record<string, PointRule> {
  const { known, found, halves } = reagents;
  const answers = workedAsPrinted(nodes);
  const printed = (id: string): string[] => {
    const [node, answer] = [nodes.find((each) => each.id === id), answers.get(id)];
    return node && answer?.kind === 'number' ? [numberMark(writeNumber(answer.value, node.figures), answer.unit)] : [];
  };
  const { left, right } = ratioAt(answers);
  const [oxidant, reductant] = halves ?? [];
  return {
    ...(oxidant && reductant
      ? {
          'reaction:method': {
            earns: [oxidant.oxidised, reductant.reduced, oxidant.reduced, reductant.oxidised].map((key) => `species ${key}`),
          },
        }
      : {}),
    'ratio:value': {
      earns: [`species ${found}`, `species ${known}`, `ratio ${left} : ${right}`],
      also: [[`ratio ${right} : ${left}`]],
    },
    'molar-known:method': { earns: printed('molar-known') },
    'molar-found:method': { earns: printed('molar-found') },
    'amount:value': { earns: printed('amount'), also: figuresEnough(valueAt(answers, 'amount'), 'mol') },
    'found-amount:method': { earns: [`species ${found}`, ...printed('found-amount')] },
    'found-amount:value': { earns: printed('found-amount') },
    'asked:value': { earns: printed('asked') },
  };
}
