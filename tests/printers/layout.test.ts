import { describe, expect, it } from 'vitest';
import type { Document } from '../../src/document/document.ts';
import type { TextItem } from '../../src/printers/pdf/item.ts';
import { layout } from '../../src/printers/pdf/layout.ts';
import type { Laid, Page } from '../../src/printers/pdf/page.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS, measure, SAFE, type Settings } from '../../src/printers/pdf/settings.ts';
import { isTag, type Mark, type Tag } from '../../src/printers/pdf/tag.ts';
import { inspect } from '../../src/readers/inspect.ts';
import { SCHEME, SHEET } from '../pages/fixture.ts';
import { say } from '../pages/say.ts';
import { FONTS } from '../pages/test-fonts.ts';
import { type Box, inkBox } from './ink-box.ts';

const PRINTS = ['standard', 'clear', 'large', '24', '36'] as const;
const PAPERS = ['a4', 'letter'] as const;
const CASES = PRINTS.flatMap((print) => PAPERS.map((paper): Settings => ({ ...DEFAULT_SETTINGS, print, paper })));
const laid = new Map<string, Laid>();

function lay(document: Document, settings: Settings): Laid {
  const key = `${document.title} ${JSON.stringify(settings)}`;
  const found = laid.get(key) ?? layout(document, settings, FONTS);
  laid.set(key, found);
  return found;
}

function texts(page: Page): TextItem[] {
  return page.items.filter((item) => item.kind === 'text');
}

function meet([l1, t1, r1, b1]: Box, [l2, t2, r2, b2]: Box): boolean {
  const across = Math.min(r1, r2) - Math.max(l1, l2);
  const down = Math.min(b1, b2) - Math.max(t1, t2);
  return across > 0.3 && down > 0.3;
}

function tagsIn(root: Tag): Tag[] {
  return [root, ...root.kids.filter(isTag).flatMap(tagsIn)];
}

/** Pages on which anything of a tag stands. */
function pagesOf(tag: Tag, pages: readonly Page[]): number[] {
  const tags = new Set(tagsIn(tag));
  return pages.filter((page) => page.items.some((item) => item.mark && tags.has(item.mark.tag))).map(({ number }) => number);
}

describe.each(CASES)('a page in print $print on $paper', (settings) => {
  const measures = measure(settings);
  const pages = [...lay(SHEET, settings).pages, ...lay(SCHEME, settings).pages];

  it('keeps all ink inside its frame, the foot inside what a machine can print', () => {
    for (const page of pages) {
      for (const item of page.items) {
        const [left, top, right, bottom] = inkBox(item);
        const where = `page ${page.number}: ${item.kind === 'text' ? item.text : 'path'}`;
        expect(left, where).toBeGreaterThan(page.frame.left - 1);
        expect(right, where).toBeLessThan(page.frame.right + 1);
        expect(top, where).toBeGreaterThan(page.frame.top - measures.size.text * 0.3);
        expect(bottom, where).toBeLessThan(item.mark ? page.frame.bottom + 1 : page.height - SAFE + 4);
      }
    }
  });

  it('sets no text over other text', () => {
    for (const page of pages) {
      // the figure of the fixture has a fixed size, its labels do not
      const boxes = texts(page)
        .filter((item) => item.text.trim())
        .map((item) => ({ item, box: inkBox(item) }));
      for (const [i, one] of boxes.entries()) {
        for (const other of boxes.slice(i + 1)) {
          if (meet(one.box, other.box))
            expect(`${one.item.text} | ${other.item.text}`, `page ${page.number} of ${settings.print}`).toBe('apart');
        }
      }
    }
  });

  it('has no glyph under the floor of its print', () => {
    const sizes = pages.flatMap((page) => texts(page).map(({ size }) => size));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(measures.floor);
  });
});

describe('large print', () => {
  it('has text of 18 pt and no glyph under 16 pt', () => {
    const sizes = lay(SHEET, { ...DEFAULT_SETTINGS, print: 'large' }).pages.flatMap((page) =>
      texts(page).map(({ size }) => size),
    );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(16);
    expect(sizes.filter((size) => size === 18).length).toBeGreaterThan(sizes.length / 3);
  });

  it('holds the same words and figures as the ordinary sheet', () => {
    const words = (settings: Settings) => {
      const { pages } = lay(SHEET, settings);
      const marked = pages.flatMap((page) => texts(page).filter(({ mark }) => mark));
      return marked
        .map(({ text }) => text)
        .join('')
        .replace(/\s/g, '');
    };
    expect(words({ ...DEFAULT_SETTINGS, print: 'large' })).toBe(words(DEFAULT_SETTINGS));
  });
});

describe('the turn of a page', () => {
  it.each(CASES.filter(({ print }) => print !== '36'))('splits no part in print $print on $paper', (settings) => {
    const { root, pages } = lay(SHEET, settings);
    const parts = tagsIn(root)
      .filter((tag) => tag.numbering === 'LowerAlpha')
      .flatMap((list) => list.kids.filter(isTag));
    expect(parts.length).toBeGreaterThan(8);
    for (const part of parts) expect(pagesOf(part, pages)).toHaveLength(1);
  });

  it.each(['a4', 'letter'] as const)(
    'keeps a task with its marks at 36 pt on %s, where no page may hold the room to answer',
    (paper) => {
      const torn = inspect(printPdf(SHEET, { ...DEFAULT_SETTINGS, paper, print: '36' }, FONTS)).faults;
      expect(torn).toEqual([]);
    },
  );

  it('keeps the stem and the data of a question with its first part', () => {
    const { root, pages } = lay(SHEET, DEFAULT_SETTINGS);
    for (const question of tagsIn(root).filter((tag) => tag.type === 'Sect')) {
      const list = question.kids.filter(isTag).find((tag) => tag.numbering === 'LowerAlpha');
      if (!list) continue;
      const first = pagesOf(list.kids.filter(isTag)[0]!, pages);
      for (const tag of question.kids.filter(isTag))
        if (tag !== list && tag.kids.length > 0) expect(pagesOf(tag, pages)).toEqual(first);
    }
  });

  it.each(CASES)(
    'adds up the cells of each page in its foot, and all to the marks of the sheet, in print $print on $paper',
    (settings) => {
      const { pages } = lay(SHEET, settings);
      const score = (items: readonly TextItem[]) =>
        items.reduce((sum, { text }) => sum + Number(/^\/ (\d+)$/.exec(text)?.[1] ?? 0), 0);
      const feet = pages.map((page) => score(texts(page).filter(({ mark }) => !mark)));
      expect(feet).toEqual(pages.map((page) => score(texts(page).filter(({ mark }) => mark))));
      expect(feet.reduce((sum, marks) => sum + marks, 0)).toBe(21);
    },
  );

  it('changes the punched side on even pages of two-sided sheets only', () => {
    const lefts = (sides: 'one' | 'both') =>
      lay(SHEET, { ...DEFAULT_SETTINGS, sides }).pages.map(({ frame }) => Math.round(frame.left));
    expect(lefts('both')).toEqual([71, 43, 71, 43]);
    expect(lefts('one')).toEqual([71, 71, 71, 71]);
  });
});

describe('a formula', () => {
  const narrow: Document = {
    ...SHEET,
    blocks: Array.from({ length: 30 }, (_, i) => ({
      kind: 'paragraph',
      content: say(
        `${'word '.repeat(i)}{Cr2O7^2-(aq)} and {[Fe(CN)6]^3-} with {q 0.0200 mol dm^-3} of {c(Fe^2+)} in {2MnO4^- + 16H^+ + 5C2O4^2- -> 2Mn^2+ + 10CO2 + 8H2O}`,
      ),
    })),
  };

  it.each(CASES)('is never broken over a line, nor is a quantity, in print $print on $paper', (settings) => {
    for (const [mark, items] of byMark(layout(narrow, settings, FONTS))) {
      if (mark.tag.type !== 'Formula' || / [→⇌+] /.test(mark.actual ?? '')) continue;
      const baselines = items.map(({ y }) => y);
      expect(Math.max(...baselines) - Math.min(...baselines), mark.actual).toBeLessThan(items[0]!.size);
    }
  });

  it('is broken as an equation only before its arrow or a plus sign', () => {
    let breaks = 0;
    for (const [mark, items] of byMark(layout(narrow, { ...DEFAULT_SETTINGS, print: 'large' }, FONTS))) {
      if (!/→/.test(mark.actual ?? '')) continue;
      for (const [i, item] of items.entries()) {
        if (i === 0 || item.x > items[i - 1]!.x) continue;
        breaks++;
        expect(['+', '⟶']).toContain(item.text);
      }
    }
    expect(breaks).toBeGreaterThan(4);
  });

  it('of VO₂⁺ carries other actual text than VO²⁺', () => {
    const actual = [...byMark(lay(SHEET, DEFAULT_SETTINGS)).keys()].map((mark) => mark.actual);
    expect(actual).toContain('VO₂⁺');
    expect(actual).toContain('VO²⁺');
  });

  it('carries its actual text inside a symbol, too', () => {
    const amounts: Document = {
      ...SHEET,
      blocks: [{ kind: 'paragraph', content: say('{n(VO2^+)} and {n(VO^2+)} and {E°cell}') }],
    };
    const actual = [...byMark(layout(amounts, DEFAULT_SETTINGS, FONTS)).keys()].map((mark) => mark.actual);
    expect(actual.filter((text) => text !== undefined)).toEqual(['n(VO₂⁺)', 'n(VO²⁺)']);
  });
});

function byMark({ pages }: Laid): Map<Mark, TextItem[]> {
  const found = new Map<Mark, TextItem[]>();
  for (const item of pages.flatMap(texts)) if (item.mark) found.set(item.mark, [...(found.get(item.mark) ?? []), item]);
  return found;
}

describe('what cannot be printed', () => {
  const of = (words: string): Document => ({
    ...SHEET,
    blocks: [{ kind: 'paragraph', content: [{ kind: 'text', text: words }] }],
  });

  it('is a character that no font holds, and is named', () => {
    expect(() => layout(of('snow ☃ and 漢'), DEFAULT_SETTINGS, FONTS)).toThrow('`漢` (U+6F22)');
  });

  it('is a block or an inline of an unknown kind', () => {
    const blocks = [{ kind: 'poem' }] as unknown as Document['blocks'];
    expect(() => layout({ ...SHEET, blocks }, DEFAULT_SETTINGS, FONTS)).toThrow('no block of kind `poem`');
    const inlines = [{ kind: 'paragraph', content: [{ kind: 'smell' }] }] as unknown as Document['blocks'];
    expect(() => layout({ ...SHEET, blocks: inlines }, DEFAULT_SETTINGS, FONTS)).toThrow('no inline of kind `smell`');
  });
});
