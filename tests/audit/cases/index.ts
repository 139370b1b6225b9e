import type { CaseReader } from '../engine/case.ts';
import { cellEmf } from './cell-emf.ts';
import { stepwiseReduction } from './stepwise-reduction.ts';
import { titrationConcentration } from './titration-concentration.ts';

/** How the questions of each family are read and worked, by the family's id as the scheme's last line prints it. */
export const CASES: Readonly<Record<string, CaseReader>> = {
  'cell-emf': cellEmf,
  'stepwise-reduction': stepwiseReduction,
  'titration-concentration': titrationConcentration,
};
