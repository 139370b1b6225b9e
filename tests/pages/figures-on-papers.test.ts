import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/document/block.ts';
import type { Document } from '../../src/document/document.ts';
import type { Figure } from '../../src/document/figure.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import { solutionsSheet } from '../../src/papers/solutions-sheet.ts';
import { teacherCopy } from '../../src/papers/teacher-copy.ts';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS } from '../../src/printers/pdf/settings.ts';
import { inspect } from '../../src/readers/inspect.ts';
import { fonts, paperOf, wording } from './papers.ts';

/** Figures of a document, those inside questions and ruled blocks included. */
function figuresIn(blocks: readonly Block[]): Figure[] {
  return blocks.flatMap((block): Figure[] => {
    switch (block.kind) {
      case 'figure':
        return [block.figure];
      case 'given':
      case 'part':
        return figuresIn(block.blocks);
      case 'question':
        return [...figuresIn(block.stem), ...block.parts.flatMap((part) => figuresIn(part.blocks))];
      default:
        return [];
    }
  });
}

const isLadder = ({ alt }: Figure) => alt.startsWith('Ladder');

describe.each(['core', 'stretch'] as const)('a paper of cells and ladders, %s', (level) => {
  const paper = paperOf({ level, families: ['cell-emf', 'stepwise-reduction'], seed: `figures ${level}` });
  const sheet = questionSheet(paper, wording);
  const cells = paper.questions.filter(({ family }) => family === 'cell-emf');

  it('draws each cell as it is printed, and no ladder, on the sheet', () => {
    const drawn = figuresIn(sheet.blocks);
    expect(drawn).toHaveLength(cells.length);
    expect(cells.length).toBeGreaterThan(0);
    for (const { alt } of drawn) {
      expect(alt).not.toMatch(/positive|negative|anode|cathode|ladder/i);
      expect(alt).toMatch(/^Two half-cells, A at the left and B at the right\./);
      expect(alt).not.toMatch(/\d\.\d/);
    }
  });

  it.each(['teacher copy', 'solutions'] as const)('draws a ladder for each question on the %s', (copy) => {
    const document: Document = copy === 'solutions' ? solutionsSheet(paper, wording) : teacherCopy(paper, wording);
    expect(figuresIn(document.blocks).filter(isLadder)).toHaveLength(paper.questions.length);
    for (const print of ['standard', 'large', '36'] as const)
      expect(inspect(printPdf(document, { ...DEFAULT_SETTINGS, print }, fonts)).faults).toEqual([]);
  });

  it('keeps a drawing of a cell to about 45 mm', () => {
    for (const { height } of figuresIn(sheet.blocks)) expect((height * 25.4) / 72).toBeLessThan(46);
  });
});

it('a cell asked as a choice is not drawn: one mark is not worth the height', () => {
  const paper = paperOf({ families: ['cell-emf'], choice: 1, length: { unit: 'questions', count: 2 } });
  expect(figuresIn(questionSheet(paper, wording).blocks)).toEqual([]);
});
