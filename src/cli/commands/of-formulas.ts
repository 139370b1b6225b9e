import type { Command } from '../command.ts';
import { balance } from './balance.ts';
import { colour } from './colour.ts';
import { electrons } from './electrons.ts';
import { mass } from './mass.ts';
import { nameOfSpecies } from './name.ts';
import { oxidation } from './oxidation.ts';

/** Calculators that need no potentials. They are loaded as one file: many small ones would take longer than these take to answer. */
export const OF_FORMULAS: readonly Command[] = [balance, oxidation, mass, colour, nameOfSpecies, electrons];
