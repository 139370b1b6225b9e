import type { Tables } from '../../potentials/tables.ts';
import type { Draws } from '../../random/draws.ts';
import { type Ask, family } from '../family.ts';
import type { HonestPair } from '../honest-pairs.ts';
import { buildHalf } from './half-equation-build.ts';
import { halfPairs, halvesAlone } from './half-equation-pairs.ts';
import { type HalfPlan, planOf } from './half-equation-plan.ts';
import { sharesSpecies } from './reacting-pairs.ts';

/** What a draw fixes: a reaction, and which of its two half-equations asks for more. */
export interface HalfDraw {
  readonly pair: HonestPair;
  readonly main: HalfPlan;
  readonly partner: HalfPlan;
}

export const halfEquation = family<HalfDraw>({
  id: 'half-equation',
  title: 'Half-equations built from their species',
  asksFor:
    'half-equations from two species each: electrons counted, oxygen and hydrogen made up in acid or alkali, charge balanced',
  topics: ['oxidation-and-reduction'],
  strategy: 'atoms, then charge',
  demand: ['direction', 'medium', 'atoms that change', 'partner'],
  answering: ['written', 'choice'],
  misconceptions: [
    'HE-ELECTRON-SIDE',
    'RX-ION-CHARGE-CHANGE',
    'HE-ELECTRONS-PER-ATOM',
    'HE-OXYGEN-GAS',
    'HE-H-IN-ALKALI',
    'RX-OXIDE-TRANSFER',
    'HE-ELECTRONS-MISSING',
    'ON-PEROXIDE',
    'RX-AGENT-SWAP',
  ],
  draw,
  build: buildHalf,
});

function draw(draws: Draws, tables: Tables, { level, answering }: Ask): HalfDraw | undefined {
  const isChoice = answering === 'choice';
  const pair = draws.pick(level === 'core' ? halfPairs(tables).core : stretchPool(draws, tables));
  const plans = [planOf(pair.oxidant, true, pair.medium), planOf(pair.reductant, false, pair.medium)] as const;
  const [main, partner] = draws.shuffle(plans) as [HalfPlan, HalfPlan];
  if (!main.isBuilt || !main.change || sharesSpecies(pair)) return undefined;
  // Most core questions build one half-equation; the partner's is electrons alone, which also leaves its couple to another question.
  if (level === 'core') return partner.isBuilt && !isChoice && draws.chance(7, 8) ? undefined : { pair, main, partner };
  // The explanation at the end of a stretch question rests on what the oxidising agent's element does.
  if (!plans[0].change || (isChoice && isCoreHalf(main, tables))) return undefined;
  return isChoice ? aloneOr({ pair, main, partner }, draws, tables) : { pair, main, partner };
}

/** A choice asks for one half-equation and speaks of no reaction: it may be one whose reactions are not asked about. */
function aloneOr(drawn: HalfDraw, draws: Draws, tables: Tables): HalfDraw {
  const { isReduction } = drawn.main;
  const alone = halvesAlone(tables).filter((each) => each.isReduction === isReduction);
  return alone.length > 0 && draws.chance(1, 2) ? { ...drawn, main: draws.pick(alone) } : drawn;
}

/** Most stretch questions are in alkali, which core questions leave alone; none is a core question. */
function stretchPool(draws: Draws, tables: Tables): readonly HonestPair[] {
  const isAlkaline = draws.chance(2, 3);
  return halfPairs(tables).stretch.filter(({ medium }) => (medium === 'acid') !== isAlkaline);
}

/** The same half-equation is asked for in core questions. */
function isCoreHalf({ couple }: HalfPlan, tables: Tables): boolean {
  return halfPairs(tables).core.some(({ oxidant, reductant }) => oxidant === couple || reductant === couple);
}
