import { describe, expect, it } from 'vitest';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { readPdf } from '../../src/readers/read-pdf.ts';
import { SHEET } from './fixture.ts';
import { OpenPdf } from './mutate.ts';
import { differencesBetween, headingsIn, type Texts } from './others/compare-texts.ts';
import { pageTexts, structureText } from './others/our-text.ts';
import { readStructure } from './others/their-text.ts';
import { FONTS } from './test-fonts.ts';

const sheet = printPdf(SHEET, DEFAULT_SETTINGS, FONTS);

function textsOf(bytes: Uint8Array): Texts {
  const reading = readPdf(bytes);
  return { pages: pageTexts(reading), structure: structureText(reading) };
}

/** What is found when the other reader sees a file changed like this. */
function foundAfter(change: (pdf: OpenPdf) => unknown): string[] {
  const pdf = new OpenPdf(sheet);
  change(pdf);
  return differencesBetween(textsOf(sheet), textsOf(pdf.bytes()));
}

/** What `.ci/run` compares with poppler, which is installed there. */
describe('two readings of a file', () => {
  it('are the same for the same file', () => {
    expect(foundAfter((pdf) => pdf)).toEqual([]);
    expect(textsOf(sheet).pages.every((text) => text.length > 50)).toBe(true);
  });

  it('differ where one letter is read as another', () => {
    const found = foundAfter((pdf) => {
      const regular = pdf.find(/\/BaseFont \/[A-Z]{6}\+SourceSans3-Regular\b[\s\S]*\/ToUnicode/)[0]!;
      pdf.streamOf(pdf.named(regular, 'ToUnicode'), (text) => text.replace('<0065>', '<0061>'));
    });
    expect(found.length).toBeGreaterThan(1);
    expect(found[0]).toMatch(/^page 1: we read `.*»e.*`, the other reads `.*»a.*`$/);
  });

  it('differ where an actual text is lost: VO₂⁺ and VO²⁺ have the same glyphs', () => {
    const found = foundAfter((pdf) => pdf.content((text) => text.replace(/\/ActualText <[^>]*>|\/ActualText \([^)]*\)/, '')));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^page 1: /);
  });

  it('differ where a heading is none', () => {
    const found = foundAfter((pdf) => pdf.editFirst(/\/S \/H2\n/, '/S /H2\n', '/S /P\n'));
    expect(found.map((each) => each.split(':')[0])).toEqual(['headings', 'structure']);
  });

  it('differ where a page is lost', () => {
    const whole = textsOf(sheet);
    const [first, other] = differencesBetween(whole, { ...whole, pages: whole.pages.slice(0, -1) });
    expect(first).toBe(`we read ${whole.pages.length} pages, the other reads ${whole.pages.length - 1}`);
    expect(other).toMatch(new RegExp(`^page ${whole.pages.length}: `));
  });
});

describe('the structure that pdfinfo prints', () => {
  const printed = [
    'Document',
    '  H1 (block)',
    '    "Redox "',
    '    "titrations"',
    '  Table (block):',
    '     /Summary (Two half-equations)',
    '    TR',
    '      TH:',
    '         /Scope /Row',
    '        "say "A',
    'or B""',
    '  Form (block)',
    '    Object 24 0',
  ].join('\n');

  it('is read as types and texts, without attributes and white space', () => {
    expect(readStructure(printed)).toBe('<Document><H1>Redoxtitrations<Table><TR><TH>say"AorB"<Form>');
  });

  it('has the headings of the sheet', () => {
    expect(headingsIn(readStructure(printed))).toBe('<H1>Redoxtitrations');
    expect(headingsIn(textsOf(sheet).structure)).toMatch(/^<H1>Redoxtitrationandcells<H2>1<H2>2/);
  });
});
