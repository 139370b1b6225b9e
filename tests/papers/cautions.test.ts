import { describe, expect, it } from 'vitest';
import { makePaper } from '../../src/papers/make-paper.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import { plainText } from '../../src/questions/gate/inlines-of.ts';
import { tables, wording } from '../support/data.ts';

const sheetOf = (families: readonly string[], count: number) => {
  const request = { seed: 'cautions', name: 'cautions', level: 'core', support: 'open', choice: 0, units: 'dm' } as const;
  const length = { unit: 'questions', count } as const;
  const paper = makePaper({ ...request, families, topics: [], without: [], length }, tables, wording, '0.0.0');
  const blocks = questionSheet(paper, wording).blocks;
  const cautionsIn = (some: typeof blocks) =>
    some.flatMap((block) => (block.kind === 'paragraph' && block.weight === 'caution' ? [plainText(block.content)] : []));
  const own = blocks.flatMap((block) => (block.kind === 'question' ? [cautionsIn(block.stem)] : []));
  return { paper, head: cautionsIn(blocks), own };
};

describe('cautions on a sheet', () => {
  it('stand once at its head, each line once, when several questions need some; questions name the substances', () => {
    const { paper, head, own } = sheetOf(['titration-concentration', 'mole-ratio', 'stepwise-reduction'], 6);
    expect(head).toHaveLength(1);
    const lines = new Set(paper.questions.flatMap(({ cautions }) => cautions.map(({ caution }) => caution)));
    for (const line of lines) expect(head[0]!.split(line)).toHaveLength(2);
    expect(head[0]!.split('risk assessment')).toHaveLength(2);
    paper.questions.forEach(({ cautions }, at) => {
      expect(own[at]).toHaveLength(cautions.length > 0 ? 1 : 0);
      for (const { caution } of cautions) expect(own[at]![0]!.toLowerCase()).toContain(caution.split(':')[0]!.toLowerCase());
    });
  });

  it('stand with their question when no other needs any', () => {
    const { paper, head, own } = sheetOf(['titration-concentration'], 1);
    expect(head).toEqual([]);
    for (const { caution } of paper.questions[0]!.cautions) expect(own[0]![0]).toContain(caution);
  });
});
