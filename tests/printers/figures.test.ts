import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Document } from '../../src/document/document.ts';
import type { Figure, Primitive } from '../../src/document/figure.ts';
import { axesFigure } from '../../src/document/figures/axes-figure.ts';
import { buretteFigure } from '../../src/document/figures/burette-figure.ts';
import { cellFigure } from '../../src/document/figures/cell-figure.ts';
import type { HalfCellDrawing } from '../../src/document/figures/half-cell-shape.ts';
import { ladderFigure } from '../../src/document/figures/ladder-figure.ts';
import { spread } from '../../src/document/figures/spread.ts';
import { speakInlines } from '../../src/document/spoken.ts';
import { type Decimal, parseDecimal, printDecimal } from '../../src/exact/decimal.ts';
import { Rational } from '../../src/exact/rational.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { inspect } from '../../src/readers/inspect.ts';
import { readPdf } from '../../src/readers/read-pdf.ts';
import { say } from '../pages/say.ts';
import { FONTS } from '../pages/test-fonts.ts';
import { runText } from '../support/page-text.ts';

type Label = Extract<Primitive, { kind: 'label' }>;
type Path = Extract<Primitive, { kind: 'path' }>;

const labelsOf = ({ draw }: Figure): Label[] => draw.filter((each): each is Label => each.kind === 'label');
const pathsOf = ({ draw }: Figure): Path[] => draw.filter((each): each is Path => each.kind === 'path');
const textOf = ({ label, below = [] }: Label): string => [label, ...below].map(runText).join(', ');
const points = ({ path }: Path) => path.flatMap((part) => (part.to === 'close' ? [] : [[part.x, part.y] as const]));

/** The value at a height, from two figures of the scale: what a reader with a ruler would find. */
function readAt(y: number, scale: readonly Label[], of: (label: Label) => number = (label) => label.y): number {
  const [one, other] = [scale[0]!, scale.at(-1)!];
  const [a, b] = [one, other].map((each) => Number(runText(each.label).replace('\u2212', '-')));
  return a! + ((y - of(one)) / (of(other) - of(one))) * (b! - a!);
}

const zinc: HalfCellDrawing = { name: 'A', kind: 'metal', electrode: 'zinc', ions: [say('{Zn^2+}')] };
const iron: HalfCellDrawing = { name: 'B', kind: 'solution', electrode: 'platinum', ions: [say('{Fe^3+}'), say('{Fe^2+}')] };
const chlorine: HalfCellDrawing = { name: 'B', kind: 'gas', electrode: 'platinum', gas: 'chlorine', ions: [say('{Cl^-}')] };
const hydrogen: HalfCellDrawing = { name: 'A', kind: 'gas', electrode: 'platinum', gas: 'hydrogen', ions: [say('{H^+}')] };

const rungs = [
  { oxidised: say('{VO2^+}'), reduced: say('{VO^2+}'), volts: parseDecimal('1.00') },
  { oxidised: say('{VO^2+}'), reduced: say('{V^3+}'), volts: parseDecimal('0.34') },
  { oxidised: say('{V^3+}'), reduced: say('{V^2+}'), volts: parseDecimal('-0.26') },
  { oxidised: say('{Sn^2+}'), reduced: say('{Sn}'), volts: parseDecimal('-0.14') },
];
const ladder = ladderFigure(rungs, [
  { from: 3, to: 0 },
  { from: 3, to: 1 },
]);
const burette = buretteFigure([
  { name: 'start', reading: parseDecimal('0.15') },
  { name: 'end', reading: parseDecimal('23.40') },
]);
const plotted = [
  ['0.02', '0.08'],
  ['0.08', '0.31'],
  ['0.15', '0.55'],
].map(([x, y]) => [Rational.parse(x!), Rational.parse(y!)] as const);
const x = {
  label: say('{c(Cu^2+)} / mol dm⁻³'),
  squares: 10,
  scale: { start: parseDecimal('0'), step: parseDecimal('0.02') },
};
const y = { label: say('absorbance'), squares: 6, scale: { start: parseDecimal('0'), step: parseDecimal('0.1') } };
const axes = axesFigure(x, y, { points: plotted, through: [plotted[0]!, plotted[2]!] });

const FIGURES: Readonly<Record<string, Figure>> = {
  'metal and mixed ions': cellFigure(zinc, iron),
  'two gases': cellFigure(hydrogen, chlorine),
  ladder,
  burette,
  axes,
};

describe.each(Object.entries(FIGURES))('the figure of %s', (_, figure) => {
  it('has lines of a point and more, save those of a grid and the edges of what is filled', () => {
    const lines = pathsOf(figure).filter(({ stroke, fill }) => !stroke && !fill);
    expect(lines.length).toBeGreaterThan(3);
    for (const { line } of lines) expect(line).toBeGreaterThanOrEqual(1);
  });

  it('is told in words', () => {
    expect(figure.alt.length).toBeGreaterThan(60);
    expect(figure.alt).not.toMatch(/undefined|\[object|[{}^]/);
  });

  it.each(['standard', 'clear', 'large', '24', '36'] as const)(
    'has labels that keep clear of one another in print %s',
    (print) => {
      const document: Document = {
        title: 'Figure',
        language: 'en-GB',
        subject: 'Figure',
        kind: 'sheet',
        foot: 'Figure',
        blocks: [
          { kind: 'heading', level: 1, content: say('Figure') },
          { kind: 'figure', figure },
          { kind: 'paragraph', content: say('end') },
        ],
      };
      const bytes = printPdf(document, { ...DEFAULT_SETTINGS, print }, FONTS);
      // alone on its page, a figure has few lines around it
      expect(inspect(bytes).faults.filter(({ code }) => code !== 'orphan')).toEqual([]);
      const printed = readPdf(bytes)
        .pages.flatMap(({ runs }) => runs.map(({ text }) => text))
        .join('');
      for (const each of labelsOf(figure).filter(({ scale }) => !scale)) {
        const words = textOf(each)
          .split(/[^A-Za-z]+/)
          .filter((word) => word.length > 3);
        for (const word of words) expect(printed).toContain(word);
      }
    },
  );
});

describe('two half-cells', () => {
  it('are drawn alike: nothing tells which electrode is positive', () => {
    for (const figure of [cellFigure(zinc, iron), cellFigure(hydrogen, chlorine)]) {
      expect([...labelsOf(figure).map(textOf), figure.alt].join(' ')).not.toMatch(
        /positive|negative|cathode|anode|(?<!\^\d?)[−+]|\d V/i,
      );
    }
    const same = cellFigure({ ...zinc, name: 'A' }, { ...zinc, name: 'B' });
    const centre = same.width / 2;
    const xs = pathsOf(same).flatMap((path) => points(path).map(([at]) => Math.round(100 * Math.abs(at - centre))));
    const counts = new Map<number, number>();
    for (const at of xs) counts.set(at, (counts.get(at) ?? 0) + 1);
    for (const [at, count] of counts) if (at > 1500) expect(count % 2, `${at / 100} points from the middle`).toBe(0);
  });

  it('stand in the order given', () => {
    const at = (figure: Figure, word: string) => labelsOf(figure).find((label) => textOf(label) === word)!.x;
    expect(at(cellFigure(zinc, iron), 'A')).toBeLessThan(at(cellFigure(zinc, iron), 'B'));
    expect(at(cellFigure(iron, zinc), 'A')).toBeGreaterThan(at(cellFigure(iron, zinc), 'B'));
  });

  it('say in words what is drawn, ions as they are read out', () => {
    expect(cellFigure(zinc, chlorine).alt).toBe(
      'Two half-cells, A at the left and B at the right. A salt bridge joins the solutions; wires join the electrodes to a voltmeter. In A: zinc, in a solution of Z small n, charge 2 plus. In B: chlorine gas over platinum, in a solution of C small l, charge 1 minus.',
    );
  });
});

describe('a ladder with rungs close together', () => {
  const close = [1, 3].map((at) => rungs[at]!);
  const volts = (text: string) => ({ ...close[0]!, volts: parseDecimal(text) });
  const shaftsOf = (all: readonly (typeof close)[number][]) =>
    pathsOf(ladderFigure(all, [{ from: 0, to: 1 }])).flatMap((path) => {
      const at = points(path);
      return at.length === 3 ? [Math.max(...at.map(([, y]) => y)) - Math.min(...at.map(([, y]) => y))] : [];
    });

  it('is drawn taller, so that its arrow has a whole head: 0.15 V in a scale of 2 V', () => {
    expect(shaftsOf([volts('-0.15'), volts('0.00'), volts('1.36')])[0]).toBeGreaterThan(6);
  });
});

describe('a potential ladder', () => {
  const scale = labelsOf(ladder).filter((label) => label.scale === 'E');
  const levels = pathsOf(ladder)
    .filter((path) => path.line > 1)
    .map((path) => points(path)[0]![1]);

  it('has its most negative value at the top', () => {
    expect(scale.map((label) => runText(label.label))).toEqual(['−0.5', '0.0', '+0.5', '+1.0', '+1.5']);
    expect(scale.map(({ y: at }) => at)).toEqual(scale.map(({ y: at }) => at).sort((a, b) => a - b));
  });

  it('has each rung at its value', () => {
    const read = levels.map((at) => readAt(at, scale)).sort((a, b) => a - b);
    const wanted = rungs.map(({ volts }) => volts.value.toNumber()).sort((a, b) => a - b);
    for (const [at, value] of wanted.entries()) expect(read[at]).toBeCloseTo(value, 6);
  });

  it('has arrows from the couple that gives electrons down to the one that takes them', () => {
    const tips = pathsOf(ladder)
      .filter(({ fill }) => fill === 'ink')
      .map((path) => readAt(points(path)[0]![1], scale));
    expect(tips.map((value) => value.toFixed(1))).toEqual(['1.0', '0.3']);
    expect(ladder.alt).toContain(
      'An arrow leads from the couple S small n, charge 2 plus with S small n to the couple V O 2, charge 1 plus with V O, charge 2 plus.',
    );
  });
});

describe('labels spread over a height', () => {
  it('are a pitch apart, in order, and where they belong when there is room', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 8 }), (heights) => {
        const wanted = heights.sort((a, b) => a - b);
        const found = spread(wanted, 14);
        for (let at = 1; at < found.length; at++) expect(found[at]! - found[at - 1]!).toBeGreaterThan(14 - 1e-9);
        const mean = (list: readonly number[]) => list.reduce((sum, each) => sum + each, 0) / list.length;
        expect(mean(found)).toBeCloseTo(mean(wanted), 6);
      }),
    );
    expect(spread([10, 50, 90], 14)).toEqual([10, 50, 90]);
  });
});

describe('a burette', () => {
  /** The reading, from the lowest point of the meniscus and the two numbered marks. */
  function readingOf(figure: Figure): number {
    const meniscus = pathsOf(figure).find(({ path, fill }) => !fill && path.some(({ to }) => to === 'curve'))!;
    const lowest = Math.max(...points(meniscus).map(([, at]) => at));
    const numbers = labelsOf(figure).filter((label) => /^\d+$/.test(runText(label.label)));
    return readAt(lowest, numbers);
  }

  it('can be read to 0.05 cm³, and gives the reading it was drawn for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 990 }), (twentieths) => {
        const reading: Decimal = { value: Rational.of(twentieths, 20), places: 2 };
        const found = readingOf(buretteFigure([{ name: 'end', reading }]));
        expect(Math.abs(found - reading.value.toNumber()), printDecimal(reading)).toBeLessThan(0.001);
      }),
    );
  });

  it('has marks 0.1 cm³ apart, five points high, so that half of one is told', () => {
    const ticks = pathsOf(buretteFigure([{ name: 'end', reading: parseDecimal('12.35') }]))
      .filter((path) => points(path).length === 2 && points(path)[0]![1] === points(path)[1]![1])
      .map((path) => points(path)[0]![1]);
    expect(ticks.length).toBe(25);
    for (let at = 1; at < ticks.length; at++) expect(ticks[at]! - ticks[at - 1]!).toBeCloseTo(5, 9);
  });

  it('is told in divisions, so that the figure is left to be read off', () => {
    expect(burette.alt).toContain('start: the bottom of the meniscus is 1.5 divisions below the mark 0');
    expect(burette.alt).toContain('end: the bottom of the meniscus is 4 divisions below the mark 23');
    expect(burette.alt).not.toMatch(/23\.4|0\.15/);
  });
});

describe('axes with a squared grid', () => {
  it('have crosses where the data are, by the figures at the axes', () => {
    const [along, up] = ['x', 'y'].map((name) => labelsOf(axes).filter(({ scale }) => scale === name));
    // the two strokes of a cross share their middle
    const strokes = pathsOf(axes).filter(
      (path) => !path.stroke && points(path).length === 2 && Math.abs(points(path)[0]![0] - points(path)[1]![0]) === 6,
    );
    const middles = strokes.map((path) =>
      [0, 1].map((side) => (points(path)[0]![side as 0]! + points(path)[1]![side as 0]!) / 2),
    );
    const found = middles
      .filter((_, at) => at % 2 === 0)
      .map(([left, top]) => [readAt(left!, along!, (label) => label.x), readAt(top!, up!)]);
    expect(found).toHaveLength(plotted.length);
    for (const [at, [px, py]] of found.entries()) {
      expect(px).toBeCloseTo(plotted[at]![0].toNumber(), 6);
      expect(py).toBeCloseTo(plotted[at]![1].toNumber(), 6);
    }
  });

  it('have no figures where the pupil is to choose the scale', () => {
    const blank = axesFigure({ label: say('time'), squares: 8 }, { label: say('volume'), squares: 6 });
    expect(labelsOf(blank).map(textOf)).toEqual(['time', 'volume']);
    expect(() => axesFigure({ label: say('time'), squares: 8 }, y, { points: plotted })).toThrow('expected an axis with a scale');
  });

  it('are told with their ranges', () => {
    expect(axes.alt).toBe(
      `Axes with a squared grid. Along, ${speakInlines(x.label)}, from 0.00 to 0.20, 10 squares. Upwards, absorbance, from 0.0 to 0.6, 6 squares. 3 points are plotted. A straight line is drawn.`,
    );
  });
});
