import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Document } from '../../src/document/document.ts';
import { markScheme } from '../../src/papers/mark-scheme.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../src/printers/pdf/settings.ts';
import { inProject } from '../support/data.ts';
import { colouredPixels, shareChanged, TOLERANCE } from './compare.ts';
import { SCHEME, SHEET } from './fixture.ts';
import { fonts, paperOf, tables, wording } from './papers.ts';
import { rasterise, readPng } from './rasterise.ts';
import { FONTS } from './test-fonts.ts';

/**
 * Pages as they looked when they were last found good. The rasterisers, pdfjs-dist and @napi-rs/canvas, are pinned to one version in
 * package.json, and every font comes from the file, so that another machine draws the same. After a change that is meant, renew them and look at them:
 * `COUPLET_RENEW=1 npx vitest run --config tests/vitest.config.ts tests/pages/images.test.ts`
 */
const RENEW = process.env.COUPLET_RENEW !== undefined;
const FOLDER = inProject('tests/pages/images');
const DPI = 45;

interface Case {
  readonly name: string;
  readonly document: Document;
  readonly page: number;
  readonly settings?: Partial<Settings>;
}

const CASES: readonly Case[] = [
  ...[1, 2, 3, 4].map((page) => ({ name: `sheet-${page}`, document: SHEET, page })),
  ...[1, 2].map((page) => ({ name: `scheme-${page}`, document: SCHEME, page })),
  { name: 'sheet-letter', document: SHEET, page: 1, settings: { paper: 'letter' } },
  { name: 'sheet-clear', document: SHEET, page: 1, settings: { print: 'clear' } },
  { name: 'sheet-large', document: SHEET, page: 1, settings: { print: 'large' } },
  { name: 'sheet-36', document: SHEET, page: 3, settings: { print: '36' } },
  { name: 'sheet-cream', document: SHEET, page: 2, settings: { tint: 'cream' } },
  { name: 'sheet-fillable', document: SHEET, page: 2, settings: { fillable: true } },
];

describe('pages as they are stored', () => {
  it.each(CASES)('$name looks the same', async ({ name, document, page, settings }) => {
    const bytes = printPdf(document, { ...DEFAULT_SETTINGS, ...settings }, FONTS);
    const [drawn] = await rasterise(bytes, DPI, [page]);
    const file = `${FOLDER}/${name}.png`;
    if (RENEW) {
      mkdirSync(FOLDER, { recursive: true });
      writeFileSync(file, drawn!.png());
    }
    expect(existsSync(file), `${file} is stored`).toBe(true);
    expect(shareChanged(drawn!, await readPng(readFileSync(file)))).toBeLessThan(TOLERANCE);
  });

  it('would be told apart if one letter were missing', async () => {
    const moved: Document = {
      ...SHEET,
      blocks: SHEET.blocks.map((block, at) =>
        at === 0 ? { ...block, title: 'Redox titration and cell' } : block,
      ) as Document['blocks'],
    };
    const [one, other] = await Promise.all(
      [SHEET, moved].map(async (document) => (await rasterise(printPdf(document, DEFAULT_SETTINGS, FONTS), DPI, [1]))[0]!),
    );
    expect(shareChanged(one!, other!)).toBeGreaterThan(TOLERANCE);
    expect(shareChanged(one!, one!)).toBe(0);
  });
});

describe('a page without a tint', () => {
  it('has no coloured pixel, figures and all, in sheets and schemes of every family', async () => {
    const paper = paperOf({ seed: 'grey', length: { unit: 'questions', count: 8 } });
    const files = [SHEET, SCHEME, questionSheet(paper, wording), markScheme(paper, tables, wording)];
    for (const document of files) {
      const rasters = await rasterise(printPdf(document, DEFAULT_SETTINGS, fonts), 30);
      expect(rasters.map(colouredPixels)).toEqual(rasters.map(() => 0));
    }
  });

  it('differs in that from a page with one', async () => {
    const [tinted] = await rasterise(printPdf(SHEET, { ...DEFAULT_SETTINGS, tint: 'blue' }, FONTS), 30, [1]);
    expect(colouredPixels(tinted!)).toBeGreaterThan((tinted!.width * tinted!.height) / 2);
  });
});
