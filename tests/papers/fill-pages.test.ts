import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillPages, neighbours } from '../../src/papers/fill-pages.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import type { SheetRequest } from '../../src/papers/request.ts';
import { layout } from '../../src/printers/pdf/layout.ts';
import { measureOrders } from '../../src/printers/pdf/measure-orders.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { itemMarks } from '../../src/questions/part-marks.ts';
import type { Question } from '../../src/questions/question.ts';
import { fonts, PLAIN, tables, wording } from '../pages/papers.ts';

/** A question of which only marks, strategy and code matter. */
const plain = (marks: number, strategy: string, code: string) =>
  ({ code, strategy, parts: [{ points: Array.from({ length: marks }, (_, at) => ({ id: `p${at}` })) }] }) as unknown as Question;

const request = (seed: string, count: number): SheetRequest => ({ ...PLAIN, seed, length: { unit: 'questions', count } });

describe('filling pages', () => {
  /** Cost of an order by which two questions stand side by side. */
  const costOf = (questions: readonly Question[], seed: number) => (order: readonly number[]) =>
    order.reduce((sum, place, at) => sum + (((questions[place]!.code.charCodeAt(0) * (at + seed)) % 17) + 1), 0);

  it('keeps every question, costs no more, and puts none before an easier one of a lower band nor beside one of its strategy', () => {
    const one = fc.record({ marks: fc.integer({ min: 1, max: 8 }), strategy: fc.constantFrom('s', 't', 'u') });
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 9 }), fc.nat(50), (asked, seed) => {
        const questions = asked.map(({ marks, strategy }, at) => plain(marks, strategy, String.fromCharCode(65 + at)));
        const cost = costOf(questions, seed);
        const filled = fillPages(questions, cost);
        const places = filled.map((question) => questions.indexOf(question));
        expect([...places].sort((a, b) => a - b)).toEqual([...questions.keys()]);
        expect(cost(places)).toBeLessThanOrEqual(cost([...questions.keys()]));
        expect(neighbours(filled)).toBeLessThanOrEqual(neighbours(questions));
        expect(overtakings(filled)).toBeLessThanOrEqual(overtakings(questions));
      }),
    );
  });

  const overtakings = (questions: readonly Question[]) =>
    questions.flatMap((early, at) => questions.slice(at + 1).filter((late) => itemMarks(early) > itemMarks(late) + 1)).length;

  it('moves a question inside its band, and never one out of it', () => {
    const questions = [plain(3, 's', 'a'), plain(4, 't', 'b'), plain(4, 'u', 'c'), plain(7, 's', 'd')];
    const wanting = (codes: string) => (order: readonly number[]) =>
      order.filter((place, at) => questions[place]!.code !== codes[at]).length;
    const codes = (cost: (order: readonly number[]) => number) =>
      fillPages(questions, cost)
        .map(({ code }) => code)
        .join('');
    expect(codes(wanting('bacd'))).toBe('bacd');
    expect(codes(wanting('dbca'))).toBe('abcd');
  });

  it('leaves an order as it is when no other gains', () => {
    const questions = [plain(3, 's', 'a'), plain(3, 't', 'b'), plain(3, 'u', 'c')];
    expect(fillPages(questions, () => 7)).toEqual(questions);
  });
});

describe('a sheet whose order was measured', () => {
  const white = (seed: string, measured: boolean) => {
    const aids = measured
      ? { measure: (sheet: Parameters<typeof measureOrders>[0]) => measureOrders(sheet, DEFAULT_SETTINGS, fonts) }
      : {};
    const paper = makePaper(request(seed, 8), tables, wording, 'fill', aids);
    const { pages } = layout(questionSheet(paper, wording), DEFAULT_SETTINGS, fonts);
    const feet = pages.slice(0, -1).map(({ items, frame }) => {
      const inked = items.flatMap((item) => (item.kind === 'text' && item.y <= frame.bottom ? [item.y] : []));
      return (frame.bottom - Math.max(...inked)) / (frame.bottom - frame.top);
    });
    return { paper, pages: pages.length, feet, codes: paper.questions.map(({ code }) => code) };
  };
  const seeds = Array.from({ length: 12 }, (_, at) => `fill ${at}`);
  const [before, after] = [false, true].map((measured) => seeds.map((seed) => white(seed, measured)));

  it('has the questions it would have had, in another order', () => {
    for (const [at, { codes }] of after!.entries()) expect([...codes].sort()).toEqual([...before![at]!.codes].sort());
    expect(after!.filter(({ codes }, at) => codes.join() !== before![at]!.codes.join()).length).toBeGreaterThan(0);
  });

  it('ends fewer pages early and needs no more of them', () => {
    const early = (sets: typeof after) => sets!.flatMap(({ feet }) => feet).filter((share) => share > 0.25).length;
    const pages = (sets: typeof after) => sets!.reduce((sum, set) => sum + set.pages, 0);
    expect(early(after)).toBeLessThan(early(before) / 2);
    expect(pages(after)).toBeLessThanOrEqual(pages(before));
  });

  it('has no page that is two fifths white', () => {
    for (const { feet } of after!) for (const share of feet) expect(share).toBeLessThan(0.4);
  });
});
