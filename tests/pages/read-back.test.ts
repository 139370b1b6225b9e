import { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Document } from '../../src/document/document.ts';
import { draw } from '../../src/printers/pdf/draw.ts';
import { openFonts, type PreparedFonts, prepareFonts } from '../../src/printers/pdf/fonts.ts';
import { layout } from '../../src/printers/pdf/layout.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { readPdf } from '../../src/readers/read-pdf.ts';
import { SCHEME, SHEET } from './fixture.ts';
import { type Found, readIndependently } from './independent-reader.ts';
import { say } from './say.ts';
import { FONTS, freshFonts, readFace } from './test-fonts.ts';

const DOCUMENTS = { sheet: SHEET, scheme: SCHEME };

describe.each(Object.entries(DOCUMENTS))('a printed %s', (_, document) => {
  const laid = layout(document, DEFAULT_SETTINGS, FONTS);
  const bytes = draw(laid, FONTS);
  const own = readPdf(bytes);
  let found: Found;
  beforeAll(async () => {
    found = await readIndependently(bytes);
  });

  it('has the pages that were laid out, of their size', async () => {
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    expect(pdf.getPageCount()).toBe(laid.pages.length);
    expect(pdf.getPages().map((page) => [Math.round(page.getWidth()), Math.round(page.getHeight())])).toEqual(
      laid.pages.map(() => [595, 842]),
    );
    expect(found.pages).toHaveLength(laid.pages.length);
  });

  it('says its title, its language and where questions begin', () => {
    expect([found.title, found.language]).toEqual([document.title, 'en-GB']);
    expect([own.title, own.language]).toEqual([document.title, 'en-GB']);
    expect(found.bookmarks).toEqual(own.bookmarks);
    expect(found.bookmarks.filter((title) => title.startsWith('Question')).length).toBeGreaterThan(2);
  });

  it('shows every run where it was laid, at its size, with its characters', () => {
    for (const [i, page] of laid.pages.entries()) {
      const items = page.items.filter((item) => item.kind === 'text');
      const runs = own.pages[i]!.runs;
      expect(runs.map(({ text }) => text)).toEqual(items.map(({ text }) => text.replaceAll('⟶', '→')));
      for (const [n, item] of items.entries()) {
        const run = runs[n]!;
        expect(Math.hypot(run.x - item.x, run.y - item.y), item.text).toBeLessThan(0.02);
        expect(run.size).toBeCloseTo(item.size, 2);
        // a closing space may stand outside the width that was laid
        const spare = run.width - item.width;
        expect(Math.min(Math.abs(spare), Math.abs(spare - trailing(item.text) * run.size * 0.2)), item.text).toBeLessThan(0.05);
      }
    }
  });

  it('is found the same by a reader that is not ours', () => {
    for (const [i, page] of found.pages.entries()) {
      const ours = own.pages[i]!.runs;
      expect(squeeze(page.runs.map(({ text }) => text).join(''))).toBe(squeeze(ours.map(({ text }) => text).join('')));
      for (const run of page.runs) {
        const near = ours.some((one) => Math.hypot(one.x - run.x, one.y - run.y) < 0.05 && Math.abs(one.size - run.size) < 0.02);
        // a reader may cut a run at its spaces: then it starts inside one of ours
        const inside = ours.some((one) => Math.abs(one.y - run.y) < 0.05 && run.x > one.x && run.x < one.x + one.width + 0.1);
        expect(near || inside, `page ${i + 1}: ${run.text}`).toBe(true);
      }
    }
  });

  it('embeds all its fonts, every glyph with a character', () => {
    expect(own.fonts.length).toBeGreaterThan(4);
    for (const font of own.fonts) expect([font.name, font.embedded, font.hasToUnicode]).toEqual([font.name, true, true]);
    for (const page of own.pages) for (const run of page.runs) expect(run.text).not.toContain('\u0000');
  });

  it('has a structure that readers see: headings, lists, tables, formulas', () => {
    const types = new Set(found.pages.flatMap((page) => page.types));
    for (const type of ['Document', 'H1', 'Sect', 'P', 'L', 'LI', 'LBody', 'Table', 'TR', 'TH', 'TD', 'Formula'])
      expect(types).toContain(type);
  });
});

/** Spaces that end a text. */
function trailing(text: string): number {
  return text.length - text.trimEnd().length;
}

function squeeze(text: string): string {
  return text.replace(/\s/g, '');
}

describe('the bytes of a file', () => {
  it('are the same when it is printed again', () => {
    expect(printPdf(SHEET, DEFAULT_SETTINGS, FONTS)).toEqual(printPdf(SHEET, DEFAULT_SETTINGS, FONTS));
  });

  it('are the same whatever the fonts were used for before', () => {
    const rare: Document = {
      ...SHEET,
      blocks: [
        {
          kind: 'paragraph',
          content: say('naïve Ångström 5 µm µ Ω ¼ ⊖ ≡ 10²⁺ ¹₂ −'),
        },
      ],
    };
    const used = freshFonts();
    printPdf(rare, DEFAULT_SETTINGS, used);
    printPdf(SCHEME, { ...DEFAULT_SETTINGS, print: '36' }, used);
    expect(printPdf(SHEET, DEFAULT_SETTINGS, used)).toEqual(printPdf(SHEET, DEFAULT_SETTINGS, freshFonts()));
    expect(printPdf(rare, DEFAULT_SETTINGS, used)).toEqual(printPdf(rare, DEFAULT_SETTINGS, freshFonts()));
  });

  it('are the same with fonts prepared beforehand, and no font file is opened for them', () => {
    const prepared: PreparedFonts = JSON.parse(JSON.stringify(prepareFonts(readFace)));
    const shut = openFonts((face) => {
      throw new Error(`the file of ${face} is opened`);
    }, prepared);
    for (const document of [SHEET, SCHEME])
      expect(printPdf(document, DEFAULT_SETTINGS, shut)).toEqual(printPdf(document, DEFAULT_SETTINGS, FONTS));
    const rare: Document = { ...SHEET, blocks: [{ kind: 'paragraph', content: say('naïve Ångström VΩAΩV') }] };
    expect(printPdf(rare, DEFAULT_SETTINGS, openFonts(readFace, prepared))).toEqual(printPdf(rare, DEFAULT_SETTINGS, FONTS));
  });

  it('hold rare characters under codes of their own', async () => {
    const words = 'naïve Ångström µ Ω ⊖ ≡ é';
    const rare: Document = {
      ...SHEET,
      kind: 'scheme',
      foot: '-',
      blocks: [{ kind: 'paragraph', content: say(words) }],
    };
    const found = await readIndependently(printPdf(rare, DEFAULT_SETTINGS, FONTS));
    expect(found.pages[0]!.runs.map(({ text }) => text).join('')).toContain(squeeze('naïve'));
    expect(squeeze(found.pages[0]!.runs.map(({ text }) => text).join('')).slice(0, squeeze(words).length)).toBe(squeeze(words));
  });

  it('survive a title with the characters of XML', async () => {
    const bytes = printPdf({ ...SHEET, title: 'Acids & bases <1>' }, DEFAULT_SETTINGS, FONTS);
    expect((await readIndependently(bytes)).title).toBe('Acids & bases <1>');
    expect(Buffer.from(bytes).toString('latin1')).toContain('Acids &amp; bases &lt;1&gt;');
  });
});
