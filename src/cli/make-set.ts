import { join } from 'node:path';
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
import { printPdf } from '../printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS, type Settings } from '../printers/pdf/settings.ts';
import type { Desk } from './desk.ts';
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

/** A finished set, not yet written. */
export interface MadeSet {
  readonly paper: Paper;
  readonly files: FileSet;
}

/** Makes the set that a request asks for. */
export function makeSet(request: SheetRequest, size: Settings['paper'], own: Own, desk: Desk): MadeSet {
  return withProgress((progress) => {
    const { tables, wording } = read(own, desk);
    const { unit, count } = request.length;
    const paper = makePaper(request, tables, wording, desk.version, (done) =>
      unit === 'questions' ? progress.at('Making questions', done, count) : progress.at('Making questions', done),
    );
    const page = { ...DEFAULT_SETTINGS, paper: size };
    return { paper, files: print(paper, page, tables, wording, desk, progress) };
  });
}

/** Makes a set whose paper is built in another way than by choosing: from labels, or from another paper. */
export function makeSetOf(build: (means: Means) => Paper, page: Settings, own: Own, desk: Desk): MadeSet {
  return withProgress((progress) => {
    const { tables, wording } = read(own, desk);
    const paper = build({ tables, wording, version: desk.version });
    return { paper, files: print(paper, page, tables, wording, desk, progress) };
  });
}

/** Makes one file of candidates to choose from. */
export function makeList(request: SheetRequest, page: Settings, own: Own, desk: Desk): MadeSet {
  return withProgress((progress) => {
    const { tables, wording } = read(own, desk);
    const paper = makePaper(request, tables, wording, desk.version, (done) => progress.at('Making questions', done));
    const list = printPdf(browseSheet(paper, wording), page, readFonts(desk.root));
    return {
      paper,
      files: new Map<string, Uint8Array | string>([
        ['candidates.pdf', list],
        ['record.json', writtenRecord({ ...recordOf(paper), page })],
      ]),
    };
  });
}

/** Makes the set of a record again, and says in words what differs from when it was first made. */
export function makeSetAgain(record: SetRecord, own: Own, desk: Desk): MadeSet & { readonly differences: readonly string[] } {
  return withProgress((progress) => {
    const { tables, wording } = read(own, desk);
    const { paper, differences } = paperOf(record, tables, wording, desk.version);
    return { paper, differences, files: print(paper, record.page, tables, wording, desk, progress) };
  });
}

function read(own: Own, { root }: Desk): { tables: Tables; wording: Wording } {
  return { tables: readTables(join(root, 'potentials'), own.table), wording: readWording(root, own.wording) };
}

function print(paper: Paper, page: Settings, tables: Tables, wording: Wording, desk: Desk, progress: Progress): FileSet {
  const fonts = readFonts(desk.root);
  progress.at('Printing files', 0, 2);
  const questions = printPdf(questionSheet(paper, wording), page, fonts);
  progress.at('Printing files', 1, 2);
  const scheme = printPdf(markScheme(paper, tables, wording), page, fonts);
  return new Map<string, Uint8Array | string>([
    ['questions.pdf', questions],
    ['mark-scheme.pdf', scheme],
    ['record.json', writtenRecord({ ...recordOf(paper), page })],
  ]);
}
