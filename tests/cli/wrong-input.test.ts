import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { couplet, emptyFolder } from './run-couplet.ts';

/** Command lines with a mistake, and what is said of it on standard error. */
const MISTAKES: readonly (readonly [args: readonly string[], said: string])[] = [
  [['shet'], 'couplet: expected a command first, such as `sheet`, found `shet`; did you mean `sheet`?'],
  [['--seed', 'x'], 'couplet: expected a command first, such as `sheet`, found `--seed`; `couplet --help` lists them'],
  [['sheet', '--constructor', 'x'], 'couplet: expected an option of `couplet sheet`, found `--constructor`'],
  [['--__proto__'], 'couplet: expected a command first, such as `sheet`, found `--__proto__`'],
  [
    ['sheet', '--sede', 'x'],
    'couplet: expected an option of `couplet sheet`, found `--sede`; did you mean `--seed` or `--sides`?',
  ],
  [['sheet', '--no-json'], 'couplet: expected an option of `couplet sheet`, found `--no-json`'],
  [['sheet', '-s', 'x'], 'couplet: expected an option of `couplet sheet`, found `-s`; `couplet sheet --help` lists them'],
  [['sheet', '--seed'], 'couplet: expected a value after `--seed`; a value that starts with a dash is written `--seed=-…`'],
  [['sheet', '--seed', '--json'], 'couplet: expected a value after `--seed`'],
  [['sheet', '--seed='], 'couplet: expected a value after `--seed`'],
  [['sheet', '--seed', 'a', '--seed', 'b'], 'couplet: expected `--seed` once, found it 2 times'],
  [['sheet', 'redox'], 'couplet: expected only options after `couplet sheet`, found `redox` as well'],
  [
    ['sheet', '--level', 'cor'],
    'after `--level`, expected core or stretch, found `cor`; did you mean `core`?\n  --level cor\n          ^^^\n',
  ],
  [['sheet', '--support', 'full'], 'after `--support`, expected open, prompts, completion or worked, found `full`'],
  [['sheet', '--units', 'SI'], 'after `--units`, expected dm or litre, found `SI`'],
  [['sheet', '--page', 'a3'], 'after `--page`, expected a4 or letter, found `a3`'],
  [['sheet', '--topic', 'redox'], 'found `redox`; did you mean `redox-titration`?'],
  [
    ['sheet', '--topic', 'electrode-potentials,titration'],
    'found `titration`; did you mean `redox-titration`?\n  --topic titration\n',
  ],
  [['sheet', '--topic', 'redox-titration,'], 'after `--topic`, expected a word, found `redox-titration,`'],
  [
    ['sheet', '--questions', '2.5'],
    'after `--questions`, expected a whole number from 1 to 9999, found `2.5`\n  --questions 2.5\n              ^^^\n',
  ],
  [['sheet', '--questions', '0'], 'after `--questions`, expected a whole number from 1 to 9999, found `0`'],
  [['sheet', '--marks', '-3'], 'after `--marks`, expected a whole number from 1 to 9999, found `-3`'],
  [['sheet', '--minutes', '1e3'], 'after `--minutes`, expected a whole number from 1 to 9999, found `1e3`'],
  [
    ['sheet', '--choice', '40%'],
    'after `--choice`, expected a share from 0 to 1, such as 0.25, found `40%`\n  --choice 40%\n           ^^^\n',
  ],
  [['sheet', '--choice', '1.5'], 'after `--choice`, expected a share from 0 to 1'],
  [
    ['sheet', '--marks', '9', '--minutes', '9'],
    'couplet: expected one of --questions, --marks and --minutes, found --marks and --minutes',
  ],
  [['sheet', '--name', '../up'], 'after `--name`, expected a name that can also be a folder'],
  [['sheet', '--name', 'con'], 'after `--name`, expected a name that can also be a folder'],
  [['sheet', '--name', 'a/b'], 'after `--name`, expected a name that can also be a folder'],
  [['sheet', '--seed', 'a\u0007b'], 'after `--seed`, expected printable characters (U+0007 is none), found `a\\x07b`'],
  [['sheet', '--title', '\ue001'], 'after `--title`, expected printable characters (U+E001 is none)'],
  [['sheet', '--title', 'x'.repeat(121)], 'after `--title`, expected at most 120 characters'],
  [['again'], 'couplet: expected RECORD after `couplet again`: the `record.json` of the set, or its folder'],
  [['again', 'a', 'b'], 'couplet: expected one RECORD after `couplet again`, found `b` as well'],
  [
    ['again', 'nowhere.json'],
    'couplet: expected to read the record `nowhere.json`, but there is no such file or folder (ENOENT)',
  ],
  [['families', 'a', 'b'], 'couplet: expected one ID after `couplet families`, found `b` as well'],
];

describe('a mistake on the command line', () => {
  it.each(MISTAKES)('%j is told', async (args, said) => {
    const folder = emptyFolder();
    const { status, stdout, stderr } = await couplet(args, folder);
    expect(stderr).toContain(said);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).not.toMatch(/\n\s+at |node:|\.js\b/);
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe('a record that is none', () => {
  it('is named with the line and column where reading stopped', async () => {
    const folder = emptyFolder();
    writeFileSync(join(folder, 'record.json'), '{\n  "kind": "couplet-record"\n  "title": ""\n}\n');
    const { status, stderr } = await couplet(['again', 'record.json'], folder);
    expect({ status, stderr }).toEqual({ status: 2, stderr: 'record.json:3:3: expected JSON\n' });
  });

  it('has all its faults told together', async () => {
    const folder = emptyFolder();
    writeFileSync(join(folder, 'record.json'), '{"kind": "couplet-record", "title": 3}');
    const { status, stderr } = await couplet(['again', '.'], folder);
    expect(status).toBe(2);
    expect(stderr).toContain('record.json: `title`: expected text, found 3\n');
    expect(stderr).toMatch(/\n\d\d faults\n$/);
  });

  it('may not lead out of the folder for results', async () => {
    const folder = emptyFolder();
    mkdirSync(join(folder, 'set'));
    expect((await couplet(['sheet', '--name', 'set', '--out', 'made', '--seed', 'x'], folder)).status).toBe(0);
    const record = JSON.parse(readFileSync(join(folder, 'made/set/record.json'), 'utf8')) as { request: { name: string } };
    record.request.name = '../../elsewhere';
    writeFileSync(join(folder, 'set/record.json'), JSON.stringify(record));
    const { status, stderr } = await couplet(['again', 'set'], folder);
    expect(status).toBe(2);
    expect(stderr).toContain('expected a name that can also be a folder');
  });
});
