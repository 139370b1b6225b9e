import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { couplet, emptyFolder } from './run-couplet.ts';

const MAKE = ['sheet', '--seed', 'swift', '--questions', '2', '--name', 'copies'];

describe('copies on request', () => {
  it('stand beside the two sheets and are made again with them', async () => {
    const out = emptyFolder();
    const { status, stdout } = await couplet([
      ...MAKE,
      '--data',
      '--teacher',
      '--solutions',
      '--key',
      '--feedback',
      '--out',
      out,
    ]);
    expect(status).toBe(0);
    const names = [
      'questions.pdf',
      'mark-scheme.pdf',
      'data-page.pdf',
      'teacher-copy.pdf',
      'solutions.pdf',
      'answer-key.pdf',
      'feedback.pdf',
      'record.json',
    ];
    expect(stdout.trim().split('\n')).toEqual(names.map((name) => join(out, 'copies', name)));
    const again = await couplet(['again', join(out, 'copies'), '--out', join(out, 'again')]);
    expect(again.status).toBe(0);
    for (const name of names) {
      expect(readFileSync(join(out, 'again', 'copies', name)).equals(readFileSync(join(out, 'copies', name))), name).toBe(true);
    }
  });

  it('come in larger print and on tinted paper with the same questions', async () => {
    const out = emptyFolder();
    await couplet([...MAKE, '--print', 'large', '--tint', 'cream', '--out', out]);
    const large = JSON.parse((await couplet(['inspect', join(out, 'copies', 'questions.pdf'), '--json'])).stdout) as {
      smallest: { size: number };
    };
    expect(large.smallest.size).toBeGreaterThanOrEqual(16);
  });
});

describe('inspecting a file', () => {
  it('finds nothing wrong with what was just printed, and reads it aloud', async () => {
    const out = emptyFolder();
    await couplet([...MAKE, '--out', out]);
    const file = join(out, 'copies', 'questions.pdf');
    const { status, stdout } = await couplet(['inspect', file]);
    expect(status).toBe(0);
    expect(stdout).toContain('nothing wrong');
    expect(stdout).toContain('all embedded');
    expect((await couplet(['inspect', file, '--aloud'])).stdout).toContain('Question 1');
  });

  it('says so when a file is no PDF or is not there', async () => {
    const out = emptyFolder();
    writeFileSync(join(out, 'letter.pdf'), 'Dear reader');
    const other = await couplet(['inspect', join(out, 'letter.pdf')]);
    expect([other.status, other.stdout]).toEqual([2, '']);
    const missing = await couplet(['inspect', join(out, 'none.pdf')]);
    expect(missing.status).toBe(2);
    expect(missing.stderr).toContain('no such file');
  });
});
