import { execFile } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { couplet, emptyFolder, launcher, type Run, withoutProgress } from './run-couplet.ts';

const NAMES = ['mark-scheme.pdf', 'questions.pdf', 'record.json'];
/** A short sheet, the same in every test. */
const SHORT = ['sheet', '--family', 'cell-emf', '--questions', '2', '--seed', 'marlow', '--name', 'first'];

const bytesIn = (folder: string) =>
  Object.fromEntries(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name)).toString('base64')]));

describe('couplet sheet', () => {
  let top: string;
  let run: Run;
  let folder: string;
  beforeAll(async () => {
    top = emptyFolder();
    run = await couplet(SHORT, top);
    folder = join(top, 'out/first');
  });

  it('writes a set and prints its paths, nothing else, on standard output', () => {
    expect(run.status).toBe(0);
    expect(run.stdout).toBe('out/first/questions.pdf\nout/first/mark-scheme.pdf\nout/first/record.json\n');
    expect(readdirSync(folder).sort()).toEqual(NAMES);
    expect(readdirSync(join(top, 'out'))).toEqual(['first']);
    for (const name of NAMES.slice(0, 2)) expect(readFileSync(join(folder, name)).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('tells length and seed on standard error', () => {
    expect(run.stderr).toMatch(/^2 questions, \d+ marks, \d+ minutes \(\d+ with extra time\); seed: marlow\n$/);
  });

  it('makes the same bytes in another folder, language, time zone and terminal', async () => {
    const elsewhere = emptyFolder();
    const env = { LANG: 'de_DE.UTF-8', TZ: 'Pacific/Auckland', COLUMNS: '30' };
    expect((await couplet([...SHORT, '--out', 'other'], elsewhere, env)).status).toBe(0);
    expect(bytesIn(join(elsewhere, 'other/first'))).toEqual(bytesIn(folder));
  });

  it('makes others from another seed', async () => {
    const elsewhere = emptyFolder();
    await couplet(
      [...SHORT, '--out', '.'].map((word) => (word === 'marlow' ? 'henley' : word)),
      elsewhere,
    );
    expect(readFileSync(join(elsewhere, 'first/questions.pdf')).equals(readFileSync(join(folder, 'questions.pdf')))).toBe(false);
  });

  it('leaves a set that is there alone', async () => {
    const before = [bytesIn(folder), statSync(join(folder, 'questions.pdf')).mtimeMs];
    const { status, stdout, stderr } = await couplet(SHORT, top);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toBe(
      'couplet: expected a new folder, found `out/first` already there; nothing was touched (another --name, or --replace)\n',
    );
    expect([bytesIn(folder), statSync(join(folder, 'questions.pdf')).mtimeMs]).toEqual(before);
  });

  it('replaces it when told to, and keeps what else lies in the folder', async () => {
    const elsewhere = emptyFolder();
    await couplet(SHORT, elsewhere);
    writeFileSync(join(elsewhere, 'out/first/notes.txt'), 'mine');
    const { status } = await couplet(
      ['sheet', '--family', 'cell-emf', '--questions', '1', '--seed', 'x', '--name', 'first', '--replace'],
      elsewhere,
    );
    expect(status).toBe(0);
    expect(readdirSync(join(elsewhere, 'out/first')).sort()).toEqual([...NAMES, 'notes.txt'].sort());
    const record = JSON.parse(readFileSync(join(elsewhere, 'out/first/record.json'), 'utf8')) as { questions: unknown[] };
    expect(record.questions).toHaveLength(1);
  });

  it('leaves no copy of the replaced set behind, since none would match', async () => {
    const elsewhere = emptyFolder();
    await couplet([...SHORT, '--teacher', '--solutions', '--key', '--feedback'], elsewhere);
    expect(readdirSync(join(elsewhere, 'out/first'))).toHaveLength(7);
    expect((await couplet([...SHORT, '--replace'], elsewhere)).status).toBe(0);
    expect(readdirSync(join(elsewhere, 'out/first')).sort()).toEqual(NAMES);
  });

  it.each([{ holds: 'photo.jpg' }, { holds: 'record.json' }])(
    'does not replace a folder of $holds, even when told to',
    async ({ holds }) => {
      const elsewhere = emptyFolder();
      mkdirSync(join(elsewhere, 'out/first'), { recursive: true });
      writeFileSync(join(elsewhere, 'out/first', holds), '{"kind": "music"}');
      const { status, stderr } = await couplet([...SHORT, '--replace'], elsewhere);
      expect(status).toBe(2);
      expect(stderr).toBe(
        'couplet: expected a set that couplet may replace in `out/first`, found something else there; nothing was touched\n',
      );
      expect(readdirSync(join(elsewhere, 'out/first'))).toEqual([holds]);
    },
  );

  it('prints one JSON object when asked to', async () => {
    const { stdout } = await couplet([...SHORT, '--json', '--out', 'json'], top);
    expect(JSON.parse(stdout)).toMatchObject({
      folder: 'json/first',
      files: ['json/first/questions.pdf', 'json/first/mark-scheme.pdf', 'json/first/record.json'],
      seed: 'marlow',
      questions: [
        { number: 1, family: 'cell-emf', code: expect.stringMatching(/^[0-9A-Z]{8}$/) },
        { number: 2, family: 'cell-emf' },
      ],
    });
  });

  it('finds a seed when none is given, and shows one that makes the same again', async () => {
    const elsewhere = emptyFolder();
    const { stderr } = await couplet(['sheet', '--family', 'cell-emf', '--questions', '1', '--out', 'a'], elsewhere);
    const seed = /seed: (\w+)\n$/.exec(stderr)![1]!;
    await couplet(['sheet', '--family', 'cell-emf', '--questions', '1', '--out', 'b', '--seed', seed], elsewhere);
    expect(bytesIn(join(elsewhere, 'a', seed))).toEqual(bytesIn(join(elsewhere, 'b', seed)));
  });

  it('is set on US Letter when asked to', async () => {
    await couplet([...SHORT, '--page', 'letter', '--out', 'letter'], top);
    expect(readFileSync(join(top, 'letter/first/questions.pdf'), 'latin1')).toContain('/MediaBox [0 0 612 792]');
    expect(readFileSync(join(folder, 'questions.pdf'), 'latin1')).toMatch(/\/MediaBox \[0 0 595\.2\d+ 841\.8\d+\]/);
  });

  it.each([
    [['--family', 'cell-emff'], 'did you mean `cell-emf`?'],
    [['--without', 'cel-emf'], 'did you mean `cell-emf`?'],
    [['--questions', '9999'], 'expected between 1 and 100 questions, found 9999'],
    [['--table', 'nowhere.csv'], 'nowhere.csv'],
    [
      ['--wording', 'nowhere'],
      'couplet: expected to read templates in the folder `nowhere`, but there is no such file or folder (ENOENT)',
    ],
    [['--wording', '.'], 'couplet: expected templates (files that end in .hbs) in the folder `.`, found none'],
  ])('with %j says what can be had', async (args, said) => {
    const elsewhere = emptyFolder();
    const { status, stdout, stderr } = await couplet(['sheet', '--seed', 'x', ...args], elsewhere);
    expect(stderr).toContain(said);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(readdirSync(elsewhere)).toEqual([]);
  });
});

describe('a place that cannot be written to', () => {
  it('is named with the reason', async () => {
    const top = emptyFolder();
    writeFileSync(join(top, 'out'), 'a file');
    const { status, stderr } = await couplet(SHORT, top);
    expect(status).toBe(2);
    expect(stderr).toMatch(/^couplet: expected to (make|write into) the folder `out`, but .+ \(E[A-Z]+\)\n$/);
    expect(readFileSync(join(top, 'out'), 'utf8')).toBe('a file');
  });

  it('is named also where the system makes no folders at all', async () => {
    const { status, stderr } = await couplet([...SHORT, '--out', '/proc/couplet/deep'], emptyFolder());
    expect(status).toBe(2);
    expect(stderr).toContain(
      'couplet: expected to make the folder `/proc/couplet/deep`, but there is no such file or folder (ENOENT)\n',
    );
  });

  it('holds no half of a set when room runs out', async () => {
    const top = emptyFolder();
    mkdirSync(join(top, 'kept'));
    // a limit on the size of files stands for a disk that fills up within the first PDF
    const command = `ulimit -f 8; exec "$0" "$@"`;
    const args = ['-c', command, process.execPath, launcher, ...SHORT, '--out', 'kept/new/deep'];
    const { status, stderr } = await new Promise<{ status: unknown; stderr: string }>((done) =>
      execFile('bash', args, { cwd: top }, (error, _stdout, stderr) =>
        done({ status: error?.code, stderr: withoutProgress(stderr) }),
      ),
    );
    expect(stderr).toBe(
      'couplet: expected to write into the folder `kept/new/deep`, but the file would be larger than the system allows (EFBIG)\n',
    );
    expect(status).toBe(2);
    expect(readdirSync(join(top, 'kept'))).toEqual([]);
  });
});

describe('couplet again', () => {
  it('makes the same bytes, and says that nothing differs', async () => {
    const top = emptyFolder();
    await couplet([...SHORT, '--page', 'letter', '--title', 'Set α'], top);
    const { status, stdout, stderr } = await couplet(['again', 'out/first/record.json'], top);
    expect(status).toBe(0);
    expect(stdout.split('\n')[0]).toBe('out/again/first/questions.pdf');
    expect(bytesIn(join(top, 'out/again/first'))).toEqual(bytesIn(join(top, 'out/first')));
    expect(stderr).toContain('Version, table and wording are those of the record.\n');
    expect(stderr).toContain('questions.pdf: the same, byte for byte, as out/first/questions.pdf\n');
  });

  it('says what differs when version, table or wording do', async () => {
    const top = emptyFolder();
    await couplet(SHORT, top);
    const file = join(top, 'out/first/record.json');
    const record = JSON.parse(readFileSync(file, 'utf8')) as {
      made: { version: string; wording: string; table: { name: string; digest: string } };
    };
    Object.assign(record.made, {
      version: '0.0.1',
      wording: 'ffffffffffff',
      table: { name: 'an older table', digest: '000000000000' },
    });
    writeFileSync(file, JSON.stringify(record));
    const { status, stderr } = await couplet(['again', 'out/first'], top);
    expect(status).toBe(0);
    expect(stderr).toContain('Not all is as it was when the record was made:\n');
    for (const was of ['0.0.1', 'ffffffffffff', 'an older table (000000000000)']) expect(stderr).toContain(was);
    expect(stderr).toContain('record.json: NOT the same, byte for byte, as out/first/record.json');
  });
});

describe('couplet demo', () => {
  it('makes the set of an invented college, also when it is there already', async () => {
    const top = emptyFolder();
    const first = await couplet(['demo'], top);
    const second = await couplet(['demo'], top);
    expect([first.status, second.status]).toEqual([0, 0]);
    expect(first.stderr).toContain('Quillmere College is invented');
    expect(first.stderr).toContain('Make your own:  npx couplet sheet ');
    expect(second.stdout).toBe(first.stdout);
    expect(readdirSync(join(top, 'out/quillmere-practice-week')).sort()).toEqual(NAMES);
  });

  it("does not touch a folder of that name that is somebody's", async () => {
    const top = emptyFolder();
    await couplet([...SHORT.slice(0, -1), 'quillmere-practice-week'], top);
    const before = bytesIn(join(top, 'out/quillmere-practice-week'));
    expect((await couplet(['demo'], top)).status).toBe(2);
    expect(bytesIn(join(top, 'out/quillmere-practice-week'))).toEqual(before);
    expect(existsSync(join(top, 'out/.couplet'))).toBe(false);
  });
});
