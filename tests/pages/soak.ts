import { afterAll, describe, expect, it } from 'vitest';
import { EXTRA_NAMES } from '../../src/cli/extra-names.ts';
import { EXTRAS } from '../../src/cli/extras.ts';
import { isChoice } from '../../src/papers/candidates.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import { markScheme } from '../../src/papers/mark-scheme.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import type { SheetRequest } from '../../src/papers/request.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS, measure, type Print } from '../../src/printers/pdf/settings.ts';
import { FAMILIES } from '../../src/questions/families/index.ts';
import { inspect } from '../../src/readers/inspect.ts';
import { fonts, tables, wording } from './papers.ts';

/** Seeds looked at in each print: 300 papers over five prints where there is time, in CI and with COUPLET_FULL=1; else a few. */
const SEEDS = process.env.CI || process.env.COUPLET_FULL ? 60 : 4;
const SUPPORTS = ['open', 'prompts', 'completion', 'worked'] as const;

function requestFor(i: number): SheetRequest {
  return {
    seed: `page soak ${i}`,
    name: 'soak',
    level: Math.floor(i / SUPPORTS.length) % 2 ? 'core' : 'stretch',
    support: SUPPORTS[i % SUPPORTS.length]!,
    choice: [0, 0.3, 1][i % 3]!,
    units: 'dm',
    families: [],
    topics: [],
    without: [],
    length: { unit: 'questions', count: 4 + (i % 4) },
  };
}

/** Sheets, schemes and copies of many seeds in one print, each looked over by the inspector. One test file a print, so that two run at once. */
export function soak(print: Print): void {
  const seen = {
    papers: 0,
    pages: 0,
    runs: 0,
    faults: 0,
    glyph: Number.POSITIVE_INFINITY,
    forms: new Set<string>(),
    supports: new Set<string>(),
  };

  const look = (bytes: Uint8Array): void => {
    const { faults, pages, smallest } = inspect(bytes);
    seen.pages += pages.length;
    seen.runs += pages.reduce((sum, { runs }) => sum + runs, 0);
    seen.faults += faults.length;
    seen.glyph = Math.min(seen.glyph, smallest?.size ?? seen.glyph);
    expect(faults).toEqual([]);
  };

  describe(`sheets and schemes in print ${print}`, () => {
    it.each(Array.from({ length: SEEDS }, (_, i) => i))('have nothing that an inspection finds, seed %i', (i) => {
      const paper = makePaper(requestFor(i), tables, wording, 'soak');
      seen.papers += 1;
      seen.supports.add(paper.request.support);
      for (const question of paper.questions) seen.forms.add(`${question.family} ${isChoice(question) ? 'choice' : 'written'}`);
      for (const document of [questionSheet(paper, wording), markScheme(paper, tables, wording)])
        look(printPdf(document, { paper: i % 2 ? 'a4' : 'letter', print, sides: 'both' }, fonts));
    });

    it.each(EXTRA_NAMES)('have nothing that it finds in the copy made with --%s, nor in the sheet to fill in', (name) => {
      for (let i = 0; i < SEEDS / 10; i++) {
        const paper = makePaper({ ...requestFor(i), seed: `copies ${i}` }, tables, wording, 'soak');
        const settings = { paper: i % 2 ? 'a4' : 'letter', print, sides: 'both' } as const;
        look(printPdf(EXTRAS[name](paper, tables, wording), settings, fonts));
        look(printPdf(questionSheet(paper, wording), { ...settings, fillable: true }, fonts));
      }
    });

    const every = SEEDS >= 24 ? it : undefined;
    // a few seeds cannot hold every form
    every?.('were of every family, written and choice, with every support', () => {
      const forms = FAMILIES.flatMap(({ id, answering }) => answering.map((each) => `${id} ${each}`));
      expect([...seen.forms].sort()).toEqual(forms.sort());
      expect([...seen.supports].sort()).toEqual([...SUPPORTS].sort());
    });

    it('have no glyph under the least size of the print', () => {
      const { floor } = measure({ ...DEFAULT_SETTINGS, print });
      expect(seen.glyph).toBeGreaterThanOrEqual(floor - 0.01);
    });

    afterAll(() => {
      const { papers, pages, runs, glyph, faults } = seen;
      const of = `${papers} papers, ${pages} pages in all copies, ${runs} runs of text`;
      console.log(`print ${print}: ${of}, smallest glyph ${glyph.toFixed(1)} pt, ${faults} faults`);
    });
  });
}
