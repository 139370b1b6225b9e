import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../src/printers/pdf/settings.ts';
import { readPdf } from '../../src/readers/read-pdf.ts';
import { brokenRules, RULES } from '../../src/readers/rules/index.ts';
import { SCHEME, SHEET } from '../pages/fixture.ts';
import { OpenPdf } from '../pages/mutate.ts';
import { MUTATIONS } from '../pages/mutations.ts';
import { FONTS } from '../pages/test-fonts.ts';

/**
 * Source: the 106 rules of the veraPDF validation profile for PDF/UA-1, CC BY 4.0, © veraPDF Consortium. The file keeps their text; what
 * stands here is which of them there are.
 */
const profile = readFileSync(new URL('data/pdfua1-rules.tsv', import.meta.url), 'utf8')
  .split('\n')
  .slice(2)
  .filter(Boolean)
  .map((line) => line.split('\t').slice(0, 2).join('-'));

const sheet = printPdf(SHEET, DEFAULT_SETTINGS, FONTS);

function brokenIn(bytes: Uint8Array): string[] {
  return brokenRules(readPdf(bytes)).map(({ rule, places }) => `${rule.id} ${places[0]}`);
}

describe('the machine rules of PDF/UA-1', () => {
  it('are all known to the reader, and no others', () => {
    expect(RULES.map(({ id }) => id).sort()).toEqual([...profile].sort());
  });

  it.each(['standard', 'clear', 'large', '24', '36'] as const)('are kept by a sheet and a scheme in print %s', (print) => {
    const settings: Settings = { ...DEFAULT_SETTINGS, print };
    expect(brokenIn(printPdf(SHEET, settings, FONTS))).toEqual([]);
    expect(brokenIn(printPdf(SCHEME, settings, FONTS))).toEqual([]);
  });

  it('are kept by a file that was taken apart and put together unchanged', () => {
    expect(brokenIn(new OpenPdf(sheet).bytes())).toEqual([]);
  });

  // a file that is encrypted is refused before any rule is asked
  it.each(RULES.filter(({ id }) => id !== '7.16-1').map(({ id, says }) => [id, says]))(
    '%s (%s) is broken by a file changed against it',
    (id) => {
      const pdf = new OpenPdf(sheet);
      MUTATIONS[id]!(pdf);
      expect(brokenRules(readPdf(pdf.bytes())).map(({ rule }) => rule.id)).toContain(id);
    },
  );

  it('7.16-1: an encrypted file is refused', () => {
    const pdf = new OpenPdf(sheet);
    pdf.trailer = pdf.trailer.replace('<<', '<<\n/Encrypt << >>');
    expect(() => readPdf(pdf.bytes())).toThrow('expected a file that is not encrypted');
  });
});
