import { join } from 'node:path';
import type { Document } from '../document/document.ts';
import type { Wording } from '../document/wording.ts';
import { browseSheet } from '../papers/browse-sheet.ts';
import { type Means, makePaper } from '../papers/make-paper.ts';
import { markScheme } from '../papers/mark-scheme.ts';
import type { Paper } from '../papers/paper.ts';
import { paperOf } from '../papers/paper-of.ts';
import { questionSheet } from '../papers/question-sheet.ts';
import { recordOf } from '../papers/record-of.ts';
import type { SheetRequest } from '../papers/request.ts';
import { readTables } from '../potentials/read-tables.ts';
import type { Tables } from '../potentials/tables.ts';
import { measureOrders } from '../printers/pdf/measure-orders.ts';
import { printPdf } from '../printers/pdf/print-pdf.ts';
import type { Settings } from '../printers/pdf/settings.ts';
import type { Desk } from './desk.ts';
import { EXTRA_FILES, type Extra } from './extra-names.ts';
import { EXTRAS } from './extras.ts';
import { type Progress, withProgress } from './progress.ts';
import { readFonts } from './read-fonts.ts';
import { readWording } from './read-wording.ts';
import { type SetRecord, writtenRecord } from './set-record.ts';
import type { FileSet } from './write-set.ts';

/** A department's own data and words. */
export interface Own {
  /** CSV file of couples */
  readonly table?: string | undefined;
  /** folder of templates */
  readonly wording?: string | undefined;
}

/** How a set looks: its pages, and the copies made beside the two sheets. */
export interface Look {
  readonly page: Settings;
  readonly extras: readonly Extra[];
}

/** A finished set, not yet written. */
export interface MadeSet {
  readonly paper: Paper;
  readonly files: FileSet;
}

/** Makes the set that a request asks for. */
export function makeSet(request: SheetRequest, look: Look, own: Own, desk: Desk): MadeSet {
  return withProgress((progress) => {
    const { tables, wording } = read(own, desk);
    const { unit, count } = request.length;
    const paper = makePaper(request, tables, wording, desk.version, {
      progress: (done) =>
        unit === 'questions' ? progress.at('Making questions', done, count) : progress.at('Making questions', done),
      measure: (sheet) => measureOrders(sheet, { paper: look.page.paper, sides: look.page.sides }, readFonts(desk.root)),
    });
    return { paper, files: print(paper, look, tables, wording, desk, progress) };
  });
}

/** Makes a set whose paper is built in another way than by choosing: from labels, or from another paper. */
export function makeSetOf(build: (means: Means) => Paper, look: Look, own: Own, desk: Desk): MadeSet {
  return withProgress((progress) => {
    const { tables, wording } = read(own, desk);
    const paper = build({ tables, wording, version: desk.version });
    return { paper, files: print(paper, look, tables, wording, desk, progress) };
  });
}

/** Makes one file of candidates to choose from. */
export function makeList(request: SheetRequest, page: Settings, own: Own, desk: Desk): MadeSet {
  return withProgress((progress) => {
    const { tables, wording } = read(own, desk);
    const paper = makePaper(request, tables, wording, desk.version, {
      progress: (done) => progress.at('Making questions', done),
    });
    const list = printPdf(browseSheet(paper, wording), page, readFonts(desk.root));
    return {
      paper,
      files: new Map<string, Uint8Array | string>([
        ['candidates.pdf', list],
        ['record.json', writtenRecord({ ...recordOf(paper), page, extras: [] })],
      ]),
    };
  });
}

/** Makes the set of a record again, and says in words what differs from when it was first made. */
export function makeSetAgain(record: SetRecord, own: Own, desk: Desk): MadeSet & { readonly differences: readonly string[] } {
  return withProgress((progress) => {
    const { tables, wording } = read(own, desk);
    const { paper, differences } = paperOf(record, tables, wording, desk.version);
    return {
      paper,
      differences,
      files: print(paper, { page: record.page, extras: record.extras }, tables, wording, desk, progress),
    };
  });
}

function read(own: Own, { root }: Desk): { tables: Tables; wording: Wording } {
  return { tables: readTables(join(root, 'potentials'), own.table), wording: readWording(root, own.wording) };
}

function print(paper: Paper, { page, extras }: Look, tables: Tables, wording: Wording, desk: Desk, progress: Progress): FileSet {
  const fonts = readFonts(desk.root);
  const documents: [string, () => Document][] = [
    ['questions.pdf', () => questionSheet(paper, wording)],
    ['mark-scheme.pdf', () => markScheme(paper, tables, wording)],
    ...extras.map((extra): [string, () => Document] => [EXTRA_FILES[extra], () => EXTRAS[extra](paper, tables, wording)]),
  ];
  const files = documents.map(([name, make], at): [string, Uint8Array | string] => {
    progress.at('Printing files', at, documents.length);
    return [name, printPdf(make(), page, fonts)];
  });
  return new Map([...files, ['record.json', writtenRecord({ ...recordOf(paper), page, extras })]]);
}
