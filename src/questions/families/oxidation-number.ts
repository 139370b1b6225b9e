import { keyOf } from '../../chemistry/write-formula.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Draws } from '../../random/draws.ts';
import { type Ask, family } from '../family.ts';
import { buildOxidationNumber } from './oxidation-number-build.ts';
import { type Reaction, reactionOf } from './oxidation-number-reaction.ts';
import { type Kind, type Wanted, wantedIn } from './oxidation-number-species.ts';
import { reactingPairs } from './reacting-pairs.ts';

/** What a draw fixes: three species in order of demand, and a reaction along which a number changes. */
export interface NumberDraw {
  readonly wanted: readonly [Wanted, Wanted, Wanted];
  readonly reaction: Reaction;
}

/** Kinds from which each of the three species is drawn. */
const KINDS: Readonly<Record<Ask['level'], readonly [readonly Kind[], readonly Kind[], readonly Kind[]]>> = {
  core: [['compound'], ['ion'], ['several', 'complex']],
  stretch: [['mixed complex'], ['peroxide', 'peroxo ion'], ['average']],
};
/** A single choice needs several wrong answers that can be told apart. */
const KINDS_OF_CHOICE: Readonly<Record<Ask['level'], readonly Kind[]>> = {
  core: ['ion', 'several', 'complex'],
  stretch: ['mixed complex', 'peroxo ion', 'several', 'average'],
};

export const oxidationNumber = family<NumberDraw>({
  id: 'oxidation-number',
  title: 'Oxidation numbers in species and along a reaction',
  asksFor: 'oxidation numbers in compounds, ions, complexes and peroxides, and what changes along a reaction',
  topics: ['oxidation-and-reduction'],
  strategy: 'sum of oxidation numbers',
  demand: ['species', 'reaction', 'electrons'],
  answering: ['written', 'choice'],
  misconceptions: [
    'ON-ION-CHARGE',
    'ON-SUM-ZERO',
    'ON-NOT-PER-ATOM',
    'ON-COMPLEX-CHARGE',
    'ON-PEROXIDE-STATE',
    'ON-ROUND-FRACTION',
    'ON-COUNT-IGNORED',
    'ON-CHARGE-SIGN',
    'RX-AGENT-SWAP',
    'HE-ELECTRONS-PER-ATOM',
    'RX-COEFFICIENT-ELECTRONS',
  ],
  draw,
  build: buildOxidationNumber,
});

function draw(draws: Draws, tables: Tables, { level, answering }: Ask): NumberDraw | undefined {
  const all = wantedIn(tables).filter((wanted) => level === 'stretch' || isPlain(wanted));
  const pick = (kinds: readonly Kind[]) => draws.pick(all.filter(({ kind }) => kinds.includes(kind)));
  const [first, second, third] = KINDS[level];
  const isChoice = answering === 'choice';
  const asked = isChoice ? pickForChoice(draws, all, level) : pick([draws.pick(third)]);
  const wanted = [pick(first), pick(second), asked] as const;
  if (new Set(wanted.map(({ element, kind }) => (kind === 'peroxide' ? kind : element))).size < 3) return undefined;
  const reaction = reactionOf(draws.pick(reactingPairs(tables, level)));
  return reaction && isWorthAsking(reaction, wanted) ? { wanted, reaction } : undefined;
}

/** A species that a core choice asks about is none for a stretch choice. */
function pickForChoice(draws: Draws, all: readonly Wanted[], level: Ask['level']): Wanted {
  const isCore = (wanted: Wanted) => KINDS_OF_CHOICE.core.includes(wanted.kind) && isPlain(wanted);
  return draws.pick(all.filter((each) => KINDS_OF_CHOICE[level].includes(each.kind) && (level === 'core' || !isCore(each))));
}

/** In core questions every atom of the element is in the same state. */
function isPlain({ states }: Wanted): boolean {
  return states === undefined;
}

/** The reduced element stands in a species that needs a sum, and tells no answer of the first part. */
function isWorthAsking({ before, equation }: Reaction, wanted: readonly Wanted[]): boolean {
  const printed = [...equation.left, ...equation.right].map(({ formula }) => keyOf(formula));
  return before.account.others.length > 0 && !wanted.some(({ formula }) => printed.includes(keyOf(formula)));
}
