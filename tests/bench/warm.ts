import { join } from 'node:path';
import { readFonts } from '../../src/cli/read-fonts.ts';
import { readWording } from '../../src/cli/read-wording.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import { markScheme } from '../../src/papers/mark-scheme.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import type { SheetRequest } from '../../src/papers/request.ts';
import { readTables } from '../../src/potentials/read-tables.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { ms, row, warmTime } from './measure.ts';

const TEN: SheetRequest = {
  seed: 'bench',
  name: 'bench',
  level: 'core',
  support: 'open',
  choice: 0,
  units: 'dm',
  families: [],
  topics: [],
  without: [],
  length: { unit: 'questions', count: 10 },
};

/** The stages of a set in a process that has done them before: fonts open, words measured, code compiled. */
export function warm(root: string): string[] {
  const tables = readTables(join(root, 'potentials'));
  const wording = readWording(root);
  const fonts = readFonts(root);
  let seed = 0;
  const make = () => makePaper({ ...TEN, seed: `bench ${seed++}` }, tables, wording, 'bench');
  const paper = makePaper(TEN, tables, wording, 'bench');
  const sheet = questionSheet(paper, wording);
  const scheme = markScheme(paper, tables, wording);
  const stages: [string, () => void, number][] = [
    ['reading the tables', () => void readTables(join(root, 'potentials')), 1],
    ['making and checking a question', make, TEN.length.count],
    ['printing a question sheet of ten questions', () => void printPdf(sheet, DEFAULT_SETTINGS, fonts), 1],
    ['printing its mark scheme', () => void printPdf(scheme, DEFAULT_SETTINGS, fonts), 1],
  ];
  return stages.map(([what, work, count]) => {
    const time = warmTime(work, 60) / count;
    return row(what, ms(time), `${(1000 / time).toFixed(0)} a second`);
  });
}
