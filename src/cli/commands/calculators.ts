import type { Command } from '../command.ts';
import { balance } from './balance.ts';
import { cell } from './cell.ts';
import { colour } from './colour.ts';
import { electrons } from './electrons.ts';
import { mass } from './mass.ts';
import { nameOfSpecies } from './name.ts';
import { oxidation } from './oxidation.ts';
import { react } from './react.ts';
import { table } from './table.ts';
import { titration } from './titration.ts';

/** The commands that work something out and make no sheet, in the order in which help lists them. */
export const CALCULATORS: readonly Command[] = [
  balance,
  oxidation,
  mass,
  colour,
  cell,
  react,
  nameOfSpecies,
  electrons,
  titration,
  table,
];
