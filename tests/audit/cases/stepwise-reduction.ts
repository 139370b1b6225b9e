import { coloursOf } from '../chemistry/colours.ts';
import { combined } from '../chemistry/half-equations.ts';
import { oxidationNumber } from '../chemistry/oxidation-number.ts';
import { added, cancelled, count, inLowestTerms, type Sides, times } from '../chemistry/sides.ts';
import type { Answer } from '../engine/answer.ts';
import { numberMark } from '../engine/answer.ts';
import type { Answers, Case, CaseReader, Node, PointRule, Slip } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';
import { writeNumber } from '../exact/printed-number.ts';
import { equationSlips } from './equation-slips.ts';
import { type Ladder, ladderIn, type Rung } from './ladder.ts';
import { potentialSlips, volts } from './potential-slips.ts';
import { figuresIn } from './potentials.ts';

/** An element's states and an excess of one reagent: how far it goes follows from the printed potentials. */
export const stepwiseReduction: CaseReader = ({ question, steps, level }) => {
  const ladder = ladderIn(question);
  return {
    nodes: nodesOf(ladder),
    slips: slipsOf(ladder),
    points: pointsOf(ladder, level),
    vocabulary: {
      colours: true,
      words: {
        none: /nothing stops it/,
        infeasible: /not feasible/,
        positive: /is positive/,
        negative: /\bnegative\b/,
        'not reduce': /is not reduced|cannot reduce/,
        'not oxidise': /is not oxidised|cannot oxidise/,
        reduce: /\breduced?\b/,
        oxidise: /\boxidised?\b/,
      },
    },
    together: ['number-start', 'number-final'],
    printed: figuresIn(question),
    faults: faultsOf(ladder, steps.has('colours')),
  };
};

const emf = ({ reagent, isReduction }: Ladder, { couple }: Rung): Fraction => {
  const difference = couple.potential.subtract(reagent.potential);
  return isReduction ? difference : difference.negative();
};

const said = (marks: readonly string[]): Answer => ({ kind: 'said', marks });

function finalIn(answers: Answers): string {
  const final = answers.get('final');
  return final?.kind === 'species' ? final.key : '';
}

/** Species from the start as far as one, and the step that comes after it, by one who believes that it goes so far. */
function reached({ rungs, next, start }: Ladder, key: string): string[] {
  const all = [start, ...[...rungs, next].map(({ to }) => to)];
  return all.slice(0, all.indexOf(key) + 1);
}
const after = ({ rungs, next }: Ladder, key: string): Rung | undefined => [...rungs, next].find(({ from }) => from === key);

function nodesOf(ladder: Ladder): Node[] {
  const { rungs, reagent, isReduction, start, element } = ladder;
  const plain = (id: string, needs: readonly string[], work: Node['work'], signed = false): Node => ({
    id,
    needs,
    figures: 'whole',
    signed,
    work,
  });
  const potential = (id: string, needs: readonly string[], work: Node['work']): Node => ({
    id,
    needs,
    figures: { places: 2 },
    signed: true,
    left: ['symbol E°cell'],
    work,
  });
  const number = (key: string): Answer => ({ kind: 'number', value: oxidationNumber(key, element) ?? Fraction.zero, unit: '' });
  return [
    ...rungs.map((rung, at) => potential(`emf-${at + 1}`, [], () => volts(emf(ladder, rung)))),
    plain('species', [], () => said([])),
    plain('equation', ['species'], () => ({ kind: 'equation', sides: stepOf(ladder, rungs[0]!) })),
    plain('final', [], () => ({ kind: 'species', key: rungs.at(-1)!.to })),
    potential('stop-emf', ['final'], (answers) => {
      const rung = after(ladder, finalIn(answers));
      return rung ? volts(emf(ladder, rung)) : said([]);
    }),
    plain('stop', ['final'], (answers) => {
      const rung = after(ladder, finalIn(answers));
      if (!rung) return said(['word none']);
      const stops = emf(ladder, rung).side() < 0;
      const verb = isReduction ? 'reduce' : 'oxidise';
      return said([
        `species ${rung.from}`,
        stops ? `word not ${verb}` : `word ${verb}`,
        `species ${isReduction ? reagent.reduced : reagent.oxidised}`,
        stops ? 'word negative' : 'word positive',
      ]);
    }),
    plain('overall-species', ['final'], (answers) => said([`species ${finalIn(answers)}`])),
    plain('overall', ['final', 'overall-species'], (answers) => ({
      kind: 'equation',
      sides: overallTo(ladder, finalIn(answers)),
    })),
    plain('colours', ['final'], (answers) => said(coloursAlong(reached(ladder, finalIn(answers))))),
    plain('colours-between', ['colours'], (answers) => {
      const seen = answers.get('colours');
      return said(seen?.kind === 'said' ? seen.marks.slice(1, -1).slice(0, rungs.length - 1) : []);
    }),
    plain('number-start', [], () => number(start), true),
    plain('number-final', ['final'], (answers) => number(finalIn(answers)), true),
  ];
}

function halves({ reagent, isReduction }: Ladder, { couple }: Rung): { readonly reduced: Sides; readonly oxidised: Sides } {
  return isReduction ? { reduced: couple.half, oxidised: reagent.half } : { reduced: reagent.half, oxidised: couple.half };
}

function stepOf(ladder: Ladder, rung: Rung): Sides {
  const { reduced, oxidised } = halves(ladder, rung);
  return combined(reduced, oxidised);
}

/** All steps as far as a species: each taken so often that it uses up what the one before has made. */
function overallTo(ladder: Ladder, key: string): Sides {
  let sum: Sides = { left: new Map(), right: new Map() };
  let made = Fraction.one;
  for (const rung of [...ladder.rungs, ladder.next]) {
    const step = stepOf(ladder, rung);
    const turns = made.divide(count(step.left, rung.from));
    sum = added(sum, times(step, turns));
    made = turns.multiply(count(step.right, rung.to));
    if (rung.to === key) break;
  }
  return inLowestTerms(cancelled(sum));
}

/** A species whose colour the auditor does not know leaves no mark; a metal that falls out leaves a colourless solution. */
function coloursAlong(keys: readonly string[]): string[] {
  return keys.flatMap((key) => (/^[A-Z][a-z]?$/.test(key) ? ['colour colourless'] : colourMark(key)));
}
const colourMark = (key: string): string[] => {
  const words = coloursOf(key);
  return words ? [`colour ${words.join('|')}`] : [];
};

function slipsOf(ladder: Ladder): Slip[] {
  const { rungs, next, start } = ladder;
  const first = rungs[0]!;
  const { reduced, oxidised } = halves(ladder, first);
  const [gains, gives] = ladder.isReduction ? [first.couple, ladder.reagent] : [ladder.reagent, first.couple];
  return [
    ...potentialSlips('emf-1', gains, gives),
    ...equationSlips('equation', () => ({ reduced, oxidised })),
    {
      id: 'LD-STOPS-EARLY',
      at: 'final',
      tells: [`species ${first.to}`],
      // The later steps are not worked by one who does not see them.
      skips: rungs.slice(1).map((_, index) => `emf-${index + 2}`),
      work: () => ({ kind: 'species', key: first.to }),
    },
    { id: 'EP-STRENGTH-REVERSED', at: 'final', work: () => ({ kind: 'species', key: start }) },
    // Nothing after that stands in the list, so that there is no value to give.
    { id: 'LD-GOES-TOO-FAR', at: 'final', skips: ['stop-emf'], work: () => ({ kind: 'species', key: next.to }) },
    {
      id: 'LD-COLOURS-SWAPPED',
      at: rungs.length > 2 ? 'colours-between' : 'colours',
      work: (answers) => {
        const seen = coloursAlong(swapped(reached(ladder, finalIn(answers))));
        return said(rungs.length > 2 ? seen.slice(1, -1) : seen);
      },
    },
    {
      id: 'ON-ION-CHARGE',
      at: 'number-start',
      work: () => ({ kind: 'number', value: chargeOf(start), unit: '' }),
    },
  ];
}

const swapped = ([first, second, third, ...rest]: readonly string[]): string[] =>
  third === undefined ? [first!, second!] : [first!, third, second!, ...rest];

function chargeOf(key: string): Fraction {
  const [, size = '0', sign] = /\^(\d*)([+-])$/.exec(key) ?? [];
  return Fraction.of(Number(size || '1') * (sign === '-' ? -1 : 1));
}

function pointsOf(ladder: Ladder, level: string): Record<string, PointRule> {
  const { start, rungs, next, reagent, isReduction, element } = ladder;
  const final = rungs.at(-1)!.to;
  const [reacts, product] = isReduction ? [reagent.reduced, reagent.oxidised] : [reagent.oxidised, reagent.reduced];
  const species = (...keys: string[]) => keys.map((key) => `species ${key}`);
  const value = (rung: Rung) => numberMark(writeNumber(emf(ladder, rung), { places: 2 }, true), 'V');
  const number = (key: string) => numberMark(writeNumber(oxidationNumber(key, element) ?? Fraction.zero, 'whole', true), '');
  const all = [start, ...rungs.map(({ to }) => to)];
  const [first, last] = [colourMark(start), colourMark(final)];
  const between = coloursAlong(all.slice(1, -1));
  const isMixed = all.some(
    (key, at) => coloursOf(key)?.includes('yellow') && all[at + 1] !== undefined && coloursOf(all[at + 1]!)?.includes('blue'),
  );
  const shared = {
    ignore: isMixed ? [['colour green', 'colour yellow', 'colour blue']] : [],
    not: [['colour colourless']],
    families: all.map((key) => coloursOf(key) ?? []),
  };
  const verb = `word not ${isReduction ? 'reduce' : 'oxidise'}`;
  return {
    ...(level === 'stretch'
      ? Object.fromEntries(
          rungs.map((rung, at) => [`emf-${at + 1}:value`, { earns: [...species(rung.from, rung.to), value(rung)] }]),
        )
      : {}),
    'species:method': { earns: species(start, reacts, rungs[0]!.to, product) },
    'overall-species:method': { earns: species(start, reacts) },
    'final:statement': { earns: species(final), named: final },
    'stop-emf:value': { earns: [...species(next.from, next.to), value(next)] },
    'stop:statement': { earns: ['word negative', 'word infeasible', ...species(reacts), verb, ...species(next.from)] },
    'colours:statement': { earns: [...first, ...last], ...shared },
    'colours-between:method': { earns: between, ...shared },
    'number-start:value': { earns: [number(start), ...species(start)] },
    'number-final:value': { earns: [number(final), ...species(final)] },
  };
}

/** Each step is clearly feasible and the stop clearly not; what is asked to be seen can be seen. */
function faultsOf(ladder: Ladder, seesColours: boolean): Case['faults'] {
  const threshold = Fraction.of(1, 10);
  const { reagent, rungs, next } = ladder;
  const unclear = [...rungs.map((rung) => emf(ladder, rung)), emf(ladder, next).negative()].filter(
    (each) => each.compare(threshold) < 0,
  );
  const masking = [reagent.oxidised, reagent.reduced].filter((key) => {
    const state = reagent.half.species.get(key)?.state;
    return state === 'aq' && !(coloursOf(key) ?? []).includes('colourless');
  });
  return [
    ...unclear.map((each) => `a step of ${each} V is nearer to zero than 0.10 V`),
    ...(seesColours ? masking.map((key) => `${key} is coloured and hides what is asked`) : []),
  ];
}
