import manifest from '../../package.json' with { type: 'json' };
import { COMMANDS } from './commands/index.ts';
import type { Desk } from './desk.ts';
import { parse } from './parse.ts';
import { reportOf } from './report.ts';

/**
 * Runs the program. It sets the exit status and never ends the process itself, so that what was written also arrives.
 * @param args of the command line, after the program's name
 * @param root folder of the package
 */
export async function main(args: readonly string[], root: string): Promise<void> {
  for (const stream of [process.stdout, process.stderr]) stream.on('error', whenReaderLeft);
  const { version } = manifest;
  let seed: string | undefined;
  const desk: Desk = {
    root,
    version,
    print: (text) => void process.stdout.write(`${text}\n`),
    say: (text) => void process.stderr.write(`${text}\n`),
    atSeed: (text) => {
      seed = text;
    },
  };
  try {
    process.exitCode = await perform(args, desk);
  } catch (error) {
    const trace = (process.env.COUPLET_TRACE ?? '') !== '';
    const report = reportOf(error, { version, args, seed, trace });
    desk.say(report.text);
    process.exitCode = report.status;
  }
}

/** @returns the exit status: 2 when nothing was asked for, since that is no use of the program */
async function perform(args: readonly string[], desk: Desk): Promise<0 | 2> {
  const parsed = parse(args, COMMANDS, desk.version);
  if ('command' in parsed) await parsed.command.perform(parsed.typed, parsed.operands, desk);
  else if (parsed.asked) desk.print(parsed.page);
  else desk.say(parsed.page);
  return 'command' in parsed || parsed.asked ? 0 : 2;
}

/** `couplet families | head -1` closes our output early; that is no fault. */
function whenReaderLeft(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error;
}
