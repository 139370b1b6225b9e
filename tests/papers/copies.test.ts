import { describe, expect, it } from 'vitest';
import { readFonts } from '../../src/cli/read-fonts.ts';
import type { Block } from '../../src/document/block.ts';
import { answerKey } from '../../src/papers/answer-key.ts';
import { byPlace } from '../../src/papers/by-place.ts';
import { dataPage } from '../../src/papers/data-page.ts';
import { feedbackNotes } from '../../src/papers/feedback-notes.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import { placesOf } from '../../src/papers/reveals.ts';
import { solutionsSheet } from '../../src/papers/solutions-sheet.ts';
import { teacherCopy } from '../../src/papers/teacher-copy.ts';
import { layout } from '../../src/printers/pdf/layout.ts';
import type { Page } from '../../src/printers/pdf/page.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { inlinesIn, plainText } from '../../src/questions/gate/inlines-of.ts';
import { inProject, tables, wording } from '../support/data.ts';

const paper = makePaper(
  {
    seed: 'copies',
    name: 'copies',
    level: 'core',
    support: 'open',
    choice: 0,
    units: 'dm',
    families: ['cell-emf', 'half-equation', 'titration-concentration'],
    topics: [],
    without: [],
    length: { unit: 'questions', count: 6 },
  },
  tables,
  wording,
  '0.0.0',
);
const choices = makePaper({ ...paper.request, choice: 1, length: { unit: 'questions', count: 4 } }, tables, wording, '0.0.0');
const fonts = readFonts(inProject(''));
/** Words of a page and their heights on it; arrows, page numbers and the cell that names the copy aside. */
const wordsAt = ({ items, frame }: Page) =>
  items.flatMap((item) =>
    item.kind === 'text' && item.face !== 'symbol' && item.y < frame.bottom && item.text !== 'Name'
      ? [`${item.text} ${item.y.toFixed(1)}`]
      : [],
  );
const said = (blocks: readonly Block[]) => plainText(inlinesIn(blocks));
const tableOf = (blocks: readonly Block[], at: number) => blocks.filter((block) => block.kind === 'table')[at]!;

describe('the data page', () => {
  const { blocks } = dataPage(paper, tables, wording);
  const potentials = tableOf(blocks, 0);
  const printed = potentials.rows.map(([first]) => first!);
  const ids = (key: 'gives' | 'asks') =>
    new Set(paper.questions.flatMap((question) => question[key]).filter((fact) => fact.startsWith('half:')));

  it('holds every potential that the questions print, and six that they do not need', () => {
    expect(potentials.rows).toHaveLength(new Set([...ids('gives'), ...ids('asks')]).size + 6);
  });

  it('names only the couple while its half-equation is asked', () => {
    const hidden = printed.filter((row) => row.every(({ kind }) => kind !== 'equation'));
    expect(hidden).toHaveLength(ids('asks').size);
    expect(ids('asks').size).toBeGreaterThan(0);
  });

  it('prints potentials to two decimals and relative atomic masses to one', () => {
    for (const [, value] of potentials.rows) expect(plainText(value!)).toMatch(/^[+\u2212]?\d\.\d\d$/);
    const masses = tableOf(blocks, 1).rows.map(([element, mass]) => `${plainText(element!)} ${plainText(mass!)}`);
    expect(masses).toContain('H 1.0');
    expect(masses).toContain('O 16.0');
    for (const mass of masses) expect(mass).toMatch(/^[A-Z][a-z]? \d+\.\d$/);
  });
});

describe('copies for staff and pupils', () => {
  it('put the answer of each part into its space on the teacher copy', () => {
    const copy = teacherCopy(paper, wording);
    const spaces = copy.blocks.flatMap((block) =>
      block.kind === 'question' ? block.parts.map((part) => part.blocks.at(-1)!) : [],
    );
    expect(spaces.length).toBeGreaterThan(10);
    for (const space of spaces) expect(space.kind === 'answer' && space.filled?.answers.length).toBeGreaterThan(0);
  });

  it('fill the ring of the right option on the teacher copy, and no other', () => {
    const { blocks } = teacherCopy(choices, wording);
    const lists = blocks.flatMap((block) => (block.kind === 'question' ? block.parts.flatMap((part) => part.blocks) : []));
    const options = lists.flatMap((block) => (block.kind === 'options' ? [block.options] : []));
    expect(options).toHaveLength(4);
    options.forEach((each, at) => {
      const right = choices.questions[at]!.parts[0]!.options!.findIndex(({ slip }) => slip === undefined);
      expect(each.map((option) => option.right ?? false)).toEqual(each.map((_, place) => place === right));
    });
  });

  it('write what belongs into the gaps of a completion sheet on the teacher copy, and nothing on the sheet', () => {
    const half = { ...paper, request: { ...paper.request, support: 'completion' as const } };
    const gaps = (blocks: readonly Block[]) => inlinesIn(blocks).filter((inline) => inline.kind === 'gap');
    const sheet = gaps(questionSheet(half, wording).blocks);
    expect(sheet.length).toBeGreaterThan(2);
    expect(sheet.every(({ filled }) => filled === undefined)).toBe(true);
    const copy = gaps(teacherCopy(half, wording).blocks);
    expect(copy.map(({ filled }) => plainText(filled ?? [])).every((words) => words !== '')).toBe(true);
    expect(copy).toHaveLength(sheet.length);
  });

  it.each(['open', 'completion', 'prompts'] as const)(
    'turn the pages of the teacher copy where the %s sheet turns',
    (support) => {
      const own = { ...paper, request: { ...paper.request, support } };
      for (const fillable of [false, true]) {
        const settings = { ...DEFAULT_SETTINGS, fillable };
        const [sheet, copy] = [questionSheet(own, wording), teacherCopy(own, wording)].map((each) =>
          layout(each, settings, fonts),
        );
        sheet!.pages.forEach((page, at) => {
          const there = new Set(wordsAt(copy!.pages[at]!));
          expect(wordsAt(page).filter((word) => !there.has(word))).toEqual([]);
        });
        expect(copy!.pages.flatMap(({ fields }) => fields)).toEqual([]);
      }
    },
  );

  it('say a principle once in a part of a solution, and keep it with its line', () => {
    const solved = solutionsSheet(paper, wording).blocks.flatMap((block) => (block.kind === 'question' ? block.parts : []));
    expect(solved.length).toBeGreaterThan(10);
    for (const { blocks } of solved) {
      const principles = blocks.flatMap((block) => (block.kind === 'paragraph' && block.weight === 'light' ? [block] : []));
      expect(principles.every(({ keeps }) => keeps)).toBe(true);
      const words = principles.map(({ content }) => plainText(content));
      expect(new Set(words).size).toBe(words.length);
      for (const each of words) expect(each).toMatch(/^[A-Z].*\.$/);
    }
  });

  it('put its label before an answer that is a bare number in a solution', () => {
    const own = { ...paper.request, level: 'stretch' as const, families: ['stepwise-reduction'] };
    const ladders = makePaper({ ...own, length: { unit: 'questions', count: 4 } }, tables, wording, '0.0.0');
    const ends = solutionsSheet(ladders, wording).blocks.flatMap((block) => {
      const parts = block.kind === 'question' ? block.parts.flatMap(({ blocks }) => blocks) : [];
      return parts.flatMap((each) => (each.kind === 'display' ? [plainText(each.content)] : []));
    });
    expect(ends.length).toBeGreaterThan(4);
    for (const end of ends) expect(end).not.toMatch(/^[+\u2212]?\d+$/);
  });

  it('name the principle of each step in the worked solutions', () => {
    expect(said(solutionsSheet(paper, wording).blocks)).toContain(
      'Standard cell potential = more positive electrode potential minus less positive.',
    );
  });

  it('give the key one row a part, several times over', () => {
    const parts = paper.questions.reduce((sum, { parts: own }) => sum + own.length, 0);
    const tablesOfKey = answerKey(paper, wording).blocks.filter((block) => block.kind === 'table');
    expect(tablesOfKey.map(({ rows }) => rows.length)).toEqual([parts, parts, parts, parts]);
  });

  it('write one note of at most thirty words for each misconception that can show itself, in the order of the sheet', () => {
    const { rows } = tableOf(feedbackNotes(paper, tables, wording).blocks, 0);
    expect(rows.length).toBe(placesOf(paper).size);
    for (const [, note] of rows) expect(plainText(note!).split(/\s+/).length).toBeLessThanOrEqual(30);
    const places = rows.map(([where]) => plainText(where!).split(', '));
    for (const each of places) expect(each).toEqual([...each].sort(byPlace));
    const first = places.map(([one]) => one!);
    expect(first).toEqual([...first].sort(byPlace));
  });

  it('write nothing on a note for pupils that only staff are to read', () => {
    const notes = said(feedbackNotes(paper, tables, wording).blocks);
    for (const id of placesOf(paper).keys()) expect(notes).not.toContain(tables.misconceptions.get(id)!.name);
  });

  it('name no list, drawing or choice in a note that goes with a part which has none', () => {
    for (const { feedback } of tables.misconceptions.values()) expect(feedback).not.toMatch(/choose again|redraw|turn the list/i);
  });
});
