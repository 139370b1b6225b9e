import manifest from '../../package.json' with { type: 'json' };
import { run } from './run.ts';

/**
 * Runs the program. It sets the exit status and never ends the process itself, so that what was written also arrives.
 * @param args of the command line, after the program's name
 * @param root folder of the package
 */
export async function main(args: readonly string[], root: string): Promise<void> {
  for (const stream of [process.stdout, process.stderr]) stream.on('error', whenReaderLeft);
  process.exitCode = await run(args, {
    root,
    version: manifest.version,
    trace: (process.env.COUPLET_TRACE ?? '') !== '',
    print: (text) => void process.stdout.write(`${text}\n`),
    say: (text) => void process.stderr.write(`${text}\n`),
    input: standardInput,
  });
}

async function standardInput(): Promise<string | undefined> {
  if (process.stdin.isTTY) return undefined;
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8');
}

/** `couplet families | head -1` closes our output early; that is no fault. */
function whenReaderLeft(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error;
}
