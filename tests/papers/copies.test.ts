import { describe, expect, it } from 'vitest';
import { readFonts } from '../../src/cli/read-fonts.ts';
import type { Block } from '../../src/document/block.ts';
import type { Document } from '../../src/document/document.ts';
import { answerKey } from '../../src/papers/answer-key.ts';
import { dataPage } from '../../src/papers/data-page.ts';
import { feedbackNotes } from '../../src/papers/feedback-notes.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import { solutionsSheet } from '../../src/papers/solutions-sheet.ts';
import { teacherCopy } from '../../src/papers/teacher-copy.ts';
import { layout } from '../../src/printers/pdf/layout.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { inlinesIn, plainText } from '../../src/questions/gate/inlines-of.ts';
import { inProject, tables, wording } from '../support/data.ts';

const fonts = readFonts(inProject('.'));

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
  it('put the answer of each part into its own place in the teacher copy, which is the sheet in all else', () => {
    const copy = teacherCopy(paper, wording);
    const sheet = questionSheet(paper, wording);
    const parts = (blocks: readonly Block[]) => blocks.flatMap((block) => (block.kind === 'question' ? block.parts : []));
    for (const part of parts(copy.blocks)) {
      const places = part.blocks.filter(({ kind }) => kind === 'answer' || kind === 'options');
      expect(places).toHaveLength(1);
      for (const place of places) expect(place).toMatchObject(place.kind === 'answer' ? { filled: {} } : {});
    }
    const bare = parts(copy.blocks).map(({ blocks, ...part }) => ({
      ...part,
      blocks: blocks.map((block) => {
        if (block.kind !== 'answer') return block;
        const { filled: _filled, ...empty } = block;
        return empty;
      }),
    }));
    expect(bare).toEqual(parts(sheet.blocks));
  });

  it.each(['standard', 'clear', 'large'] as const)(
    'turn the pages of the teacher copy where the sheet turns them, in print %s',
    (print) => {
      const starts = (document: Document) => {
        const pages = layout(document, { ...DEFAULT_SETTINGS, print }, fonts).pages;
        return pages.flatMap(({ bookmarks, number }) =>
          bookmarks.flatMap(({ title }) => (/^Question \d+$/.test(title) ? [`${title}: ${number}`] : [])),
        );
      };
      expect(starts(teacherCopy(paper, wording))).toEqual(starts(questionSheet(paper, wording)));
    },
  );

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

  it('write one note of at most thirty words for each misconception that can show itself', () => {
    const notes = feedbackNotes(paper, tables, wording).blocks.filter((block) => block.kind === 'given');
    expect(notes.length).toBeGreaterThan(5);
    expect(new Set(notes.map(({ caption }) => caption)).size).toBe(notes.length);
    for (const { blocks } of notes) expect(said(blocks.slice(0, 1)).split(/\s+/).length).toBeLessThanOrEqual(30);
  });
});
