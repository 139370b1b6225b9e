import { execFile } from 'node:child_process';
import { cpSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { couplet, emptyFolder, launcher, root, withoutProgress } from './run-couplet.ts';

describe('a package that is damaged', () => {
  let broken: string;
  let program: string;
  beforeAll(() => {
    broken = emptyFolder();
    program = join(broken, 'src/cli/couplet.mjs');
    mkdirSync(join(broken, 'src/cli'), { recursive: true });
    cpSync(launcher, program);
  });

  it('says so when it was not built', async () => {
    const { status, stdout, stderr } = await couplet(['--help'], broken, {}, program);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain('couplet: expected the compiled program, found none; run `npm run build` in ');
  });

  it('reports a fault of its own with status 1, version, command and seed, and no trace', async () => {
    cpSync(join(root, '.build'), join(broken, '.build'), { recursive: true });
    cpSync(join(root, 'potentials'), join(broken, 'potentials'), { recursive: true });
    const { status, stdout, stderr } = await couplet(['sheet', '--seed', 'oh no'], broken, {}, program);
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toMatch(/^couplet: this is a fault of couplet, not of what you gave it: ENOENT/);
    expect(stderr).toMatch(/\n {2}version: couplet \d+\.\d+\.\d+, Node \d+/);
    expect(stderr).toContain("\n  command: couplet sheet --seed 'oh no'\n  seed: 'oh no'\n");
    expect(stderr).not.toMatch(/\n\s+at /);
    expect((await couplet(['sheet', '--seed', 'x'], broken, { COUPLET_TRACE: '1' }, program)).stderr).toMatch(/\n\s+at /);
  });
});

describe('a reader who leaves early', () => {
  it('is no fault', async () => {
    const command = '{ "$0" "$1" families --json; echo "status $?" >&2; } | true';
    const stderr = await new Promise<string>((done) =>
      execFile('bash', ['-c', command, process.execPath, launcher], { cwd: root }, (_error, _stdout, text) => done(text)),
    );
    expect(withoutProgress(stderr)).toBe('status 0\n');
  });
});
