import type { Tables } from '../../potentials/tables.ts';
import type { Draws } from '../../random/draws.ts';
import { type Ask, family } from '../family.ts';
import type { HonestPair } from '../honest-pairs.ts';
import { buildHalf } from './half-equation-build.ts';
import { type HalfPlan, planOf } from './half-equation-plan.ts';
import { reactingPairs, sharesSpecies } from './reacting-pairs.ts';

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

function draw(draws: Draws, tables: Tables, { level }: Ask): HalfDraw | undefined {
  // Most stretch questions are in alkali, which core questions leave alone.
  const isAlkaline = level === 'stretch' && draws.chance(2, 3);
  const pool = reactingPairs(tables, level).filter(
    ({ medium }) => medium !== 'neutral' && (level === 'core' || (medium === 'acid') !== isAlkaline),
  );
  const pair = draws.pick(pool);
  const plans = [planOf(pair.oxidant, true, pair.medium), planOf(pair.reductant, false, pair.medium)] as const;
  const [main, partner] = draws.shuffle(plans) as [HalfPlan, HalfPlan];
  if (!main.isBuilt || !main.change || sharesSpecies(pair)) return undefined;
  // The explanation at the end of a stretch question rests on what the oxidising agent's element does.
  return level === 'stretch' && !plans[0].change ? undefined : { pair, main, partner };
}
