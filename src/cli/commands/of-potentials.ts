import type { Command } from '../command.ts';
import { cell } from './cell.ts';
import { react } from './react.ts';
import { table } from './table.ts';
import { titration } from './titration.ts';

/** Calculators that read the table of potentials, loaded as one file. */
export const OF_POTENTIALS: readonly Command[] = [cell, react, titration, table];
