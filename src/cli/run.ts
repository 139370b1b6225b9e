import { allCommands, COMMANDS } from './commands/index.ts';
import type { Desk } from './desk.ts';
import { parse } from './parse.ts';
import { reportOf } from './report.ts';

/** What the program meets outside itself. */
export interface Surroundings {
  /** folder of the package */
  readonly root: string;
  readonly version: string;
  /** whether a fault is told with where in the program it happened */
  readonly trace: boolean;
  print(text: string): void;
  say(text: string): void;
  /** all of standard input; undefined when it is a keyboard */
  input(): Promise<string | undefined>;
}

/**
 * Does what a command line asks for. Whatever goes wrong is told and never thrown.
 * @param args of the command line, after the program's name
 * @returns the exit status: 2 for a mistake of the user's, 1 for a fault of ours
 */
export async function run(
  args: readonly string[],
  { root, version, trace, print, say, input }: Surroundings,
): Promise<0 | 1 | 2> {
  let seed: string | undefined;
  const atSeed = (text: string) => {
    seed = text;
  };
  try {
    return await perform(args, { root, version, print, say, input, atSeed });
  } catch (error) {
    const report = reportOf(error, { version, args, seed, trace });
    say(report.text);
    return report.status;
  }
}

/** @returns 2 when nothing was asked for, since that is no use of the program */
async function perform(args: readonly string[], desk: Desk): Promise<0 | 2> {
  const parsed = await parse(args, COMMANDS);
  if (parsed === 'version') desk.print(desk.version);
  else if ('command' in parsed) await parsed.command.perform(parsed.typed, parsed.operands, desk);
  else {
    const { commandPage, overviewPage } = await import('./help.ts');
    const { helpOn, asked } = parsed;
    const page = helpOn === 'all' ? overviewPage(await allCommands()) : commandPage(helpOn);
    if (!asked) desk.say(page);
    else desk.print(page);
    return asked ? 0 : 2;
  }
  return 0;
}
