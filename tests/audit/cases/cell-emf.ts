import type { Couple } from '../chemistry/couples.ts';
import { combined } from '../chemistry/half-equations.ts';
import { numberMark } from '../engine/answer.ts';
import { type Answers, type Case, type CaseReader, type Node, type PointRule, type Slip, Unreadable } from '../engine/case.ts';
import { writeNumber } from '../exact/printed-number.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import { everyToken } from '../reading/tokens.ts';
import { equationSlips } from './equation-slips.ts';
import { potentialSlips, volts } from './potential-slips.ts';
import { couplesIn, figuresIn } from './potentials.ts';

/** The two half-cells that are joined, first as printed. */
type Joined = readonly [Couple, Couple];

/** A cell of two half-cells, from the table of potentials and the labels of those that are joined. */
export const cellEmf: CaseReader = ({ question }) => {
  const joined = joinedIn(question);
  const [negative, positive] = [...joined].sort((a, b) => a.potential.compare(b.potential)) as [Couple, Couple];
  return {
    nodes: nodesOf(joined, negative, positive),
    slips: slipsOf(joined, negative, positive),
    points: pointsOf(negative, positive),
    vocabulary: {
      labels: /half-cell ([A-Z])\b/,
      words: {
        wire: /through the (?:wire|external circuit)/,
        bridge: /through the salt bridge, or through the solutions/,
        less: /less positive(?: \(more negative\))?/,
        more: /more positive/,
      },
    },
    printed: figuresIn(question),
    faults: [...faultsOf(question), ...figureFaults(question, joined)],
  };
};

function joinedIn(question: ReadQuestion): Joined {
  const couples = couplesIn(question);
  const [, one, other] = /\b([A-Z]) and ([A-Z])\b/.exec(`${question.stemText} ${question.parts[0]?.proseText ?? ''}`) ?? [];
  const [first, second] = [one, other].map((label) => couples.find((couple) => couple.label === label));
  if (!first || !second) throw new Unreadable('which two half-cells are joined');
  return [first, second];
}

/** Which half-cell is oxidised, as one who has got so far would have it. */
function runsIn(answers: Answers, [first, second]: Joined): { readonly oxidised: Couple; readonly reduced: Couple } {
  const direction = answers.get('direction');
  const isFirst = direction?.kind === 'said' && direction.marks[0] === `label ${first.label}`;
  return isFirst ? { oxidised: first, reduced: second } : { oxidised: second, reduced: first };
}

const said = (...marks: string[]) => ({ kind: 'said', marks }) as const;
const label = (couple: Couple) => `label ${couple.label}`;

function nodesOf(joined: Joined, negative: Couple, positive: Couple): Node[] {
  const words = (id: string, work: (oxidised: Couple, reduced: Couple) => readonly string[]): Node => ({
    id,
    needs: ['direction'],
    figures: 'whole',
    work: (answers) => {
      const { oxidised, reduced } = runsIn(answers, joined);
      return said(...work(oxidised, reduced));
    },
  });
  const value = ({ potential }: Couple) => numberMark(writeNumber(potential, { places: 2 }, true), 'V');
  return [
    {
      id: 'emf',
      needs: [],
      figures: { places: 2 },
      signed: true,
      left: ['symbol E°cell'],
      work: () => volts(positive.potential.subtract(negative.potential)),
    },
    { id: 'direction', needs: [], figures: 'whole', work: () => said(label(negative)) },
    {
      id: 'equation',
      needs: ['direction'],
      figures: 'whole',
      work: (answers) => {
        const { oxidised, reduced } = runsIn(answers, joined);
        return { kind: 'equation', sides: combined(reduced.half, oxidised.half) };
      },
    },
    words('flow', (oxidised, reduced) => [label(oxidised), label(reduced), 'word wire']),
    words('why', (oxidised, reduced) =>
      oxidised === negative ? [label(oxidised), 'word less', value(oxidised), value(reduced)] : [label(oxidised), 'word more'],
    ),
    words('bridge', (_, reduced) => [label(reduced)]),
  ];
}

function pointsOf(negative: Couple, positive: Couple): Record<string, PointRule> {
  const reactants = [`species ${negative.reduced}`, `species ${positive.oxidised}`];
  return {
    'direction:statement': { earns: reactants },
    'flow:statement': { earns: [label(negative), label(positive), 'word wire'], also: [['word wire'], ['word wire']] },
    'why:statement': {
      earns: [label(negative), 'word less', reactants[0]!],
      also: [[reactants[0]!, `species ${positive.reduced}`]],
    },
    'bridge:statement': { earns: [label(positive)] },
  };
}

function slipsOf(joined: Joined, negative: Couple, positive: Couple): Slip[] {
  return [
    ...potentialSlips('emf', positive, negative),
    { id: 'EP-STRENGTH-REVERSED', at: 'direction', work: () => said(label(positive)) },
    { id: 'EP-LEFT-IS-ANODE', at: 'direction', work: () => said(label(joined[0])) },
    ...equationSlips('equation', (answers) => {
      const { oxidised, reduced } = runsIn(answers, joined);
      return { reduced: reduced.half, oxidised: oxidised.half };
    }),
    { id: 'EP-ELECTRONS-IN-SOLUTION', at: 'flow', work: () => said('word bridge') },
    { id: 'EP-BRIDGE-DIRECTION', at: 'bridge', work: (answers) => said(label(runsIn(answers, joined).oxidised)) },
  ];
}

/** What stands in each half-cell is what its half-equation has dissolved. */
function faultsOf(question: ReadQuestion): Case['faults'] {
  const { tables } = question;
  const contents = tables.flatMap(({ rows }) => rows).filter((cells) => cells.length > 2);
  return couplesIn(question).flatMap((couple) => {
    const cells = contents.find(([first]) => first?.[0]?.kind === 'words' && first[0].text.trim() === couple.label) ?? [];
    const told = (cells[1] ?? []).flatMap((token) => (token.kind === 'species' ? [token.species.key] : []));
    const dissolved = [...couple.half.species.values()].filter(({ state }) => state === 'aq').map(({ key }) => key);
    const missing = dissolved.filter((key) => key !== 'e^-' && !told.includes(key));
    return [
      ...missing.map((key) => `half-cell ${couple.label} does not say that ${key} is in it`),
      ...told
        .filter((key) => !dissolved.includes(key))
        .map((key) => `half-cell ${couple.label} holds ${key}, which its half-equation does not`),
    ];
  });
}

/** A drawing of the cell letters each joined half-cell with what is dissolved in it, and nothing else. */
function figureFaults({ figures }: ReadQuestion, joined: Joined): string[] {
  const drawn = everyToken(figures.labels, 'species').map(({ species }) => species.key);
  const dissolved = joined.flatMap(({ half }) => dissolvedIn(half));
  const [found, expected] = [drawn, dissolved].map((keys) => [...keys].sort().join(' '));
  return drawn.length > 0 && found !== expected ? [`the drawing shows ${found}, the half-cells hold ${expected}`] : [];
}

const dissolvedIn = ({ species }: Couple['half']): string[] =>
  [...species.values()].filter(({ state, key }) => state === 'aq' && key !== 'e^-').map(({ key }) => key);
