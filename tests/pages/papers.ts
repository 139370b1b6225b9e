import { readFonts } from '../../src/cli/read-fonts.ts';
import { readWording } from '../../src/cli/read-wording.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import type { Paper } from '../../src/papers/paper.ts';
import type { SheetRequest } from '../../src/papers/request.ts';
import { readTables } from '../../src/potentials/read-tables.ts';
import { inProject } from '../support/data.ts';

export const root = inProject('');
export const tables = readTables(inProject('potentials'));
export const wording = readWording(root);
export const fonts = readFonts(root);

/** A request with nothing special about it. */
export const PLAIN: SheetRequest = {
  seed: 'pages',
  name: 'pages',
  level: 'core',
  support: 'open',
  choice: 0,
  units: 'dm',
  families: [],
  topics: [],
  without: [],
  length: { unit: 'questions', count: 4 },
};

export function paperOf(more: Partial<SheetRequest>): Paper {
  return makePaper({ ...PLAIN, ...more }, tables, wording, 'pages');
}
