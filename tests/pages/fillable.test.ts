import { PDFDocument, PDFRadioGroup, PDFTextField } from 'pdf-lib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import type { Document } from '../../src/document/document.ts';
import { markScheme } from '../../src/papers/mark-scheme.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS, type Print } from '../../src/printers/pdf/settings.ts';
import { inspect } from '../../src/readers/inspect.ts';
import { readPdf } from '../../src/readers/read-pdf.ts';
import { readingOrder } from '../../src/readers/reading-order.ts';
import { brokenRules } from '../../src/readers/rules/index.ts';
import { SCHEME, SHEET } from './fixture.ts';
import { OpenPdf } from './mutate.ts';
import { fonts, paperOf, tables, wording } from './papers.ts';
import { FONTS } from './test-fonts.ts';

const fillable = (document: Document, print: Print = 'standard') =>
  printPdf(document, { ...DEFAULT_SETTINGS, print, fillable: true }, FONTS);
const sheet = fillable(SHEET);

/** A field as pdfjs finds it, in points from the foot of the page. */
interface Found {
  readonly name: string;
  readonly tip: string;
  readonly page: number;
  readonly rect: readonly [number, number, number, number];
}

async function fieldsIn(bytes: Uint8Array): Promise<Found[]> {
  const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0 });
  const pdf = await task.promise;
  const found: Found[] = [];
  for (let page = 1; page <= pdf.numPages; page++) {
    for (const each of await (await pdf.getPage(page)).getAnnotations())
      found.push({ name: each.fieldName, tip: each.alternativeText, page, rect: each.rect });
  }
  await task.destroy();
  return found;
}

describe('a sheet to fill in', () => {
  it('has a field for every place to answer, each named once and told in words', async () => {
    const found = await fieldsIn(sheet);
    const names = found.map(({ name }) => name);
    expect(names).toContain('head-1');
    expect(names).toContain('q1a-2');
    expect(found.filter(({ tip }) => !tip)).toEqual([]);
    expect(new Set(found.map(({ tip }) => tip)).size).toBeGreaterThan(found.length - 3);
    const typed = names.filter((name) => name !== 'q4-1');
    expect(new Set(typed).size).toBe(typed.length);
    expect(found.find(({ name }) => name === 'q1a-2')!.tip).toBe('Question 1, part a: answer, E standard cell, in V');
    expect(found.filter(({ name }) => name === 'q4-1').map(({ tip }) => tip.slice(-8))).toEqual([
      'option A',
      'option B',
      'option C',
    ]);
  });

  it('has its fields in the order in which it is read: by pages, then from top to bottom, then from left to right', async () => {
    const found = await fieldsIn(sheet);
    for (const [at, field] of found.entries()) {
      const next = found[at + 1];
      if (!next || next.page > field.page) continue;
      expect(next.page).toBe(field.page);
      const below = next.rect[3] <= field.rect[1] + 2;
      const beside = next.rect[0] >= field.rect[2] - 2 && next.rect[1] < field.rect[3];
      expect(below || beside, `${field.name} before ${next.name}`).toBe(true);
    }
    const reading = readPdf(sheet);
    const onPages = reading.pages.flatMap(({ annotations }) => annotations.map((each) => reading.file.text(each.get('TU'))));
    const aloud = [
      ...readingOrder(reading)
        .join('\n')
        .matchAll(/\[([^\]]+)\]/g),
    ].map(([, tip]) => tip);
    expect(aloud).toEqual(onPages);
  });

  it('has no two fields over one another', async () => {
    const found = await fieldsIn(sheet);
    for (const [at, one] of found.entries()) {
      for (const other of found.slice(at + 1).filter(({ page }) => page === one.page)) {
        const across = Math.min(one.rect[2], other.rect[2]) - Math.max(one.rect[0], other.rect[0]);
        const down = Math.min(one.rect[3], other.rect[3]) - Math.max(one.rect[1], other.rect[1]);
        expect(across > 1 && down > 1, `${one.name} and ${other.name}`).toBe(false);
      }
    }
  });

  it('keeps what is typed and chosen', async () => {
    const pdf = await PDFDocument.load(sheet, { updateMetadata: false });
    for (const field of pdf.getForm().getFields()) {
      if (field instanceof PDFTextField) field.setText(`text of ${field.getName()}`);
      if (field instanceof PDFRadioGroup) field.select('B');
    }
    const form = (await PDFDocument.load(await pdf.save())).getForm();
    expect(form.getTextField('q3b-1').getText()).toBe('text of q3b-1');
    expect(form.getTextField('q3b-1').isMultiline()).toBe(true);
    expect(form.getRadioGroup('q4-1').getSelected()).toBe('B');
    expect(form.getRadioGroup('q4-1').getOptions()).toEqual(['A', 'B', 'C']);
  });

  it('is handed out with every field empty', async () => {
    const pdf = await PDFDocument.load(sheet, { updateMetadata: false });
    for (const field of pdf.getForm().getFields()) {
      if (field instanceof PDFTextField) expect(field.getText()).toBeUndefined();
      if (field instanceof PDFRadioGroup) expect(field.getSelected()).toBeUndefined();
    }
  });

  it.each(['standard', 'clear', 'large', '24', '36'] as const)('has nothing that an inspection finds in print %s', (print) => {
    const bytes = fillable(SHEET, print);
    expect(inspect(bytes).faults).toEqual([]);
    expect(inspect(bytes).fields.length).toBe(inspect(sheet).fields.length);
  });

  it('has the words of the printed sheet', () => {
    const words = (bytes: Uint8Array) =>
      readPdf(bytes)
        // the foot is left out: fields take other room than ruled lines, so a page may turn elsewhere
        .pages.flatMap(({ runs }) => runs.filter(({ markings }) => markings.every(({ tag }) => tag !== 'Artifact')))
        .map(({ text }) => text.trim())
        .join('');
    expect(words(sheet)).toBe(words(printPdf(SHEET, DEFAULT_SETTINGS, FONTS)));
  });

  it('is the same, byte for byte, when it is printed again', () => {
    expect(fillable(SHEET)).toEqual(sheet);
  });
});

describe('a scheme', () => {
  it('has no fields', () => {
    expect(fillable(SCHEME)).toEqual(printPdf(SCHEME, DEFAULT_SETTINGS, FONTS));
  });
});

describe.each(['core', 'stretch'] as const)('a paper of every family to fill in, %s', (level) => {
  it.each(['open', 'completion', 'worked'] as const)('has nothing that an inspection finds, support %s', (support) => {
    const paper = paperOf({ level, support, choice: 0.2, seed: `fill ${support}`, length: { unit: 'questions', count: 8 } });
    const settings = { ...DEFAULT_SETTINGS, fillable: true };
    const bytes = printPdf(questionSheet(paper, wording), settings, fonts);
    expect(inspect(bytes).faults).toEqual([]);
    expect(inspect(bytes).fields.length).toBeGreaterThan(20);
    expect(inspect(printPdf(markScheme(paper, tables, wording), settings, fonts)).fields).toEqual([]);
  });
});

/** The font of fields. */
const SIMPLE = /\/Subtype \/TrueType\n/;

/** Takes the table `cmap` out of the program of that font, by giving it another name. */
function cmapOut(pdf: OpenPdf): void {
  const descriptor = pdf.named(pdf.find(SIMPLE)[0]!, 'FontDescriptor');
  pdf.streamOf(pdf.named(descriptor, 'FontFile2'), (text) => text.replace('cmap', 'cmax'));
}

/** Changes the ToUnicode map of that font. */
function typedCmap(pdf: OpenPdf, rewrite: (text: string) => string): void {
  pdf.streamOf(pdf.named(pdf.find(SIMPLE)[0]!, 'ToUnicode'), rewrite);
}

/** Rules of PDF/UA-1 that ask something of fields, each with a change to a filled-in file after which it is broken. */
const MUTATIONS: Readonly<Record<string, (pdf: OpenPdf) => unknown>> = {
  '7.2-25': (pdf) => pdf.editFirst(/\/Type \/Catalog/, '/Lang (en-GB)\n', ''),
  '7.15-1': (pdf) => pdf.entry(/\/DR <</, '/XFA []'),
  '7.18.1-3': (pdf) => pdf.editFirst(/\/FT \/Tx/, /\/TU \([^)]*\)\n/, ''),
  '7.18.3-1': (pdf) => pdf.editFirst(/\/Type \/Page\n/, '/Tabs /S', '/Tabs /R'),
  '7.18.4-1': (pdf) => pdf.editFirst(/\/S \/Form\n/, '/S /Form\n', '/S /Div\n'),
  '7.18.4-2': (pdf) => {
    const form = pdf.find(/\/S \/Form\n/)[0]!;
    const added = pdf.add(`<<\n/S /Span\n/P ${form} 0 R\n/K []\n>>`);
    pdf.edit(form, '/K [', `/K [${added} 0 R `);
  },
  '7.21.4.1-1': (pdf) => pdf.editFirst(/\/DA \(/, '/Typed', '/Helv'),
  '7.21.4.1-2': (pdf) => pdf.editFirst(SIMPLE, '/FirstChar 14', '/FirstChar 13'),
  '7.21.5-1': (pdf) => pdf.editFirst(SIMPLE, /\/Widths \[[\d.]+/, '/Widths [77'),
  '7.21.6-1': cmapOut,
  '7.21.6-2': (pdf) => pdf.editFirst(SIMPLE, '/arrowright', '/uni2192'),
  '7.21.6-3': (pdf) => pdf.editFirst(/\/Flags 32/, '/Flags 32', '/Flags 4'),
  '7.21.6-4': (pdf) => {
    cmapOut(pdf);
    pdf.editFirst(/\/Flags 32/, '/Flags 32', '/Flags 4');
  },
  '7.21.7-1': (pdf) => typedCmap(pdf, (text) => text.replace(/^<41> .*\n/m, '')),
  '7.21.7-2': (pdf) => typedCmap(pdf, (text) => text.replace(/^<41> <0041>/m, '<41> <0000>')),
  '7.20-1': (pdf) => pdf.entry(/\/Subtype \/Form\n/, '/Ref << >>'),
  '7.20-2': (pdf) => pdf.stream(/\/Subtype \/Form\n/, (text) => `/P <</MCID 0>> BDC EMC ${text}`),
};

describe('the rules of PDF/UA-1 about fields', () => {
  it('are kept', () => {
    expect(brokenRules(readPdf(sheet)).map(({ rule }) => rule.id)).toEqual([]);
    expect(brokenRules(readPdf(new OpenPdf(sheet).bytes())).map(({ rule }) => rule.id)).toEqual([]);
  });

  it.each(Object.keys(MUTATIONS))('%s is broken by a file changed against it', (id) => {
    const pdf = new OpenPdf(sheet);
    MUTATIONS[id]!(pdf);
    expect(brokenRules(readPdf(pdf.bytes())).map(({ rule }) => rule.id)).toContain(id);
  });
});
