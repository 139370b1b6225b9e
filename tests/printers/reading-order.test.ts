import { describe, expect, it } from 'vitest';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { readPdf } from '../../src/readers/read-pdf.ts';
import { readingOrder } from '../../src/readers/reading-order.ts';
import { SCHEME, SHEET } from '../pages/fixture.ts';
import { FONTS } from '../pages/test-fonts.ts';

const sheet = readingOrder(readPdf(printPdf(SHEET, DEFAULT_SETTINGS, FONTS)));
const scheme = readingOrder(readPdf(printPdf(SCHEME, DEFAULT_SETTINGS, FONTS)));

describe('a sheet read aloud', () => {
  it('begins with its title and what to fill in', () => {
    expect(sheet.slice(0, 6)).toEqual([
      'Redox titration and cells',
      'electrode potentials, vanadium, titration · 24 minutes (30 with extra time) · 21 marks',
      'Name',
      'Class',
      'Date',
      'Marks / 21',
    ]);
  });

  it('goes from question to stem, data, part, marks and answer line', () => {
    const start = sheet.indexOf('Question 1');
    expect(sheet.slice(start, start + 19)).toEqual([
      'Question 1',
      'A technician joins two half-cells, P and Q, with a wire and a salt bridge. Each half-cell is at standard conditions.',
      'Standard electrode potentials',
      'half-cell',
      'half-equation',
      'E standard / V',
      'P',
      'Z small n, charge 2 plus, aqueous, plus 2 electrons, in equilibrium with Z small n, solid',
      '−0.76',
      'Q',
      'C small r 2 O 7, charge 2 minus, aqueous, plus 14 H, charge 1 plus, aqueous, plus 6 electrons, in equilibrium with 2 C small r, charge 3 plus, aqueous, plus 7 H 2 O, liquid',
      '+1.33',
      'Two half-cells, P at the left and Q at the right. A salt bridge joins the solutions; wires join the electrodes to a voltmeter. In P: zinc, in a solution of Z small n, charge 2 plus. In Q: platinum, in a solution of C small r 2 O 7, charge 2 minus; C small r, charge 3 plus; H, charge 1 plus.',
      'The cell before the switch is closed',
      'a Calculate the standard cell potential, E standard cell.',
      '1 mark',
      'E standard cell = blank V',
      'b Write the ionic equation for the reaction in the working cell.',
      '2 marks',
    ]);
  });

  it('names options by their letters', () => {
    expect(sheet).toContain(
      'C C small u, charge 2 plus, plus 4 N H 3, gives open square bracket C small u open bracket N H 3 close bracket 4 close square bracket, charge 2 plus',
    );
  });

  it('reads no artifact: no foot, no code, no rule', () => {
    expect(sheet.join('\n')).not.toMatch(/page \d of|K7MQ2XA4|this page/);
  });

  it('is the same in large print', () => {
    expect(readingOrder(readPdf(printPdf(SHEET, { ...DEFAULT_SETTINGS, print: 'large' }, FONTS)))).toEqual(sheet);
  });
});

describe('a scheme read aloud', () => {
  it('goes from part to marks, answer, points and what else is right', () => {
    const start = scheme.indexOf('Part 1a');
    expect(scheme.slice(start, start + 5)).toEqual([
      'Part 1a',
      '1 mark',
      '+2.09 V',
      '2.09 V',
      'also right +2.09 V; a right subtraction with the figures of the sheet · not right minus 2.09 V',
    ]);
  });

  it('says fractions and powers in words', () => {
    expect(scheme).toContain(
      'n of M small n O 4, charge 1 minus = fraction 0.0200 mol dm to the minus 3 × 18.48 cm cubed over 1000 end of fraction = 3.696 times 10 to the minus 4 mol',
    );
  });
});
