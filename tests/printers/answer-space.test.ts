import { describe, expect, it } from 'vitest';
import type { AnswerBlock, AnswerSpace } from '../../src/document/block.ts';
import type { Document } from '../../src/document/document.ts';
import type { Ink, PathItem, TextItem } from '../../src/printers/pdf/item.ts';
import { layout } from '../../src/printers/pdf/layout.ts';
import { DEFAULT_SETTINGS, MM, measure, type Print } from '../../src/printers/pdf/settings.ts';
import { say } from '../pages/say.ts';
import { FONTS } from '../pages/test-fonts.ts';
import { inkBox } from './ink-box.ts';

/** What stands on a page for an answer space alone, the foot left out. */
function itemsOf(answer: AnswerBlock, print: Print): readonly Ink[] {
  const document: Document = {
    title: 'Space',
    language: 'en-GB',
    subject: 'Space',
    kind: 'scheme',
    foot: 'Space',
    blocks: [answer],
  };
  return layout(document, { ...DEFAULT_SETTINGS, print }, FONTS).pages[0]!.items;
}

function drawn(space: AnswerSpace, print: Print = 'standard'): PathItem[] {
  return itemsOf({ kind: 'answer', space }, print).filter((item): item is PathItem => item.kind === 'path');
}

function heightOf({ path }: PathItem): number {
  const ys = path.flatMap((part) => (part.to === 'close' ? [] : [part.y]));
  return Math.max(...ys) - Math.min(...ys);
}

const working = (marks: number) => drawn({ kind: 'working', marks, symbol: say('{E°cell}'), unit: 'V' })[0]!;

describe('a box for working', () => {
  it('is 25 to 35 mm high for up to three marks, and grows by 7 mm with each mark more', () => {
    const heights = [1, 2, 3, 4, 5, 6].map((marks) => heightOf(working(marks)) / MM);
    const answerLine = heights[0]! - 25;
    expect(answerLine).toBeGreaterThan(4);
    expect(heights.map((height) => Math.round(10 * (height - answerLine)) / 10)).toEqual([25, 28.5, 32, 39, 46, 53]);
  });
});

describe('a squared grid', () => {
  const lines = drawn({ kind: 'grid', across: 8, down: 6 });

  it('has centimetre squares, each in fifths', () => {
    const upright = lines.filter((item) => heightOf(item) > 0);
    expect(upright).toHaveLength(8 * 5 + 1);
    expect(heightOf(upright[0]!) / MM).toBeCloseTo(60, 0);
    expect(upright.filter(({ line }) => line > 0.5)).toHaveLength(9);
  });

  it('is drawn in a grey that steps back behind a pencil line', () => {
    for (const { ink } of lines) expect(ink).toBeGreaterThan(0.4);
  });

  it('grows with the print until it fills the room', () => {
    const wide = drawn({ kind: 'grid', across: 8, down: 6 }, 'large');
    expect(heightOf(wide.find((item) => heightOf(item) > 0)!)).toBeGreaterThan(1.5 * 60 * MM);
  });

  it('has its axes when they are given', () => {
    const axes = { x: { label: say('time / s') }, y: { label: say('volume / cm³') } };
    expect(drawn({ kind: 'grid', across: 8, down: 6, axes }).filter(({ line }) => line > 1)).toHaveLength(1);
  });
});

/** Left and right ends of dotted lines, from the top of the page. */
const dotted = (paths: readonly PathItem[]) =>
  paths
    .filter(({ dash }) => dash)
    .map(({ x, y, path }) => ({ y, left: x, width: Math.max(...path.map((part) => (part.to === 'line' ? part.x : 0))) }));

describe('the line for an equation', () => {
  const lines = (print: Print) => dotted(drawn({ kind: 'equation', arrow: 'forward', count: 1 }, print));

  it.each(['standard', 'clear', 'large'] as const)('has both its sides on one line in print %s', (print) => {
    expect(new Set(lines(print).map(({ y }) => y)).size).toBe(1);
  });

  it.each(['24', '36'] as const)('has a line for each side in print %s, the first over the whole room', (print) => {
    const [left, right] = lines(print);
    expect(right!.y - left!.y).toBeGreaterThan(Number(print));
    const frame = (210 - 40) * MM;
    expect(left!.width).toBeGreaterThan(0.98 * frame);
    // three terms of a half-equation, such as `VO2+ + 2H+ + e-`, take ten ems of writing
    expect(right!.width).toBeGreaterThan(0.75 * frame);
  });
});

describe('lines to write on and lines of figures', () => {
  const weight = (print: Print) => drawn({ kind: 'lines', count: 1 }, print)[0]!;

  it('grow with the print, and are darker in large print', () => {
    const [standard, ...more] = (['standard', 'clear', 'large', '24', '36'] as const).map(weight);
    expect(standard).toMatchObject({ line: 0.9, ink: 0.45 });
    let before = standard!;
    for (const each of more) {
      expect(each.line).toBeGreaterThan(before.line);
      expect(each.ink).toBeLessThan(0.4);
      before = each;
    }
    expect(before.line).toBeGreaterThan(2);
  });

  it.each(['24', '36'] as const)('are 1.5 pt where they were 1 pt in figures, in print %s', (print) => {
    const axes = { x: { label: say('time / s') }, y: { label: say('volume / cm³') } };
    const thickest = (of: Print) => Math.max(...drawn({ kind: 'grid', across: 8, down: 6, axes }, of).map(({ line }) => line));
    expect(thickest(print)).toBeCloseTo(1.5 * thickest('standard'));
  });
});

describe('an equation written into the two lines of huge print', () => {
  it.each(['24', '36'] as const)('has a side on each and its arrow at the head of the second, in print %s', (print) => {
    const content = say('{2Fe^3+ + Cu -> 2Fe^2+ + Cu^2+}');
    const answer: AnswerBlock = {
      kind: 'answer',
      space: { kind: 'equation', arrow: 'forward', count: 1 },
      filled: { working: [], answers: [{ content, worked: false }] },
    };
    const items = itemsOf(answer, print);
    const texts = items.filter((item): item is TextItem => item.kind === 'text' && item.mark !== undefined);
    const rows = [...new Set(items.flatMap((item) => (item.kind === 'path' && item.dash ? [item.y] : [])))];
    const on = (row: number) => texts.filter(({ y }) => Math.abs(rows[row]! - y) < Number(print) * 0.6).map(({ text }) => text);
    expect(on(0).join('')).toBe('2Fe3++Cu');
    expect(on(1).join('')).toBe('⟶2Fe2++Cu2+');
    expect(new Set(texts.map(({ mark }) => mark!.tag)).size).toBe(1);
  });
});

describe('the gap for a result', () => {
  const symbols = Array.from({ length: 24 }, (_, n) => say(`{c(Fe^2+)}${' of it'.repeat(n / 4)}${'i'.repeat(n % 4)}`));

  it.each(['standard', 'clear', 'large', '24', '36'] as const)('holds four figures and a point in print %s', (print) => {
    const em = measure({ ...DEFAULT_SETTINGS, print }).size.text;
    for (const symbol of symbols) {
      const [gap] = dotted(drawn({ kind: 'working', marks: 2, symbol, unit: 'mol dm^-3' }, print));
      // a figure of the face is half an em wide, a point a quarter
      expect(gap!.width).toBeGreaterThan(2.75 * em);
    }
  });
});

describe('a long answer written between the rules of large print', () => {
  it.each(['large', '24', '36'] as const)('keeps its raised signs inside the space, in print %s', (print) => {
    const content = say(`{Fe^3+} and {Cr2O7^2-} are both oxidising agents: ${'both stand on the left. '.repeat(14)}`);
    const filled = { working: [], answers: [{ content, worked: false }] };
    const items = itemsOf({ kind: 'answer', space: { kind: 'lines', count: 4 }, filled }, print);
    // the space begins at the top margin of 15 mm
    for (const item of items) if (item.kind === 'text' && item.mark) expect(inkBox(item)[1]).toBeGreaterThan(15 * MM - 0.1);
  });
});
