import { join } from 'node:path';
import { readFonts } from '../../src/cli/read-fonts.ts';
import { readWording } from '../../src/cli/read-wording.ts';
import type { Document } from '../../src/document/document.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import { markScheme } from '../../src/papers/mark-scheme.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import type { SheetRequest } from '../../src/papers/request.ts';
import { readTables } from '../../src/potentials/read-tables.ts';
import type { Fonts } from '../../src/printers/pdf/fonts.ts';
import { layout } from '../../src/printers/pdf/layout.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { floorDocument } from './floor.ts';
import { ms, row, times, warmTime, warmTimes } from './measure.ts';

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
  const make = () => void makePaper({ ...TEN, seed: `bench ${seed++}` }, tables, wording, 'bench');
  const paper = makePaper(TEN, tables, wording, 'bench');
  return [
    rate(
      'reading the tables',
      warmTime(() => void readTables(join(root, 'potentials')), 60),
    ),
    rate('choosing, making and checking a question', warmTime(make, 40) / TEN.length.count),
    ...besideFloor('question sheet of ten', questionSheet(paper, wording), fonts),
    ...besideFloor('its mark scheme', markScheme(paper, tables, wording), fonts),
  ];
}

/** Printing a document, beside a floor that writes the same runs, lines and tags straight with pdfkit, nothing laid out. */
function besideFloor(what: string, document: Document, fonts: Fonts): string[] {
  const laid = layout(document, DEFAULT_SETTINGS, fonts);
  const [whole, floor] = warmTimes(
    60,
    () => void printPdf(document, DEFAULT_SETTINGS, fonts),
    () => void floorDocument(laid, fonts),
  );
  const beside = `${(1000 / whole!).toFixed(0)} a second, ${times(whole!, floor!)} the floor`;
  return [
    row(`printing: ${what} (${laid.pages.length} pages)`, ms(whole!), beside),
    row('  the floor', ms(floor!), `${(1000 / floor!).toFixed(0)} a second`),
  ];
}

function rate(what: string, time: number): string {
  return row(what, ms(time), `${(1000 / time).toFixed(0)} a second`);
}
