import { formsOf } from '../chemistry/couples.ts';
import { combined, electronsIn, factors, sumWithoutElectrons } from '../chemistry/half-equations.ts';
import { added, cancelled, count, type Sides, times, turnedRound } from '../chemistry/sides.ts';
import { type Answer, numberMark } from '../engine/answer.ts';
import { type Answers, type CaseReader, type Node, type PointRule, type Slip, Unreadable } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';
import { writeNumber } from '../exact/printed-number.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import { everyToken } from '../reading/tokens.ts';

/** A half-equation on the page, taken as a reduction. */
interface Half {
  readonly label: string;
  readonly sides: Sides;
  readonly oxidised: string;
  readonly reduced: string;
  readonly potential: Fraction | undefined;
  readonly electrons: Fraction;
}

interface Joining {
  readonly halves: readonly [Half, Half];
  readonly reduced: Half;
  readonly oxidised: Half;
  /** in printed order */
  readonly factors: readonly [Fraction, Fraction];
  readonly byPotential: boolean;
}

/** Two half-equations joined: factors, direction, the equation, the agent, electrons. */
export const combineHalves: CaseReader = ({ question }) => {
  const joining = joiningIn(question);
  return {
    nodes: nodesOf(joining),
    slips: slipsOf(joining),
    points: pointsOf(joining),
    vocabulary: { labels: /(?:half-equation |× )([A-Z])\b/, numbers: true, words: { more: /more positive/ } },
    printed: [...joining.factors, ...joining.halves.map(({ electrons }) => electrons), divisorOf(joining)].map(String),
    faults: [],
  };
};

function joiningIn(question: ReadQuestion): Joining {
  const halves = question.tables.flatMap(({ rows }) => rows).map(halfIn);
  const [one, two] = halves;
  if (!one || !two || halves.length !== 2) throw new Unreadable('the two half-equations');
  const byPotential = one.potential !== undefined && two.potential !== undefined;
  const named = everyToken(question.stem.flat(), 'species').map(({ species }) => species.key);
  const reduced = byPotential
    ? one.potential!.compare(two.potential!) > 0
      ? one
      : two
    : [one, two].find((half) => named.includes(half.oxidised) && named.includes((half === one ? two : one).reduced));
  if (!reduced) throw new Unreadable('which half-equation runs as a reduction');
  const oxidised = reduced === one ? two : one;
  const { forReduced, forOxidised } = factors(reduced.sides, oxidised.sides);
  return {
    halves: [one, two],
    reduced,
    oxidised,
    factors: reduced === one ? [forReduced, forOxidised] : [forOxidised, forReduced],
    byPotential,
  };
}

function halfIn(cells: ReadQuestion['tables'][number]['rows'][number]): Half {
  const [token] = everyToken(cells.flat(), 'equation');
  const [number] = everyToken(cells.at(-1) ?? [], 'number');
  const [first] = cells[0] ?? [];
  if (!token) throw new Unreadable('a half-equation of the table');
  const sides = electronsIn(token.equation).side() > 0 ? token.equation : turnedRound(token.equation);
  const forms = formsOf(sides);
  if (!forms) throw new Unreadable(`what changes in ${token.equation.text}`);
  return {
    ...forms,
    label: first?.kind === 'words' ? first.text.trim() : '',
    sides: { left: sides.left, right: sides.right },
    potential: number?.number.value,
    electrons: electronsIn(sides),
  };
}

const said = (...marks: string[]): Answer => ({ kind: 'said', marks });
const marksAt = (answers: Answers, id: string): readonly string[] => {
  const answer = answers.get(id);
  return answer?.kind === 'said' ? answer.marks : [];
};

function factorsSaid({ halves }: Joining, [one, two]: readonly [Fraction, Fraction]): Answer {
  return said(`number ${one}`, `label ${halves[0].label}`, `number ${two}`, `label ${halves[1].label}`);
}

function factorsAt(answers: Answers): [Fraction, Fraction] {
  const [one = 'number 1', , two = 'number 1'] = marksAt(answers, 'factors');
  return [one, two].map((mark) => Fraction.of(BigInt(mark.slice('number '.length)))) as [Fraction, Fraction];
}

/** What the equation is divided by once the scaled half-equations are added and tidied. */
function divisorOf({ reduced, oxidised }: Joining): Fraction {
  const { forReduced } = factors(reduced.sides, oxidised.sides);
  const whole = combined(reduced.sides, oxidised.sides);
  const kept = count(whole.left, reduced.oxidised);
  const scaled = count(reduced.sides.left, reduced.oxidised).multiply(forReduced);
  return kept.side() === 0 ? Fraction.one : scaled.divide(kept);
}

function nodesOf(joining: Joining): Node[] {
  const { halves, reduced, oxidised, byPotential } = joining;
  const node = (id: string, needs: readonly string[], work: Node['work']): Node => ({ id, needs, figures: 'whole', work });
  const runs = (answers: Answers, id: string) => {
    const up = halves.find(({ label }) => marksAt(answers, id)[0] === `label ${label}`) ?? reduced;
    return { up, down: up === halves[0] ? halves[1] : halves[0] };
  };
  return [
    node('direction', [], () => said(`label ${reduced.label}`)),
    node('agent', byPotential ? ['direction'] : [], (answers) => ({
      kind: 'species',
      key: (byPotential ? runs(answers, 'direction').up : reduced).oxidised,
    })),
    node('factors', [], () => factorsSaid(joining, joining.factors)),
    node('sides', byPotential ? ['direction'] : [], (answers) =>
      byPotential ? said(...marksAt(answers, 'direction')) : said(`label ${reduced.label}`),
    ),
    node('tidy', ['sides', 'factors'], (answers) => {
      const isMatched = factorsAt(answers).every((each, at) => each.equals(joining.factors[at]!));
      return said(isMatched && marksAt(answers, 'sides')[0] !== 'word neither' ? 'word tidy' : 'word electrons left');
    }),
    node('equation', ['sides', 'factors', 'tidy'], (answers) => {
      const [one, two] = factorsAt(answers);
      if (marksAt(answers, 'sides')[0] === 'word neither') {
        return { kind: 'equation', sides: cancelled(added(times(halves[0].sides, one), times(halves[1].sides, two))) };
      }
      const { up, down } = runs(answers, 'sides');
      const tidy = marksAt(answers, 'tidy')[0];
      if (tidy === 'word tidy') return { kind: 'equation', sides: combined(up.sides, down.sides) };
      const sum = sumWithoutElectrons(up.sides, down.sides, up === halves[0] ? one : two, up === halves[0] ? two : one);
      return { kind: 'equation', sides: tidy === 'word on both sides' ? sum : cancelled(sum) };
    }),
    {
      id: 'electrons',
      needs: [],
      figures: { places: 0 },
      left: [],
      work: () => ({
        kind: 'number',
        value: reduced.electrons.multiply(factors(reduced.sides, oxidised.sides).forReduced).divide(divisorOf(joining)),
        unit: '',
      }),
    },
  ];
}

function slipsOf(joining: Joining): Slip[] {
  const { halves, reduced, oxidised } = joining;
  const plain = (value: Fraction): Answer => ({ kind: 'number', value, unit: '' });
  const [least] = [reduced.electrons, oxidised.electrons].sort((a, b) => a.compare(b));
  const slip = (id: string, at: string, work: () => Answer): Slip => ({ id, at, work });
  return [
    slip('HE-ADD-UNSCALED', 'factors', () => factorsSaid(joining, [Fraction.one, Fraction.one])),
    slip('HE-SCALE-OWN', 'factors', () => factorsSaid(joining, [halves[0].electrons, halves[1].electrons])),
    slip('HE-H-NOT-CANCELLED', 'tidy', () => said('word on both sides')),
    // Electrons on both sides of one arrow, or twice on one: the sum is not tidy, whatever the factors were.
    { ...slip('HE-NOT-REVERSED', 'sides', () => said('word neither')), skips: ['tidy'] },
    slip('EP-STRENGTH-REVERSED', 'direction', () => said(`label ${oxidised.label}`)),
    slip('RX-COEFFICIENT-ELECTRONS', 'electrons', () =>
      plain(count(combined(reduced.sides, oxidised.sides).left, oxidised.reduced)),
    ),
    slip('EP-N-OF-ONE-HALF', 'electrons', () => plain(least!)),
    slip('RX-AGENT-SWAP', 'agent', () => ({ kind: 'species', key: oxidised.reduced })),
  ];
}

function pointsOf(joining: Joining): Record<string, PointRule> {
  const { reduced, oxidised, byPotential } = joining;
  const species = (...keys: string[]) => keys.map((key) => `species ${key}`);
  const volts = ({ potential }: Half) => (potential ? [numberMark(writeNumber(potential, { places: 2 }, true), 'V')] : []);
  const factorMarks = marksAt(new Map([['factors', factorsSaid(joining, joining.factors)]]), 'factors');
  const electrons = reduced.electrons.multiply(factors(reduced.sides, oxidised.sides).forReduced).divide(divisorOf(joining));
  return {
    'factors:method': { earns: factorMarks },
    'sides:method': {
      earns: byPotential
        ? species(reduced.oxidised, oxidised.reduced)
        : species(reduced.oxidised, oxidised.reduced, reduced.reduced, oxidised.oxidised),
    },
    'agent:value': { earns: species(reduced.oxidised), named: reduced.oxidised, not: [species(reduced.reduced)] },
    'agent:statement': { earns: species(reduced.oxidised) },
    'direction:statement': { earns: [`label ${reduced.label}`, 'word more', ...volts(reduced), ...volts(oxidised)] },
    'electrons:value': { earns: [`number ${electrons}`] },
  };
}
