import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/document/block.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import type { Paper } from '../../src/papers/paper.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import type { SheetRequest } from '../../src/papers/request.ts';
import { inlinesIn, plainText } from '../../src/questions/gate/inlines-of.ts';
import { seeds, tables, wording } from '../support/data.ts';

const REQUEST: SheetRequest = {
  seed: 'examples',
  name: 'examples',
  level: 'core',
  support: 'worked',
  choice: 0,
  units: 'dm',
  families: [],
  topics: [],
  without: [],
  length: { unit: 'questions', count: 5 },
};
const paperOf = (more: Partial<SheetRequest>): Paper => makePaper({ ...REQUEST, ...more }, tables, wording, '0.0.0');
const examplesOn = (paper: Paper) =>
  questionSheet(paper, wording).blocks.flatMap((block) => (block.kind === 'given' ? [block] : []));
const lettersIn = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => {
    const first = block.kind === 'paragraph' ? block.content[0] : undefined;
    return first?.kind === 'text' && first.weight === 'strong' ? [first.text.trim()] : [];
  });

describe('a worked example', () => {
  it('of a prediction comes out as its question does: a reaction, none, or two of one kind', () => {
    const outcomes = new Set<string>();
    for (const seed of seeds(6)) {
      const paper = paperOf({ seed, families: ['predict-reaction'], length: { unit: 'questions', count: 4 } });
      for (const question of paper.questions) {
        const { features } = paper.examples.get(question.code)!;
        expect([features.shape, features.outcome]).toEqual([question.features.shape, question.features.outcome]);
        outcomes.add(`${features.shape} ${features.outcome}`);
      }
    }
    expect(outcomes.size).toBeGreaterThan(1);
  });

  it('gives its half-equations as its question does', () => {
    for (const seed of seeds(4)) {
      const paper = paperOf({ seed, families: ['combine-halves'], length: { unit: 'questions', count: 3 } });
      for (const question of paper.questions)
        expect(paper.examples.get(question.code)!.features.given).toBe(question.features.given);
    }
  });

  it('has the letters of its question, one a part', () => {
    const paper = paperOf({});
    examplesOn(paper).forEach(({ blocks }, at) => {
      const { parts } = paper.questions[at]!;
      const letters = [...'abcdefgh'].slice(0, parts.length);
      expect(lettersIn(blocks)).toEqual(parts.length > 1 ? letters : []);
    });
  });

  it('goes as far as the step that a choice asks, and no further', () => {
    const paper = paperOf({ choice: 1, families: ['cell-emf', 'half-equation', 'stepwise-reduction'] });
    examplesOn(paper).forEach(({ blocks }, at) => {
      const question = paper.questions[at]!;
      if (question.family !== 'cell-emf') return;
      expect(question.parts[0]!.answers).toEqual(['emf']);
      expect(lettersIn(blocks)).toEqual([]);
      expect(plainText(inlinesIn(blocks))).not.toMatch(/through the wire/);
    });
    expect(paper.questions.some(({ family }) => family === 'cell-emf')).toBe(true);
  });
});
