import { describe, expect, it } from 'vitest';
import { EXTRAS } from '../../src/cli/extras.ts';
import { markScheme } from '../../src/papers/mark-scheme.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { type Reading, readPdf } from '../../src/readers/read-pdf.ts';
import { readingOrder } from '../../src/readers/reading-order.ts';
import { fonts, paperOf, tables, wording } from './papers.ts';
import { type Box, blocksInOrder, outOfOrder } from './visual-order.ts';

const SUPPORTS = ['open', 'prompts', 'completion', 'worked'] as const;
const PRINTS = ['standard', 'clear', 'large', '24', '36'] as const;

const papers = SUPPORTS.map((support, at) =>
  paperOf({
    support,
    level: at % 2 ? 'core' : 'stretch',
    choice: 0.2,
    seed: `order ${support}`,
    length: { unit: 'questions', count: 5 },
  }),
);

describe.each(PRINTS)('papers in print %s', (print) => {
  const settings = { ...DEFAULT_SETTINGS, print };

  it.each(SUPPORTS.map((support, at) => [support, at] as const))(
    'are read in the order in which they are seen, support %s',
    (_, at) => {
      const paper = papers[at]!;
      const copies = [questionSheet(paper, wording), EXTRAS.teacher(paper, tables, wording), EXTRAS.data(paper, tables, wording)];
      for (const document of copies) expect(outOfOrder(blocksInOrder(readPdf(printPdf(document, settings, fonts))))).toEqual([]);
      const scheme = blocksInOrder(readPdf(printPdf(markScheme(paper, tables, wording), settings, fonts)));
      // the marks at the right end of a part's first line are told with its letter, before the answer
      expect(outOfOrder(scheme.filter(({ text }) => !/^\d+ marks?$/.test(text)))).toEqual([]);
    },
  );

  it.each(SUPPORTS.map((support, at) => [support, at] as const))(
    'have fields that the tab key visits in that order, support %s',
    (_, at) => {
      const reading = readPdf(printPdf(questionSheet(papers[at]!, wording), { ...settings, fillable: true }, fonts));
      const fields = fieldBlocks(reading);
      expect(fields.length).toBeGreaterThan(10);
      expect(outOfOrder(fields)).toEqual([]);
      const aloud = [
        ...readingOrder(reading)
          .join('\n')
          .matchAll(/\[([^\]]+)\]/g),
      ].map(([, tip]) => tip);
      expect(aloud).toEqual(fields.map(({ text }) => text));
    },
  );
});

/** Fields in the order of the annotations of the pages, by which the tab key goes. */
function fieldBlocks({ pages, file }: Reading) {
  return pages.flatMap(({ annotations, number, height }) =>
    annotations.map((each) => {
      const [left = 0, bottom = 0, right = 0, top = 0] = file.array(each.get('Rect')).map((edge) => file.number(edge) ?? 0);
      return { page: number, box: [left, height - top, right, height - bottom] as const, text: file.text(each.get('TU')) ?? '' };
    }),
  );
}

describe('an order that is not that of the page', () => {
  const blocks = blocksInOrder(readPdf(printPdf(questionSheet(papers[0]!, wording), DEFAULT_SETTINGS, fonts)));

  it('is found wherever two neighbours of one column or of one line change places', () => {
    const share = (i: 0 | 1, one: Box, other: Box) => Math.min(one[i + 2]!, other[i + 2]!) - Math.max(one[i]!, other[i]!) > 3;
    const places = blocks.slice(1).flatMap(({ page, box }, at) => {
      const before = blocks[at]!;
      return page === before.page && (share(0, box, before.box) || share(1, box, before.box)) ? [at] : [];
    });
    expect(places.length).toBeGreaterThan(50);
    for (const at of places) {
      const order = [...blocks.slice(0, at), blocks[at + 1]!, blocks[at]!, ...blocks.slice(at + 2)];
      expect(outOfOrder(order), blocks[at]!.text).not.toEqual([]);
    }
  });
});
