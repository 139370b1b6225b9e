import type { Command } from '../command.ts';
import { again } from './again.ts';
import { demo } from './demo.ts';
import { families } from './families.ts';
import { sheet } from './sheet.ts';

/** Every command, in the order in which help lists them. A new one is its file and a line here. */
export const COMMANDS: readonly Command[] = [sheet, again, families, demo];
