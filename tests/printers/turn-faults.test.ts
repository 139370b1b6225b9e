import { describe, expect, it } from 'vitest';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import type { Marking, TextRun } from '../../src/readers/read-content.ts';
import { type PageReading, type Reading, readPdf } from '../../src/readers/read-pdf.ts';
import { type ContentRef, type Element, isElement } from '../../src/readers/read-structure.ts';
import { turnFaults } from '../../src/readers/turn-faults.ts';
import { SHEET } from '../pages/fixture.ts';
import { FONTS } from '../pages/test-fonts.ts';

const reading = readPdf(printPdf(SHEET, DEFAULT_SETTINGS, FONTS));

const codes = (changed: Reading) => turnFaults(changed).map(({ code, page }) => `${code} ${page}`);

/** The reading with its pages changed. */
const withPages = (change: (page: PageReading) => Partial<PageReading>): Reading => ({
  ...reading,
  pages: reading.pages.map((page) => ({ ...page, ...change(page) })),
});

const isFoot = ({ markings }: TextRun) => markings.some(({ tag }: Marking) => tag === 'Artifact');

/** The structure with the content of some elements said to be on another page. */
function moved(element: Element, where: (element: Element) => boolean): Element {
  const shift = where(element);
  const kids = element.kids.map((kid): Element | ContentRef => {
    if (isElement(kid)) return moved(kid, (each) => shift || where(each));
    return shift ? { ...kid, page: kid.page + 1 } : kid;
  });
  return { ...element, kids };
}

const withStructure = (where: (element: Element) => boolean): Reading => ({
  ...reading,
  structure: moved(reading.structure!, where),
});

describe('the turns of the pages of a file', () => {
  it('are right as printed', () => {
    expect(turnFaults(reading)).toEqual([]);
  });

  it('are wrong where a foot counts other marks than its page has', () => {
    const wrong = withPages(({ number, runs }) => ({
      runs: runs.map((run) => (number === 2 && isFoot(run) && run.text.startsWith('/ ') ? { ...run, text: '/ 1' } : run)),
    }));
    expect(codes(wrong)).toEqual(['page-total 2']);
  });

  it('are wrong where a task is on one page and its marks on the next', () => {
    let first: Element | undefined;
    const wrong = withStructure((element) => {
      if (element.standard !== 'P' || element.parent?.standard !== 'LBody') return false;
      first ??= element;
      return element === first;
    });
    expect(codes(wrong)).toEqual(['torn 2']);
  });

  it('are wrong where a header row is parted from the rows below it', () => {
    const wrong = withStructure(({ standard }) => standard === 'TBody');
    expect(new Set(turnFaults(wrong).map(({ code }) => code))).toEqual(new Set(['lone-header']));
  });

  it('are wrong where lines to write on stand alone', () => {
    const wrong = withPages(({ number, runs }) => (number === 3 ? { runs: runs.filter(isFoot) } : {}));
    expect(codes(wrong)).toContain('bare-lines 3');
  });
});
