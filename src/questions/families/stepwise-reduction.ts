import { elementsIn } from '../../chemistry/composition.ts';
import type { Couple } from '../../chemistry/couple.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { react } from '../../chemistry/react.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Draws } from '../../random/draws.ts';
import { standsWith } from '../acid-stands.ts';
import { type Ask, family } from '../family.ts';
import { inUse } from '../half-cell.ts';
import { isMain } from '../main-couple.ts';
import { isAtHand, mayMeet } from '../may-meet.ts';
import type { Caution } from '../question.ts';
import { buildLadder } from './stepwise-build.ts';
import { ladderCautions } from './stepwise-cautions.ts';
import { type Ladder, ladderFrom } from './stepwise-ladder.ts';

/** What a draw fixes: a ladder, and couples that are printed only to be passed over. */
export interface LadderDraw {
  readonly ladder: Ladder;
  readonly decoys: readonly Couple[];
  readonly cautions: readonly Caution[];
}

/** Elements whose oxidation states make a ladder that a class knows, and those kept for stretch. */
const CORE_ELEMENTS = ['V', 'Cr'];
const STRETCH_ELEMENTS = ['V', 'Cr', 'Ti', 'Fe'];
/** Too poisonous to be written about as if on the bench, or dangerous with acid. */
const NOT_HANDLED = ['Hg', 'Cd', '[Fe(CN)6]^4-'];
/** Reagents a class has met. */
const CORE_REAGENTS = ['Zn', 'Sn', 'Fe', 'Fe^2+', 'I^-', 'Sn^2+', 'Ti^3+'];

export const stepwiseReduction = family<LadderDraw>({
  id: 'stepwise-reduction',
  title: 'How far an excess of one reagent goes',
  asksFor: 'how far an excess of a reductant or oxidant takes an ion, the steps, the equations, the colours, and why it stops',
  topics: ['transition-metals', 'electrode-potentials'],
  strategy: 'ladder of potentials',
  demand: ['direction', 'steps', 'decoys', 'signposts', 'what is seen'],
  answering: ['written', 'choice'],
  misconceptions: [
    'EP-ADD',
    'EP-SIGN-DROPPED',
    'EP-REVERSED',
    'EP-MULTIPLIED',
    'HE-ADD-UNSCALED',
    'HE-SCALE-OWN',
    'HE-H-NOT-CANCELLED',
    'EP-STRENGTH-REVERSED',
    'LD-STOPS-EARLY',
    'LD-GOES-TOO-FAR',
    'LD-COLOURS-SWAPPED',
    'ON-ION-CHARGE',
  ],
  draw,
  build: buildLadder,
});

function draw(draws: Draws, tables: Tables, { level }: Ask): LadderDraw | undefined {
  const usable = tables.couples.filter(
    (couple) =>
      inUse(couple) && !NOT_HANDLED.includes(couple.reducedKey) && (couple.medium === 'acid' || couple.medium === 'neutral'),
  );
  const isReduction = level === 'core' || draws.chance(1, 2);
  const elements = level === 'core' ? CORE_ELEMENTS : STRETCH_ELEMENTS;
  const forms = (couple: Couple) =>
    (isReduction ? [couple.oxidised, couple.reduced] : [couple.reduced, couple.oxidised]) as [Formula, Formula];
  const start = forms(
    draws.pick(
      usable.filter(
        (couple) =>
          isAtHand(keyOf(forms(couple)[0]), tables) && elementsIn(forms(couple)[0]).some((symbol) => elements.includes(symbol)),
      ),
    ),
  )[0];
  const reagents = usable.filter((couple) =>
    level === 'stretch' ? isAtHand(keyOf(forms(couple)[1]), tables) : CORE_REAGENTS.includes(couple.reducedKey),
  );
  const reagent = draws.pick(reagents);
  if (keyOf(start) === keyOf(forms(reagent)[1]) || !mayMeet(keyOf(start), keyOf(forms(reagent)[1]), tables)) return undefined;
  const mixture = react(
    {
      reactants: [
        { formula: start, amount: Rational.one },
        { formula: forms(reagent)[1], amount: 'excess' },
      ],
      medium: 'acid',
      values: 'printed',
    },
    tables.couples,
    tables.facts,
  );
  const ladder = ladderFrom(mixture, { start, reagent, isReduction }, tables);
  if (!ladder || !standsInSulfuric(ladder, tables)) return undefined;
  // A chain is what the family is for, above all at stretch; but there are few chains, so some single steps are asked for their stop.
  if (ladder.rungs.length === 1 && (level === 'stretch' ? draws.chance(11, 12) : draws.chance(1, 2))) return undefined;
  const cautions = ladderCautions(ladder, tables);
  const decoys =
    level === 'stretch'
      ? drawDecoys(
          draws,
          ladder,
          usable.filter((couple) => isDecoy(couple, tables)),
        )
      : [];
  return cautions && decoys && { ladder, decoys, cautions };
}

/** The mixture is in dilute sulfuric acid, which precipitates silver, lead and barium. */
function standsInSulfuric({ start, rungs, reacts, product }: Ladder, tables: Tables): boolean {
  const present = [start, ...rungs.map(({ to }) => to), reacts, product].map(keyOf);
  return standsWith('SO4^2-', present, tables);
}

/** What the beaker holds anyhow: a half-equation of one of these would be no decoy. */
const IN_THE_BEAKER = ['H^+', 'H2O', 'SO4^2-', 'O2'];

/** A half-equation to be passed over tells the main product of a species that is not there. */
function isDecoy(couple: Couple, tables: Tables): boolean {
  const isThere = [couple.oxidisedKey, couple.reducedKey].some((key) => IN_THE_BEAKER.includes(key));
  return !isThere && (isMain(couple, 'oxidised', 'acid', tables) || isMain(couple, 'reduced', 'acid', tables));
}

/** Two couples with no species of the ladder or the reagent, and none that would itself react with the reagent's element. */
function drawDecoys(draws: Draws, { rungs, next, reagent }: Ladder, usable: readonly Couple[]): Couple[] | undefined {
  const taken = new Set(
    [...rungs, next]
      .map(({ couple }) => couple)
      .concat(reagent)
      .flatMap(({ oxidised, reduced }) => [...elementsIn(oxidised), ...elementsIn(reduced)])
      .filter((symbol) => symbol !== 'O' && symbol !== 'H'),
  );
  const free = usable.filter(
    ({ oxidised, reduced }) => ![...elementsIn(oxidised), ...elementsIn(reduced)].some((symbol) => taken.has(symbol)),
  );
  return free.length < 2 ? undefined : draws.shuffle(free).slice(0, 2);
}
