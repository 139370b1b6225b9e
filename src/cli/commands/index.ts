import type { Command } from '../command.ts';
import { again } from './again.ts';
import { another } from './another.ts';
import { browse } from './browse.ts';
import { CALCULATORS } from './calculators.ts';
import { demo } from './demo.ts';
import { families } from './families.ts';
import { inspect } from './inspect.ts';
import { sheet } from './sheet.ts';
import { swap } from './swap.ts';

/** Every command, in the order in which help lists them. A new one is its file and a line here. */
export const COMMANDS: readonly Command[] = [sheet, browse, another, swap, again, families, inspect, demo, ...CALCULATORS];
