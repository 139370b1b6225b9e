import { describe, expect, it } from 'vitest';
import type { Document } from '../../src/document/document.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { inspect } from '../../src/readers/inspect.ts';
import { readPdf } from '../../src/readers/read-pdf.ts';
import { SCHEME, SHEET } from '../pages/fixture.ts';
import { OpenPdf } from '../pages/mutate.ts';
import { say } from '../pages/say.ts';
import { FONTS } from '../pages/test-fonts.ts';

const sheet = printPdf(SHEET, DEFAULT_SETTINGS, FONTS);

/** Codes of the faults found when the first page's content is changed. */
function faultsAfter(rewrite: (content: string) => string): string[] {
  return inspect(new OpenPdf(sheet).content(rewrite).bytes()).faults.map(({ code }) => code);
}

/** Moves the first run of text on the page. */
const moved = (x: number, y: number) => (content: string) =>
  content.replace(/1 0 0 -1 [\d.]+ [\d.]+ Tm/, `1 0 0 -1 ${x} ${y} Tm`);

describe('an inspection', () => {
  it.each(['standard', 'clear', 'large', '24', '36'] as const)('finds nothing wrong with the fixture in print %s', (print) => {
    for (const document of [SHEET, SCHEME])
      expect(inspect(printPdf(document, { ...DEFAULT_SETTINGS, print }, FONTS)).faults).toEqual([]);
  });

  it.each(['cream', 'blue'] as const)('finds nothing wrong with a page tinted %s', (tint) => {
    const bytes = printPdf(SHEET, { ...DEFAULT_SETTINGS, tint }, FONTS);
    expect(inspect(bytes).faults).toEqual([]);
    const background = readPdf(bytes).pages.flatMap(({ paths }) => paths.filter(({ box }) => box[2] - box[0] > 590));
    expect(background).toHaveLength(readPdf(bytes).pages.length);
    // contrast of black text on it, by the formula of WCAG 2.2 (relative luminance plus 0.05)
    for (const { ink } of background) expect((ink ** 2.2 + 0.05) / 0.05).toBeGreaterThan(15);
  });

  it('tells title, language, pages, fonts, bookmarks, tags and the smallest text', () => {
    const found = inspect(sheet);
    expect(found.title).toBe(SHEET.title);
    expect(found.language).toBe('en-GB');
    expect(found.pages.map(({ number }) => number)).toEqual([1, 2, 3, 4]);
    expect(found.fonts.every(({ embedded, glyphs }) => embedded && glyphs > 1)).toBe(true);
    expect(found.bookmarks).toEqual(['Question 1', 'Question 2', 'Question 3', 'Question 4', 'Question 5']);
    expect(found.tags.Figure).toBe(5);
    expect(found.smallest).toMatchObject({ text: 'K7MQ2XA4', page: 1 });
  });

  it('finds text off the page, which other readers leave out', () => {
    expect(faultsAfter(moved(900, 100))).toContain('off-page');
    expect(faultsAfter(moved(100, -40))).toContain('off-page');
  });

  it('finds text in the margin', () => {
    expect(faultsAfter(moved(12, 300))).toContain('outside-margin');
  });

  it('finds text printed over other text', () => {
    const other = readPdf(sheet).pages[0]!.runs.find(({ text }) => text.startsWith('A technician'))!;
    expect(faultsAfter(moved(other.x, other.y))).toContain('overlap');
  });

  it('finds a line through text', () => {
    expect(faultsAfter((content) => content.replace(/\bBT/, 'q 0 G 1 w 90 30 m 90 800 l S Q BT'))).toContain('crossed');
  });

  it('finds a missing glyph', () => {
    expect(faultsAfter((content) => content.replace(/<[0-9a-f]{4}/, '<0000'))).toContain('missing-glyph');
  });

  it('finds colour', () => {
    expect(faultsAfter((content) => content.replace(/\bBT [\d.]+ g/, 'BT 1 0 0 rg'))).toContain('colour');
  });

  it('finds a page of one orphan line', () => {
    const lines: Document = {
      ...SCHEME,
      blocks: [{ kind: 'paragraph', content: say('one') }, { kind: 'page-break' }, { kind: 'paragraph', content: say('two') }],
    };
    expect(inspect(printPdf(lines, DEFAULT_SETTINGS, FONTS)).faults.map(({ code }) => code)).toContain('orphan');
  });

  it('refuses what is no PDF, and what it cannot read', () => {
    expect(() => inspect(Buffer.from('hello'))).toThrow('expected a PDF file');
    expect(() => inspect(Buffer.from('%PDF-1.7\nstartxref\n0\n%%EOF'))).toThrow('expected a plain cross-reference table');
  });
});
