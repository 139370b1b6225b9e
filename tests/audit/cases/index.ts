import type { CaseReader } from '../engine/case.ts';
import { cellEmf } from './cell-emf.ts';
import { combineHalves } from './combine-halves.ts';
import { halfEquation } from './half-equation.ts';
import { moleRatio } from './mole-ratio.ts';
import { oxidationNumber } from './oxidation-number.ts';
import { predictReaction } from './predict-reaction.ts';
import { stepwiseReduction } from './stepwise-reduction.ts';
import { titrationConcentration } from './titration-concentration.ts';

/** How the questions of each family are read and worked, by the family's id as the scheme's last line prints it. */
export const CASES: Readonly<Record<string, CaseReader>> = {
  'cell-emf': cellEmf,
  'combine-halves': combineHalves,
  'half-equation': halfEquation,
  'mole-ratio': moleRatio,
  'oxidation-number': oxidationNumber,
  'predict-reaction': predictReaction,
  'stepwise-reduction': stepwiseReduction,
  'titration-concentration': titrationConcentration,
};
