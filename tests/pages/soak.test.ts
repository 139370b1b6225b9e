import { describe, expect, it } from 'vitest';
import { EXTRA_NAMES } from '../../src/cli/extra-names.ts';
import { EXTRAS } from '../../src/cli/extras.ts';
import { readFonts } from '../../src/cli/read-fonts.ts';
import { readWording } from '../../src/cli/read-wording.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import { markScheme } from '../../src/papers/mark-scheme.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import type { SheetRequest } from '../../src/papers/request.ts';
import { readTables } from '../../src/potentials/read-tables.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import type { Print } from '../../src/printers/pdf/settings.ts';
import { inspect } from '../../src/readers/inspect.ts';

const root = new URL('../..', import.meta.url).pathname;
const tables = readTables(`${root}/potentials`);
const wording = readWording(root);
const fonts = readFonts(root);

/** Seeds looked at in each print: few by default, many with COUPLET_FULL=1 (soak). */
const SEEDS = process.env.COUPLET_FULL ? 60 : 4;
const SUPPORTS = ['open', 'prompts', 'completion', 'worked'] as const;

function requestFor(i: number): SheetRequest {
  return {
    seed: `page soak ${i}`,
    name: 'soak',
    level: i % 2 ? 'core' : 'stretch',
    support: SUPPORTS[i % SUPPORTS.length]!,
    choice: [0, 0.3, 1][i % 3]!,
    units: 'dm',
    families: [],
    topics: [],
    without: [],
    length: { unit: 'questions', count: 4 + (i % 4) },
  };
}

describe.each(['standard', 'clear', 'large', '24', '36'] as const)('sheets and schemes in print %s', (print: Print) => {
  it.each(Array.from({ length: SEEDS }, (_, i) => i))('have nothing that an inspection finds, seed %i', (i) => {
    const paper = makePaper(requestFor(i), tables, wording, 'soak');
    for (const document of [questionSheet(paper, wording), markScheme(paper, tables, wording)]) {
      const bytes = printPdf(document, { paper: i % 2 ? 'a4' : 'letter', print, sides: 'both' }, fonts);
      expect(inspect(bytes).faults).toEqual([]);
    }
  });

  it.each(EXTRA_NAMES)(
    'have nothing that an inspection finds in the copy made with --%s, nor in the sheet to fill in',
    (name) => {
      for (let i = 0; i < SEEDS / 4; i++) {
        const paper = makePaper({ ...requestFor(i), seed: `copies ${i}` }, tables, wording, 'soak');
        const settings = { paper: i % 2 ? 'a4' : 'letter', print, sides: 'both' } as const;
        expect(inspect(printPdf(EXTRAS[name](paper, tables, wording), settings, fonts)).faults).toEqual([]);
        expect(inspect(printPdf(questionSheet(paper, wording), { ...settings, fillable: true }, fonts)).faults).toEqual([]);
      }
    },
  );
});
