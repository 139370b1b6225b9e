import { run as runCouplet } from '../../src/cli/run.ts';
import { type Run, root } from './run-couplet.ts';

/**
 * Does what a command line asks for, in this process, through the entry that the launcher uses.
 * @param input text of standard input; a keyboard when absent
 */
export async function inProcess(args: readonly string[], input?: string): Promise<Run> {
  const [printed, said] = [[] as string[], [] as string[]];
  const status = await runCouplet(args, {
    root,
    version: '9.9.9',
    trace: false,
    print: (text) => void printed.push(`${text}\n`),
    say: (text) => void said.push(`${text}\n`),
    input: async () => input,
  });
  return { status, stdout: printed.join(''), stderr: said.join('') };
}

/** The JSON that a command prints. */
export async function jsonOf(...args: readonly string[]) {
  const { status, stdout, stderr } = await inProcess([...args, '--json']);
  if (status !== 0) throw new Error(`couplet ${args.join(' ')} ended with status ${status}: ${stderr}`);
  return JSON.parse(stdout);
}

/** The text that a command prints. */
export async function textOf(...args: readonly string[]): Promise<string> {
  const { status, stdout, stderr } = await inProcess(args);
  if (status !== 0) throw new Error(`couplet ${args.join(' ')} ended with status ${status}: ${stderr}`);
  return stdout;
}
