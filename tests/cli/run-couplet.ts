import { execFile } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const root = new URL('../..', import.meta.url).pathname;
export const launcher = join(root, 'src/cli/couplet.mjs');

export interface Run {
  readonly status: number;
  readonly stdout: string;
  /** without lines of progress, which a busy machine may add */
  readonly stderr: string;
}

/** Runs the program as a program. @param input what stands on its standard input */
export function couplet(
  args: readonly string[],
  cwd: string = root,
  env: Record<string, string> = {},
  program = launcher,
  input = '',
): Promise<Run> {
  return new Promise((done) => {
    const child = execFile(
      process.execPath,
      [program, ...args],
      { cwd, env: { ...process.env, ...env } },
      (error, stdout, stderr) => {
        done({
          status: error === null ? 0 : typeof error.code === 'number' ? error.code : -1,
          stdout,
          stderr: withoutProgress(stderr),
        });
      },
    );
    child.stdin?.on('error', () => undefined).end(input);
  });
}

export function withoutProgress(said: string): string {
  return said.replace(/^(Making|Printing|Trying) \w+: \d+( of \d+)?\n/gm, '');
}

/** An empty folder of its own for a test. */
export function emptyFolder(): string {
  return mkdtempSync(join(tmpdir(), 'couplet-test-'));
}
