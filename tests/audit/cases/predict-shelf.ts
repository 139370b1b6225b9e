import type { Couple } from '../chemistry/couples.ts';
import { factors } from '../chemistry/half-equations.ts';
import { type Answers, type Case, type Node, type PointRule, type Slip, Unreadable } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import { everyToken, type Token } from '../reading/tokens.ts';
import { type Agent, agentsOf, coupleMarks, directionMarks, equationOf, said, speciesMarks, voltMark } from './agents.ts';
import { equationSlips } from './equation-slips.ts';
import { volts } from './potential-slips.ts';
import { couplesIn } from './potentials.ts';

/** One species and three reagents: the one that reacts, the one that could but does not, the one of the same kind. */
interface Shelf {
  readonly subject: Agent;
  readonly reagents: readonly Agent[];
  readonly reacts: Agent;
  readonly unable: Agent;
  readonly alike: Agent;
}

export function shelfCase(question: ReadQuestion): Pick<Case, 'nodes' | 'slips' | 'points' | 'faults'> {
  const shelf = shelfIn(question);
  return { nodes: nodesOf(shelf), slips: slipsOf(shelf), points: pointsOf(shelf), faults: faultsOf(shelf) };
}

/** The subject stands after the words `react with`; the others are the reagents. */
function shelfIn(question: ReadQuestion): Shelf {
  const stem = question.stem.flat();
  const keys = everyToken(stem, 'species').map(({ species }) => species.key);
  const at = stem.findIndex(
    (token, index) => token.kind === 'species' && /\breacts? with [^,.]*\($/.test(wordsOf(stem[index - 1])),
  );
  const token = stem[at];
  const subjectKey = token?.kind === 'species' ? token.species.key : undefined;
  if (subjectKey === undefined) throw new Unreadable('the species that is to react');
  const [subject, ...reagents] = agentsOf([subjectKey, ...keys.filter((key) => key !== subjectKey)], couplesIn(question)) ?? [];
  if (!subject || reagents.length !== 3) throw new Unreadable('three reagents with their couples');
  const isFeasible = (each: Agent) => {
    const { reduced, oxidised } = joined(subject, each);
    return each.takes !== subject.takes && reduced.potential.compare(oxidised.potential) > 0;
  };
  const reacting = reagents.filter(isFeasible);
  const alike = reagents.filter(({ takes }) => takes === subject.takes);
  const unable = reagents.filter((each) => !isFeasible(each) && !alike.includes(each));
  if (reacting.length !== 1 || alike.length !== 1 || unable.length !== 1) {
    throw new Unreadable(`one reagent that reacts: by the printed potentials ${reacting.length} do`);
  }
  return { subject, reagents, reacts: reacting[0]!, unable: unable[0]!, alike: alike[0]! };
}

const wordsOf = (token: Token | undefined): string => (token?.kind === 'words' ? token.text : '');

/** The couples as one would join them; of two like agents the more positive couple is taken to be reduced. */
function joined(subject: Agent, reagent: Agent): { readonly reduced: Couple; readonly oxidised: Couple } {
  const isAlike = reagent.takes === subject.takes;
  const subjectTakes = isAlike ? subject.couple.potential.compare(reagent.couple.potential) > 0 : subject.takes;
  return subjectTakes
    ? { reduced: subject.couple, oxidised: reagent.couple }
    : { reduced: reagent.couple, oxidised: subject.couple };
}

const emfOf = (subject: Agent, reagent: Agent): Fraction => {
  const { reduced, oxidised } = joined(subject, reagent);
  return reduced.potential.subtract(oxidised.potential);
};

function chosen(answers: Answers, { reagents, reacts }: Shelf): Agent {
  const answer = answers.get('reagent');
  return reagents.find(({ key }) => answer?.kind === 'species' && answer.key === key) ?? reacts;
}

const alikeMarks = ({ alike, subject }: Shelf): string[] => [
  ...speciesMarks(alike.key, subject.key),
  ...(subject.takes ? ['word an oxidising agent', 'word only take'] : ['word a reducing agent', 'word only give']),
];

function nodesOf(shelf: Shelf): Node[] {
  const { subject, reacts, unable, alike } = shelf;
  const node = (id: string, needs: readonly string[], work: Node['work']): Node => ({ id, needs, figures: 'whole', work });
  const emf = (id: string, work: Node['work']): Node => ({
    id,
    needs: ['reagent'],
    figures: { places: 2 },
    signed: true,
    left: ['symbol E°cell'],
    work,
  });
  return [
    node('reagent', [], () => ({ kind: 'species', key: reacts.key })),
    emf('emf', (answers) => volts(emfOf(subject, chosen(answers, shelf)))),
    // Who takes the wrong one to react has the right one left to argue away, and turns its value round.
    emf('emf-other', (answers) =>
      volts(chosen(answers, shelf) === unable ? emfOf(subject, reacts).negative() : emfOf(subject, unable)),
    ),
    node('alike', ['reagent'], (answers) =>
      chosen(answers, shelf) === alike ? said('word missed') : said(...alikeMarks(shelf)),
    ),
    node('direction', ['reagent'], (answers) => {
      const { reduced, oxidised } = joined(subject, chosen(answers, shelf));
      return said(...directionMarks(reduced, oxidised));
    }),
    node('equation', ['direction', 'reagent'], (answers) => {
      const { reduced, oxidised } = joined(subject, chosen(answers, shelf));
      return equationOf(reduced, oxidised);
    }),
  ];
}

/** The one of the other kind that would react if only the sizes of the potentials counted. */
function largestBySize({ subject, reacts, unable }: Shelf): Agent | undefined {
  const size = ({ couple }: Agent) => couple.potential.size();
  const would = [reacts, unable].filter((each) => size(subject).compare(size(each)) > 0 === subject.takes);
  return would.length === 1 ? would[0] : undefined;
}

function slipsOf(shelf: Shelf): Slip[] {
  const { subject, reacts, unable, alike } = shelf;
  const { reduced, oxidised } = joined(subject, reacts);
  const { forReduced, forOxidised } = factors(reduced.half, oxidised.half);
  const [up, down] = [reduced.potential, oxidised.potential];
  const reagent = (id: string, { key }: Agent): Slip => ({ id, at: 'reagent', work: () => ({ kind: 'species', key }) });
  const emf = (id: string, value: Fraction): Slip => ({ id, at: 'emf', work: () => volts(value) });
  return [
    reagent('EP-STRENGTH-REVERSED', unable),
    // It is no partner, so that the reactants written in c follow from nothing.
    { ...reagent('EP-WRONG-SPECIES', alike), skips: ['direction'] },
    reagent('EP-SIGN-DROPPED', largestBySize(shelf) ?? reacts),
    emf('EP-REVERSED', down.subtract(up)),
    emf('EP-ADD', up.add(down)),
    emf('EP-MULTIPLIED', up.multiply(forReduced).subtract(down.multiply(forOxidised))),
    ...equationSlips('equation', (answers) => {
      const pair = joined(subject, chosen(answers, shelf));
      return { reduced: pair.reduced.half, oxidised: pair.oxidised.half };
    }),
  ];
}

function pointsOf(shelf: Shelf): Record<string, PointRule> {
  const { subject, reacts, unable, alike } = shelf;
  const { reduced, oxidised } = joined(subject, reacts);
  return {
    'reagent:statement': { earns: speciesMarks(reacts.key), named: reacts.key },
    'emf:value': { earns: [voltMark(emfOf(subject, reacts)), ...coupleMarks(subject.couple), ...coupleMarks(reacts.couple)] },
    'emf-other:value': {
      earns: [...speciesMarks(unable.key, subject.key), voltMark(emfOf(subject, unable)), 'word negative', 'word infeasible'],
      also: [[...coupleMarks(unable.couple), subject.takes ? 'word more' : 'word less', ...coupleMarks(subject.couple)]],
    },
    'alike:statement': { earns: alikeMarks(shelf), also: [speciesMarks(alike.key, subject.key)] },
    'direction:statement': { earns: directionMarks(reduced, oxidised) },
  };
}

function faultsOf({ subject, reacts, unable }: Shelf): string[] {
  const threshold = Fraction.of(1, 10);
  return [emfOf(subject, reacts), emfOf(subject, unable).negative()]
    .filter((each) => each.compare(threshold) < 0)
    .map((each) => `${each} V is nearer to zero than 0.10 V`);
}
