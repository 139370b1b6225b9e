import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { paperOf } from '../../src/papers/paper-of.ts';
import { readRecord } from '../../src/papers/read-record.ts';
import { inspect } from '../../src/readers/inspect.ts';
import { COLOURS, saidIn } from '../support/asked-colours.ts';
import { tables, wording } from '../support/data.ts';
import { inProcess, textOf } from './in-process.ts';
import { emptyFolder } from './run-couplet.ts';

const NONE = '--without-colour-recall';
/** Asks for the colours on the way down a ladder of oxidation numbers. */
const LABEL = 'stepwise-reduction:3CYQFR9X';

/** The record in the folder of a set, and the questions that it makes. */
function questionsIn(folder: string) {
  const record = readRecord(readFileSync(join(folder, 'record.json'), 'utf8'), 'record.json');
  return { record, questions: paperOf(record, tables, wording, '9.9.9').paper.questions };
}

/** Labels of the questions in a set whose words ask for a colour or mark one. */
const coloursAsked = (folder: string): string[] =>
  questionsIn(folder).questions.flatMap((question) =>
    COLOURS.test(saidIn(question)) || question.asks.some((fact) => fact.startsWith('colour:'))
      ? [`${question.family}:${question.code}`]
      : [],
  );

const totalIn = (folder: string) => questionsIn(folder).record.marks;

describe('another question without recall of colours', () => {
  it('asks no colour where the usual one does, for the same marks', async () => {
    const out = emptyFolder();
    for (const [name, options] of [
      ['usual', []],
      ['plain', [NONE]],
    ] as const)
      await textOf('another', LABEL, '--name', name, '--out', out, ...options);
    expect(coloursAsked(join(out, 'usual'))).not.toEqual([]);
    expect(coloursAsked(join(out, 'plain'))).toEqual([]);
    expect(totalIn(join(out, 'plain'))).toBe(totalIn(join(out, 'usual')));
    await textOf('sheet', '--codes', LABEL, '--name', 'first', '--out', out);
    expect(totalIn(join(out, 'plain'))).toBe(totalIn(join(out, 'first')));
  });

  it.each([
    'titration-concentration:CCZGFT5C',
    'titration-concentration:CCZGFT5C:stretch',
    'stepwise-reduction:58T07VY8:stretch',
  ])('has the marks of %s', async (label) => {
    const out = emptyFolder();
    await textOf('sheet', '--codes', label, '--name', 'first', '--out', out);
    await textOf('another', label, NONE, '--name', 'plain', '--out', out);
    expect(coloursAsked(join(out, 'plain'))).toEqual([]);
    expect(totalIn(join(out, 'plain'))).toBe(totalIn(join(out, 'first')));
  });

  it('tells that its label does not hold this', async () => {
    const { stderr } = await inProcess(['another', LABEL, NONE, '--units', 'litre', '--out', emptyFolder()]);
    expect(stderr).toContain(`A label does not hold ${NONE} or --units litre: give it to \`couplet sheet --codes\` as well.`);
  });
});

describe('a list of candidates without recall of colours', () => {
  const families = ['stepwise-reduction', 'titration-concentration'].flatMap((id) => ['--family', id]);
  const browse = (out: string, ...options: string[]) =>
    textOf('browse', ...families, '--questions', '6', '--seed', 'rook', '--name', 'list', '--out', out, ...options);

  it('asks no colour, where the usual one does', async () => {
    const [plain, usual] = [emptyFolder(), emptyFolder()];
    await browse(plain, NONE);
    await browse(usual);
    expect(questionsIn(join(plain, 'list')).questions).toHaveLength(6);
    expect(coloursAsked(join(plain, 'list'))).toEqual([]);
    expect(coloursAsked(join(usual, 'list'))).not.toEqual([]);
  });

  it('is set as wide and tinted as it is asked to be', async () => {
    const out = emptyFolder();
    await browse(out, '--print', 'large', '--tint', 'cream', '--sides', 'one');
    const { smallest, faults } = inspect(readFileSync(join(out, 'list', 'candidates.pdf')));
    expect(smallest!.size).toBeGreaterThanOrEqual(16);
    expect(faults).toEqual([]);
    expect(readRecordedPage(join(out, 'list'))).toMatchObject({ print: 'large', tint: 'cream', sides: 'one' });
  });
});

const readRecordedPage = (folder: string): unknown =>
  (JSON.parse(readFileSync(join(folder, 'record.json'), 'utf8')) as { page: unknown }).page;

describe('what a record says', () => {
  const look = ['--print', 'clear', '--tint', 'blue', '--fillable', '--solutions'];

  it('is kept when the set is made again, byte for byte', async () => {
    const out = emptyFolder();
    await textOf('another', LABEL, NONE, ...look, '--title', 'Once more', '--name', 'first', '--out', out);
    await textOf('again', join(out, 'first'), '--out', join(out, 'again'));
    for (const name of ['questions.pdf', 'mark-scheme.pdf', 'solutions.pdf', 'record.json']) {
      const [one, other] = ['first', 'again/first'].map((folder) => readFileSync(join(out, folder, name)));
      expect(one!.equals(other!), name).toBe(true);
    }
  });

  it('is kept when a question of the set is swapped', async () => {
    const out = emptyFolder();
    const labels = [LABEL, 'titration-concentration:CCZGFT5C'].join(',');
    await textOf('sheet', '--codes', labels, NONE, ...look, '--seed', 'rook', '--name', 'first', '--out', out);
    const [before, after] = [join(out, 'first'), join(out, 'swapped', 'first')];
    for (const number of ['1', '2']) {
      await textOf('swap', before, number, '--out', join(out, 'swapped'), '--replace');
      expect(coloursAsked(after)).toEqual([]);
      expect(questionsIn(after).record.request).toEqual(questionsIn(before).record.request);
      expect(questionsIn(after).record.marks).toBe(questionsIn(before).record.marks);
      expect(readRecordedPage(after)).toEqual(readRecordedPage(before));
      expect(inspect(readFileSync(join(after, 'questions.pdf'))).fields.length).toBeGreaterThan(5);
      expect(readFileSync(join(after, 'solutions.pdf')).length).toBeGreaterThan(1000);
    }
  });

  it.each([
    ['"print": "clear"', '"print": "tiny"', '`page.print`: expected standard or clear or large or 24 or 36, found `tiny`'],
    ['"tint": "blue"', '"tint": "red"', '`page.tint`: expected none or cream or blue, found `red`'],
    ['"paper": "a4"', '"paper": "a5"', '`page.paper`: expected a4 or letter, found `a5`'],
    ['"withoutColourRecall": true', '"withoutColourRecall": "yes"', '`request.withoutColourRecall`: expected true or false'],
  ])('is refused where it was changed from %s to %s', async (was, is, said) => {
    const out = emptyFolder();
    await textOf('another', LABEL, NONE, ...look, '--name', 'first', '--out', out);
    const file = join(out, 'first', 'record.json');
    writeFileSync(file, readFileSync(file, 'utf8').replace(was, is));
    const { status, stderr } = await inProcess(['again', file, '--out', join(out, 'again')]);
    expect(status).toBe(2);
    expect(stderr).toContain(said);
  });
});
