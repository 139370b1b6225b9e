import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { allCommands, COMMANDS as BY_NAME } from '../../src/cli/commands/index.ts';
import { couplet, launcher, root } from './run-couplet.ts';

/** To renew a page that was changed on purpose: `npx couplet sheet --help > tests/cli/golden/sheet.txt`. */
const golden = (name: string) => readFileSync(join(root, 'tests/cli/golden', `${name}.txt`), 'utf8');

const COMMANDS = await allCommands();

describe('help', () => {
  it('knows each command by its name', () => {
    expect([...BY_NAME.keys()]).toEqual(COMMANDS.map(({ name }) => name));
  });

  it('lists the commands', async () => {
    expect(await couplet(['--help'])).toEqual({ status: 0, stdout: golden('couplet'), stderr: '' });
  });

  it.each(COMMANDS.map(({ name }) => name))('has a page for %s', async (name) => {
    expect(await couplet([name, '--help'])).toEqual({ status: 0, stdout: golden(name), stderr: '' });
  });

  it('has no page for what is no command', () => {
    const pages = readdirSync(join(root, 'tests/cli/golden')).map((file) => file.replace(/\.txt$/, ''));
    expect(pages.sort()).toEqual(['couplet', ...COMMANDS.map(({ name }) => name)].sort());
  });

  it('is the same in every language, terminal and place', async () => {
    const env = { LANG: 'de_DE.UTF-8', LC_ALL: 'fr_FR.UTF-8', COLUMNS: '40', TZ: 'Asia/Tokyo' };
    expect((await couplet(['sheet', '--help'], '/', env)).stdout).toBe(golden('sheet'));
  });

  it('fits into 100 columns', () => {
    const lines = ['couplet', ...COMMANDS.map(({ name }) => name)].flatMap((name) => golden(name).split('\n'));
    expect(lines.filter((line) => [...line].length > 100)).toEqual([]);
  });

  it('stands on standard error, with status 2, when nothing was asked for', async () => {
    expect(await couplet([])).toEqual({ status: 2, stdout: '', stderr: golden('couplet') });
  });

  it('shows one example of every command that names the command', () => {
    for (const { name, example } of COMMANDS) expect(example.line).toMatch(new RegExp(`^couplet ${name}\\b`));
  });
});

describe('the launcher', () => {
  it('is a program of its own', () => {
    expect(execFileSync(launcher, ['--version'], { encoding: 'utf8' })).toBe(`${manifest.version}\n`);
  });

  it('is what package.json calls couplet', () => {
    expect(join(root, manifest.bin.couplet)).toBe(launcher);
  });
});

const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string; bin: { couplet: string } };
