import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { PaperRecord } from '../../src/papers/record.ts';
import { couplet, emptyFolder } from './run-couplet.ts';

const LABELS = 'cell-emf:3V8DQQJN,titration-concentration:CCZGFT5C';
const recordIn = (folder: string): PaperRecord => JSON.parse(readFileSync(join(folder, 'record.json'), 'utf8')) as PaperRecord;

/** A set of two chosen questions in a folder of its own. */
async function chosenSet(): Promise<string> {
  const out = emptyFolder();
  const made = await couplet(['sheet', '--codes', LABELS, '--seed', 'chosen', '--name', 'chosen', '--out', out]);
  expect(made.status).toBe(0);
  return join(out, 'chosen');
}

describe('choosing questions', () => {
  it('puts a dozen candidates into one file, each with its label', async () => {
    const out = emptyFolder();
    const { status, stdout } = await couplet([
      'browse',
      '--topic',
      'electrode-potentials',
      '--questions',
      '3',
      '--seed',
      'rook',
      '--out',
      out,
    ]);
    expect(status).toBe(0);
    expect(stdout.split('\n')[0]).toBe(join(out, 'candidates-rook', 'candidates.pdf'));
    expect(recordIn(join(out, 'candidates-rook')).questions).toHaveLength(3);
  });

  it('makes a set of the questions whose labels are given, in that order', async () => {
    const { questions } = recordIn(await chosenSet());
    expect(questions.map(({ family, code }) => `${family}:${code}`).join(',')).toBe(LABELS);
  });

  it('refuses a label that is none, and choosing twice over', async () => {
    const bad = await couplet(['sheet', '--codes', 'cell-emf:123']);
    expect([bad.status, bad.stdout]).toEqual([2, '']);
    expect(bad.stderr).toContain('cell-emf:3V8DQQJN');
    const twice = await couplet(['sheet', '--codes', LABELS, '--questions', '3']);
    expect(twice.status).toBe(2);
    expect(twice.stderr).toContain('--questions');
    const same = await couplet(['sheet', '--codes', 'cell-emf:3V8DQQJN,cell-emf:3V8DQQJN:core', '--out', emptyFolder()]);
    expect(same.status).toBe(2);
    expect(same.stderr).toContain('cannot stand on one sheet');
  });

  it('makes another question of the same marks like one', async () => {
    const out = emptyFolder();
    const { status, stderr } = await couplet(['another', 'cell-emf:3V8DQQJN', '--name', 'other', '--out', out]);
    expect(status).toBe(0);
    const [question] = recordIn(join(out, 'other')).questions;
    expect(question).toMatchObject({ family: 'cell-emf', marks: 5 });
    expect(question!.code).not.toBe('3V8DQQJN');
    expect(stderr).toContain(`cell-emf:${question!.code}`);
  });

  it('swaps one question of a set and leaves the rest', async () => {
    const set = await chosenSet();
    const out = emptyFolder();
    expect((await couplet(['swap', set, '2', '--out', out])).status).toBe(0);
    const [before, after] = [recordIn(set), recordIn(join(out, 'chosen'))];
    expect(after.questions[0]).toEqual(before.questions[0]);
    expect(after.questions[1]!.code).not.toBe(before.questions[1]!.code);
    expect(after.questions[1]!.marks).toBe(before.questions[1]!.marks);
    expect(after.marks).toBe(before.marks);
  });

  it('says which numbers a set has', async () => {
    const { status, stderr } = await couplet(['swap', await chosenSet(), '9', '--out', emptyFolder()]);
    expect(status).toBe(2);
    expect(stderr).toContain('from 1 to 2');
  });

  it('tells what a sample of a family shows', async () => {
    const { status, stdout } = await couplet(['families', 'cell-emf', '--sample', '20', '--check', '--json']);
    expect(status).toBe(0);
    const sample = JSON.parse(stdout) as Record<string, unknown>;
    expect(sample).toMatchObject({ id: 'cell-emf', sampled: 20, failures: [] });
    expect(Object.keys(sample)).toEqual([
      'id',
      'sampled',
      'failures',
      'warnings',
      'distinct',
      'misconceptions',
      'meanMarks',
      'meanMinutes',
    ]);
  });
});
