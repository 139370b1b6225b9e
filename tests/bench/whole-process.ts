import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { mb, ms, peakMemory, row, times, wallTime } from './measure.ts';

/** Whole processes beside a Node program that does nothing: start-up, and a set of ten questions with both PDFs. */
export function wholeProcess(root: string): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'couplet-bench-'));
  try {
    return measured(join(root, 'src/cli/couplet.mjs'), folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function measured(launcher: string, folder: string): string[] {
  const empty = join(folder, 'empty.mjs');
  writeFileSync(empty, '');
  const ten = [launcher, 'sheet', '--questions', '10', '--seed', 'bench', '--out', folder, '--replace'];
  const one = [launcher, 'sheet', '--questions', '2', '--seed', 'bench', '--out', folder, '--replace'];
  const base = { time: wallTime([empty], 15), memory: peakMemory([empty], 5) };
  const rows = [row('empty Node program', ms(base.time)), row('', mb(base.memory))];
  const cases: [string, string[], number][] = [
    ['couplet --help', [launcher, '--help'], 15],
    ['couplet sheet --help', [launcher, 'sheet', '--help'], 15],
    ['couplet families', [launcher, 'families'], 7],
    ['two questions, both PDFs', one, 9],
    ['ten questions, both PDFs', ten, 9],
  ];
  for (const [what, args, count] of cases) {
    const [time, memory] = [wallTime(args, count), peakMemory(args, 3)];
    rows.push(row(what, ms(time), times(time, base.time)), row('', mb(memory), times(memory, base.memory)));
  }
  return rows;
}
