import type { Tables } from '../../potentials/tables.ts';
import type { Draws } from '../../random/draws.ts';
import { type Ask, family } from '../family.ts';
import type { HonestPair } from '../honest-pairs.ts';
import { buildCombination } from './combine-halves-build.ts';
import { reactingPairs, sharesSpecies } from './reacting-pairs.ts';

/** What a draw fixes: a reaction, which of its half-equations is printed first, and how they are printed. */
export interface CombineDraw {
  readonly pair: HonestPair;
  readonly oxidantFirst: boolean;
  /** as they run: one reduction, one oxidation · as reductions, the reactants named · with potentials, the direction to be found */
  readonly given: 'as they run' | 'as reductions' | 'with potentials';
}

export const combineHalves = family<CombineDraw>({
  id: 'combine-halves',
  title: 'From two half-equations to the overall equation',
  asksFor: 'two half-equations joined to the overall ionic equation: factors, direction, cancelling, agents',
  topics: ['oxidation-and-reduction'],
  strategy: 'electrons given equal electrons taken',
  demand: ['given', 'electron ratio', 'cancelling', 'medium', 'one element'],
  answering: ['written', 'choice'],
  misconceptions: [
    'HE-ADD-UNSCALED',
    'HE-SCALE-OWN',
    'HE-NOT-REVERSED',
    'HE-H-NOT-CANCELLED',
    'RX-AGENT-SWAP',
    'EP-STRENGTH-REVERSED',
    'RX-COEFFICIENT-ELECTRONS',
    'EP-N-OF-ONE-HALF',
  ],
  draw,
  build: buildCombination,
});

function draw(draws: Draws, tables: Tables, { level }: Ask): CombineDraw | undefined {
  const pair = draws.pick(reactingPairs(tables, level));
  const isEven = pair.oxidant.half.electrons.equals(pair.reductant.half.electrons);
  const oxidantFirst = draws.chance(1, 2);
  const given = level === 'stretch' ? 'with potentials' : draws.chance(1, 3) ? 'as they run' : 'as reductions';
  // Equal electrons leave little to do, so most such pairs are passed over; one element in both is kept for stretch.
  const isDull = isEven && draws.chance(4, 5);
  return isDull || (level === 'core' && sharesSpecies(pair)) ? undefined : { pair, oxidantFirst, given };
}
