import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCsv } from '../../src/potentials/csv.ts';

const cells = (text: string) => readCsv(text).map((record) => record.cells);

describe('comma-separated values', () => {
  it('are cells between commas, trimmed', () => {
    expect(cells('a, b ,c\n1,,3\n')).toEqual([
      ['a', 'b', 'c'],
      ['1', '', '3'],
    ]);
  });

  it('keep commas, quotes and line breaks inside quotes', () => {
    expect(cells('"a, b","say ""yes""","two\nlines"')).toEqual([['a, b', 'say "yes"', 'two\nlines']]);
  });

  it('tell the line on which a record begins', () => {
    expect(readCsv('a\n"b\nb"\n\nc\r\nd').map((record) => record.line)).toEqual([1, 2, 5, 6]);
  });

  it('are refused when a quote is not closed, or text follows one', () => {
    expect(() => readCsv('a\n"b')).toThrow(/never closed/);
    expect(() => readCsv('"a"b')).toThrow(/expected `,` or a new line/);
  });

  it('read back what was written with quotes around every cell (RFC 4180)', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', '"', ',', '\n', 'é', ' ') }).map((text) => text.trim());
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 }), (rows) => {
        const kept = [['first', 'line'], ...rows.filter((row) => row.some((text) => text !== ''))];
        const text = kept.map((row) => row.map((part) => `"${part.replaceAll('"', '""')}"`).join(',')).join('\r\n');
        expect(cells(text)).toEqual(kept);
      }),
    );
  });

  it('never throw anything but a fault', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        try {
          readCsv(text);
        } catch (error) {
          expect(error).toMatchObject({ code: 'bad-csv' });
        }
      }),
    );
  });
});
