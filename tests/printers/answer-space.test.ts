import { describe, expect, it } from 'vitest';
import type { AnswerSpace } from '../../src/document/block.ts';
import type { Document } from '../../src/document/document.ts';
import type { PathItem } from '../../src/printers/pdf/item.ts';
import { layout } from '../../src/printers/pdf/layout.ts';
import { DEFAULT_SETTINGS, MM, type Print } from '../../src/printers/pdf/settings.ts';
import { say } from '../pages/say.ts';
import { FONTS } from '../pages/test-fonts.ts';

/** Paths drawn for an answer space alone on a page, the foot left out. */
function drawn(space: AnswerSpace, print: Print = 'standard'): PathItem[] {
  const document: Document = {
    title: 'Space',
    language: 'en-GB',
    subject: 'Space',
    kind: 'scheme',
    foot: 'Space',
    blocks: [{ kind: 'answer', space }],
  };
  const [page] = layout(document, { ...DEFAULT_SETTINGS, print }, FONTS).pages;
  return page!.items.filter((item): item is PathItem => item.kind === 'path');
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
