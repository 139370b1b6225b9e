import type { Family } from '../family.ts';
import { cellEmf } from './cell-emf.ts';
import { combineHalves } from './combine-halves.ts';
import { halfEquation } from './half-equation.ts';
import { moleRatio } from './mole-ratio.ts';
import { oxidationNumber } from './oxidation-number.ts';
import { predictReaction } from './predict-reaction.ts';
import { stepwiseReduction } from './stepwise-reduction.ts';
import { titrationConcentration } from './titration-concentration.ts';

/** Every family, by id. A new family is its file, its template and a line here. */
export const FAMILIES: readonly Family[] = [
  cellEmf,
  combineHalves,
  halfEquation,
  moleRatio,
  oxidationNumber,
  predictReaction,
  stepwiseReduction,
  titrationConcentration,
];
