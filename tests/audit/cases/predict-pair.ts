import type { Couple } from '../chemistry/couples.ts';
import { factors } from '../chemistry/half-equations.ts';
import { type Answers, type Case, type Node, type PointRule, type Slip, Unreadable } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import { everyToken } from '../reading/tokens.ts';
import {
  type Agent,
  agentsOf,
  coupleMarks,
  directionMarks,
  equationOf,
  marksAt,
  said,
  speciesMarks,
  valueAt,
  voltMark,
} from './agents.ts';
import { equationSlips } from './equation-slips.ts';
import { volts } from './potential-slips.ts';
import { couplesIn } from './potentials.ts';

interface Pair {
  readonly first: Agent;
  readonly second: Agent;
  readonly high: Couple;
  readonly low: Couple;
  /** the one that would take electrons and the one that would give them; absent when both do the same */
  readonly roles: { readonly taker: Agent; readonly giver: Agent } | undefined;
  /** couples as E°cell is asked for */
  readonly up: Couple;
  readonly down: Couple;
}

/** Two species: E°cell, comparison, verdict, and the equation of what is feasible between their couples. */
export function pairCase(question: ReadQuestion): Pick<Case, 'nodes' | 'slips' | 'points' | 'faults'> {
  const pair = pairIn(question);
  return {
    nodes: [...nodesOf(pair), predictionNode(pair)],
    slips: slipsOf(pair),
    points: pointsOf(pair),
    faults: faultsOf(pair),
  };
}

function pairIn(question: ReadQuestion): Pair {
  const keys = everyToken(question.stem.flat(), 'species').map(({ species }) => species.key);
  const [first, second] = agentsOf(keys.slice(0, 2), couplesIn(question)) ?? [];
  if (!first || !second) throw new Unreadable('the two species that are to react');
  const [high, low] =
    first.couple.potential.compare(second.couple.potential) > 0 ? [first.couple, second.couple] : [second.couple, first.couple];
  const roles =
    first.takes === second.takes ? undefined : first.takes ? { taker: first, giver: second } : { taker: second, giver: first };
  const [up, down] = roles ? [roles.taker.couple, roles.giver.couple] : [high, low];
  return { first, second, high, low, roles, up, down };
}

/** Which couple is oxidised, by one who has got so far. */
function runs(answers: Answers, { high, low }: Pair): { readonly reduced: Couple; readonly oxidised: Couple } {
  return marksAt(answers, 'direction')[0] === `species ${high.reduced}`
    ? { reduced: low, oxidised: high }
    : { reduced: high, oxidised: low };
}
/** The direction as the species that is oxidised. */
const oxidising = (couple: Couple) => said(`species ${couple.reduced}`);

const verdict = ({ roles, first }: Pair, yes: boolean) => {
  if (!roles) return said(first.takes ? 'word neither gives' : 'word neither takes');
  const [taker, giver] = speciesMarks(roles.taker.key, roles.giver.key);
  return yes
    ? said(taker!, 'word oxidise', giver!, 'word positive', 'word feasible')
    : said(taker!, 'word not oxidise', giver!, 'word negative', 'word infeasible');
};
const saysYes = (answers: Answers) => !marksAt(answers, 'verdict').includes('word not oxidise');

function nodesOf(pair: Pair): Node[] {
  const { roles, first, second, high, low, up, down } = pair;
  const node = (id: string, needs: readonly string[], work: Node['work']): Node => ({ id, needs, figures: 'whole', work });
  const kind = first.takes ? ['word oxidising agents', 'word only take'] : ['word reducing agents', 'word only give'];
  const alike = [...speciesMarks(first.key, second.key), ...kind];
  return [
    {
      id: 'emf',
      needs: [],
      figures: { places: 2 },
      signed: true,
      left: ['symbol E°cell'],
      work: () => volts(up.potential.subtract(down.potential)),
    },
    node('compare', [], () => said(...coupleMarks(high), 'word more', ...coupleMarks(low))),
    node('sides', [], () => said(...alike)),
    node('verdict', roles ? ['emf'] : ['sides'], (answers) => {
      if (roles) return verdict(pair, valueAt(answers, 'emf').side() > 0);
      return marksAt(answers, 'sides')[0] === 'word opposed' ? said('word so they react', 'word positive') : verdict(pair, false);
    }),
    node('direction', roles ? ['verdict'] : [], (answers) => (roles ? oxidising(saysYes(answers) ? down : up) : oxidising(low))),
    node('equation', ['direction'], (answers) => {
      const { reduced, oxidised } = runs(answers, pair);
      return equationOf(reduced, oxidised);
    }),
  ];
}

/** What a choice asks for: the verdict with its reason. */
function predictionNode(pair: Pair): Node {
  return {
    id: 'prediction',
    needs: pair.roles ? ['emf'] : ['sides'],
    figures: 'whole',
    work: (answers) => {
      if (!pair.roles) {
        const isAlike = marksAt(answers, 'sides')[0] !== 'word opposed';
        return isAlike
          ? said('word no', pair.first.takes ? 'word neither gives' : 'word neither takes')
          : oneActs(pair, pair.high);
      }
      const emf = valueAt(answers, 'emf');
      return said(emf.side() > 0 ? 'word yes' : 'word no', voltMark(emf));
    },
  };
}

/** The wrong idea that one of two like agents acts on the other. */
function oneActs({ first, second }: Pair, reduced: Couple) {
  const [up, down] = first.couple === reduced ? [first, second] : [second, first];
  return first.takes
    ? said('word yes', `species ${up.key}`, 'word oxidise', `species ${down.key}`)
    : said('word yes', `species ${down.key}`, 'word reduce', `species ${up.key}`);
}

function slipsOf(pair: Pair): Slip[] {
  const { roles, high, low, up, down } = pair;
  const [a, b] = [up.potential, down.potential];
  const { forReduced, forOxidised } = factors(up.half, down.half);
  const emf = (id: string, value: Fraction): Slip => ({ id, at: 'emf', work: () => volts(value) });
  return [
    emf('EP-REVERSED', b.subtract(a)),
    emf('EP-ADD', a.add(b)),
    emf('EP-SIGN-DROPPED', a.size().subtract(b.size())),
    emf('EP-MULTIPLIED', a.multiply(forReduced).subtract(b.multiply(forOxidised))),
    ...(roles
      ? [
          {
            id: 'EP-STRENGTH-REVERSED',
            at: 'verdict',
            work: (answers: Answers) => turned(pair, valueAt(answers, 'emf').side() <= 0),
          },
          { id: 'EP-WRONG-SPECIES', at: 'direction', work: (answers: Answers) => oxidising(saysYes(answers) ? up : down) },
        ]
      : [
          { id: 'EP-WRONG-SPECIES', at: 'sides', work: () => said('word opposed') },
          { id: 'EP-STRENGTH-REVERSED', at: 'direction', work: () => oxidising(high) },
          { id: 'EP-STRENGTH-REVERSED', at: 'prediction', work: () => oneActs(pair, low) },
        ]),
    ...equationSlips('equation', (answers) => {
      const { reduced, oxidised } = runs(answers, pair);
      return { reduced: reduced.half, oxidised: oxidised.half };
    }),
  ];
}

/** The verdict of one who compares rightly, both couples named, and takes the more positive couple to give electrons. */
function turned({ roles, high, low }: Pair, yes: boolean) {
  const [taker, giver] = speciesMarks(roles!.taker.key, roles!.giver.key);
  const compared = [...speciesMarks(high.oxidised, high.reduced), 'word more', ...speciesMarks(low.oxidised, low.reduced)];
  return said(...compared, taker!, yes ? 'word oxidise' : 'word not oxidise', giver!);
}

function pointsOf(pair: Pair): Record<string, PointRule> {
  const { roles, first, second, high, low, up, down } = pair;
  const emf = up.potential.subtract(down.potential);
  const reacts = emf.side() > 0;
  const [taker, giver] = roles ? speciesMarks(roles.taker.key, roles.giver.key) : [];
  const direction: PointRule = { earns: directionMarks(high, low) };
  if (!roles) {
    const kind = first.takes ? ['word oxidising agents', 'word only take'] : ['word reducing agents', 'word only give'];
    return {
      'sides:statement': { earns: [...speciesMarks(first.key, second.key), ...kind] },
      'verdict:statement': { earns: [first.takes ? 'word neither gives' : 'word neither takes'] },
      'direction:statement': direction,
    };
  }
  return {
    'compare:statement': {
      earns: [...coupleMarks(high), 'word more', ...coupleMarks(low)],
      also: [[voltMark(emf), 'word more']],
    },
    'verdict:statement': {
      earns: reacts
        ? [taker!, 'word oxidise', giver!, voltMark(emf), 'word positive', 'word feasible']
        : [taker!, 'word not oxidise', giver!, voltMark(emf), 'word negative', 'word infeasible'],
    },
    'direction:statement': direction,
  };
}

function faultsOf({ high, low }: Pair): string[] {
  const difference = high.potential.subtract(low.potential);
  return difference.compare(Fraction.of(1, 10)) < 0 ? [`${difference} V is nearer to zero than 0.10 V`] : [];
}
