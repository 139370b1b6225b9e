import { describe, expect, it } from 'vitest';
import type { Block, SchemeBlock } from '../../src/document/block.ts';
import type { Document } from '../../src/document/document.ts';
import { ladderFigure } from '../../src/document/figures/ladder-figure.ts';
import { parseDecimal } from '../../src/exact/decimal.ts';
import { layWorking } from '../../src/printers/pdf/blocks/working-block.ts';
import type { TextItem } from '../../src/printers/pdf/item.ts';
import { frameRoom, layout } from '../../src/printers/pdf/layout.ts';
import { paginate } from '../../src/printers/pdf/paginate.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS, type Print } from '../../src/printers/pdf/settings.ts';
import { slab } from '../../src/printers/pdf/slab.ts';
import { readPdf } from '../../src/readers/read-pdf.ts';
import { readingOrder } from '../../src/readers/reading-order.ts';
import { say } from '../pages/say.ts';
import { FONTS } from '../pages/test-fonts.ts';

const documentOf = (kind: Document['kind'], ...blocks: Block[]): Document => ({
  title: 'Details',
  language: 'en-GB',
  subject: 'Details',
  kind,
  foot: 'Details',
  blocks,
});

/** Lines of text by their baselines, the foot left out. */
function linesOf(document: Document, print: Print = 'standard'): { text: string; items: TextItem[] }[] {
  const [page] = layout(document, { ...DEFAULT_SETTINGS, print }, FONTS).pages;
  const items = page!.items.filter((item): item is TextItem => item.kind === 'text' && item.mark !== undefined);
  const lines = new Map<number, TextItem[]>();
  for (const item of items) lines.set(Math.round(item.y), [...(lines.get(Math.round(item.y)) ?? []), item]);
  return [...lines.values()].map((each) => ({ text: each.map(({ text }) => text).join(''), items: each }));
}

describe('the facts below a title', () => {
  const facts = [
    'Oxidation and reduction, electrode potentials, redox titrations',
    '48 minutes (60 with extra time)',
    '40 marks',
  ];
  const document = documentOf('sheet', { kind: 'head', title: 'Details', facts, cells: ['Name', 'Class', 'Date', 'Marks'] });

  it('end no line in a dot', () => {
    const lines = linesOf(document).filter(({ text }) => /Oxidation|titrations|minutes|marks/.test(text));
    expect(lines.length).toBeGreaterThan(1);
    for (const { text } of lines) expect(text.trim()).not.toMatch(/^·|·$/);
  });

  it('are read with a dot between them, wherever lines end', () => {
    expect(readingOrder(readPdf(printPdf(document, DEFAULT_SETTINGS, FONTS)))[1]).toBe(facts.join(' · '));
  });
});

describe('half-equations in a table', () => {
  const table = (words: string): Block => ({
    kind: 'given',
    caption: 'Half-cells',
    blocks: [
      {
        kind: 'table',
        summary: 'Half-cells',
        header: [say('Electrode and solution'), say('Half-equation'), say('{E°} / V')],
        rows: [[say(words), say('{[Fe(CN)6]^3-(aq) + e^- <=> [Fe(CN)6]^4-(aq)}'), say('+0.36')]],
        rowHeaders: false,
        align: ['start', 'start', 'end'],
      },
    ],
  });

  it('stand on one line while the words beside them can give way', () => {
    const lines = linesOf(
      documentOf('sheet', table('platinum in a solution of hexacyanoferrate(III) and hexacyanoferrate(II) ions')),
    );
    expect(lines.filter(({ text }) => text.includes('⇌') && text.includes('Fe'))).toHaveLength(1);
    expect(lines.find(({ text }) => text.includes('⇌'))!.text).toContain('[Fe(CN)');
  });
});

describe('the turn of a page on a sheet', () => {
  // heights in hundredths of a page: a stem with its first part, then parts that cost 16 to be parted from
  const question = (...parts: number[]) => parts.map((height, at) => slab(height, [], { after: at < parts.length - 1 ? 16 : 0 }));
  const sheet = [...question(67, 26, 28, 13), ...question(47, 24, 26), ...question(50, 20)];
  const counts = (early: number, isDuplex = false) =>
    paginate(sheet, { height: 100, early, isDuplex }).map(({ length }) => length);

  it('leaves no first part alone on a page a third white where the next part fits', () => {
    expect(counts(0)).toEqual([1, 3, 3, 2]);
    expect(counts(70)).toEqual([2, 3, 3, 1]);
  });

  it('is inside a question rather from an even to an odd page, which are seen at once, than over the leaf', () => {
    const ends = [...question(40), ...question(45, 50)];
    const pages = (isDuplex: boolean, ...before: number[]) =>
      paginate([...question(...before), ...ends], { height: 100, early: 0, isDuplex }).map(({ length }) => length);
    expect([pages(false), pages(false, 100)]).toEqual([
      [2, 1],
      [1, 2, 1],
    ]);
    expect([pages(true), pages(true, 100)]).toEqual([
      [1, 2],
      [1, 2, 1],
    ]);
  });
});

describe('what a completion copy prints', () => {
  const point = (words: string, given: boolean) => ({
    earns: say(words),
    also: [],
    not: [],
    ignore: [],
    carries: false,
    ...(given ? { given: ['completion'] } : {}),
  });
  const scheme = (...points: SchemeBlock['points']): Document =>
    documentOf('scheme', { kind: 'scheme', label: '1a', marks: points.length, answer: [say('7')], points, worked: [], seen: [] });

  it('is told in the line of its point, by a letter at the right end that is read aloud in full', () => {
    const points = [point('one', true), point('two', false), point('three', true)];
    const texts = linesOf(scheme(...points)).map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining(['onec', 'two', 'threec']));
    const aloud = readingOrder(readPdf(printPdf(scheme(...points), DEFAULT_SETTINGS, FONTS)));
    expect(aloud.filter((line) => line === 'printed on the completion copy')).toHaveLength(2);
  });

  it('leaves what else is right and what is not on one line where that holds both, else on a line each', () => {
    const lines = (not: string) =>
      linesOf(scheme({ ...point('one', false), also: [say('two')], not: [say(not)], carries: true })).map(({ text }) =>
        text.replace(/\s+/g, ' '),
      );
    expect(lines('three')).toContain('also right two · carries on · not right three');
    const long = 'three words that are said again '.repeat(4).trim();
    expect(lines(long)).toContain('also right two · carries on');
  });

  it('stands dark on the sheet; only schemes have worked lines in the light cut', () => {
    const working: Block = { kind: 'working', lines: [{ left: say('{E°cell}'), right: say('{q +1.10 V}') }] };
    const faces = (document: Document) => new Set(linesOf(document).flatMap(({ items }) => items.map(({ face }) => face)));
    expect([...faces(documentOf('sheet', working))]).not.toContain('light');
    const inScheme = documentOf('scheme', {
      kind: 'scheme',
      label: '1',
      marks: 1,
      answer: [],
      points: [],
      worked: [working],
      seen: [],
    });
    expect([...faces(inScheme)]).toContain('light');
  });
});

describe('a long list of little', () => {
  const rows = Array.from({ length: 15 }, (_, at) => [say(`row ${at + 1}`), say(`${at + 1}a`)]);
  const list = (more: object): Block => ({
    kind: 'table',
    summary: 'A list',
    header: [say('what'), say('where')],
    rows,
    rowHeaders: true,
    align: ['start', 'start'],
    ...more,
  });
  const texts = (items: readonly TextItem[]) => items.filter(({ text }) => text.startsWith('row')).map(({ x }) => Math.round(x));
  const onPage = (document: Document) =>
    layout(document, DEFAULT_SETTINGS, FONTS).pages.map(({ items }) =>
      items.filter((item): item is TextItem => item.kind === 'text'),
    );

  it('folds into columns on paper, and stays one table that is read in its order', () => {
    const document = documentOf('scheme', { kind: 'heading', level: 1, content: say('List') }, list({ folds: true }));
    expect(new Set(texts(onPage(document)[0]!)).size).toBe(4);
    const aloud = readingOrder(readPdf(printPdf(document, DEFAULT_SETTINGS, FONTS)));
    expect(aloud).toEqual(['List', 'what', 'where', ...rows.flatMap((_, at) => [`row ${at + 1}`, `${at + 1}a`])]);
  });

  it('keeps to one column in large print', () => {
    const [page] = layout(documentOf('scheme', list({ folds: true })), { ...DEFAULT_SETTINGS, print: 'large' }, FONTS).pages;
    expect(new Set(texts(page!.items.filter((item): item is TextItem => item.kind === 'text'))).size).toBe(1);
  });

  it('is never parted by a page turn when it is to be cut out', () => {
    const copies = Array.from({ length: 5 }, () => list({ whole: true }));
    const counts = onPage(documentOf('scheme', ...copies)).map((items) => texts(items).length);
    expect(counts.every((count) => count % rows.length === 0)).toBe(true);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(5 * rows.length);
  });
});

describe('a step of working', () => {
  it('ends no line in an equals sign, in any print', () => {
    const working: Block = {
      kind: 'working',
      lines: [
        {
          left: say('{n(MnO4^-)}'),
          right: say('{q 0.0200 mol dm^-3} × {q 17.50 cm^3} ÷ 1000 = {q 8.750e-4 mol} = {q 0.000875 mol}'),
        },
      ],
    };
    let begun = 0;
    for (const print of ['standard', 'clear', 'large', '24', '36'] as const) {
      const lines = linesOf(documentOf('scheme', working), print).map(({ text }) => text.trim());
      for (const text of lines) expect(text).not.toMatch(/=$/);
      begun += lines.filter((text) => text.startsWith('=')).length;
    }
    expect(begun).toBeGreaterThan(1);
  });

  it('ends none in it behind a fraction either, where what follows just fits below', () => {
    const fraction = { kind: 'fraction', above: say('0.0395 × 19.25'), below: say('1000') } as const;
    const right = [fraction, ...say(' = {q 7.604e-4 mol}')];
    for (let width = 270; width <= 480; width += 2) {
      const room = frameRoom(documentOf('scheme'), { ...DEFAULT_SETTINGS, print: '36' }, FONTS);
      const pen = { ...room.pen, face: 'strong' as const };
      const slabs = layWorking({ kind: 'working', lines: [{ left: say('{n(I2)}'), right }] }, { ...room, pen, width });
      for (const { items } of slabs) {
        const texts = items.flatMap((item) => (item.kind === 'text' && item.text.trim() ? [item.text.trim()] : []));
        expect(texts.at(-1)).not.toBe('=');
      }
    }
  });
});

describe('scripts', () => {
  const faceOf = (print: Print) =>
    linesOf(documentOf('sheet', { kind: 'paragraph', content: say('of {E°cell}') }), print)
      .flatMap(({ items }) => items)
      .find(({ text }) => text === 'cell')!.face;

  it('are of a heavier cut where they are small, and of the text\u2019s own where they may not be', () => {
    expect(faceOf('standard')).toBe('medium');
    for (const print of ['clear', 'large', '24', '36'] as const) expect(faceOf(print)).toBe('regular');
  });
});

describe('a table in large print', () => {
  const readings: Block = {
    kind: 'table',
    summary: 'Readings',
    header: [say('Reading'), say('Value')],
    rows: [[say('concentration of the hydrogen peroxide solution'), say('{q 25.0 cm^3}')]],
    rowHeaders: false,
    align: ['start', 'end'],
    widths: [1, 1],
  };
  const left = (print: Print) =>
    linesOf(documentOf('scheme', readings), print).filter(({ text }) => /[a-z]{5}/.test(text)).length;

  it('lets a column pass on what it does not need', () => {
    expect(left('24')).toBeLessThanOrEqual(3);
  });

  it('of three columns has no row of more than four lines; else its cells stand one below the other', () => {
    const cells: Block = {
      kind: 'table',
      summary: 'Half-cells',
      header: [say('Electrode and solution'), say('Half-equation'), say('{E°} / V')],
      rows: [
        [
          say('platinum in a solution of hexacyanoferrate(III) and hexacyanoferrate(II) ions'),
          say('{[Fe(CN)6]^3-(aq) + e^- <=> [Fe(CN)6]^4-(aq)}'),
          say('+0.36'),
        ],
      ],
      rowHeaders: false,
      align: ['start', 'start', 'end'],
    };
    const told = (print: Print) => linesOf(documentOf('scheme', cells), print).map(({ text }) => text);
    expect(told('24').some((text) => text.startsWith('Electrode and solution: platinum in'))).toBe(true);
    expect(told('standard').some((text) => text.includes('Electrode and solution:'))).toBe(false);
  });
});

describe('the head of a sheet in the largest print', () => {
  it('has its sentence on one page', () => {
    const document = documentOf('sheet', {
      kind: 'head',
      title: 'Redox and transition metals',
      facts: ['Oxidation and reduction, transition metals', '26 minutes (33 with extra time)', '21 marks'],
      cells: ['Name', 'Class', 'Date', 'Marks / 21'],
      note: say('A calculator and a periodic table may be used. The values printed here are the ones to use.'),
    });
    const pages = layout(document, { ...DEFAULT_SETTINGS, print: '36' }, FONTS).pages.map(({ items }) =>
      items.flatMap((item) => (item.kind === 'text' ? item.text : [])).join(' '),
    );
    expect(pages).toHaveLength(1);
    expect(pages[0]).toMatch(/A calculator .*to\s+use/);
  });
});

describe('a figure in the largest print', () => {
  it.each(['a4', 'letter'] as const)('has its heading on its page, on %s', (paper) => {
    const rungs = [
      { oxidised: say('{Cr^3+}'), reduced: say('{Cr^2+}'), volts: parseDecimal('-0.41') },
      { oxidised: say('{V^3+}'), reduced: say('{V^2+}'), volts: parseDecimal('-0.26') },
      { oxidised: say('{Cr2O7^2-}'), reduced: say('{Cr^3+}'), volts: parseDecimal('1.33') },
    ];
    const figure = ladderFigure(rungs, [{ from: 1, to: 0 }]);
    const document = documentOf('scheme', { kind: 'heading', level: 2, content: say('Question 6a') }, { kind: 'figure', figure });
    const [first] = layout(document, { ...DEFAULT_SETTINGS, paper, print: '36' }, FONTS).pages;
    expect(first!.items.filter((item) => item.kind === 'path').length).toBeGreaterThan(5);
  });
});
