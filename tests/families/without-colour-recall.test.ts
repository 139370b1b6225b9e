import { describe, expect, it } from 'vitest';
import { askOf } from '../../src/papers/ask-of.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import { paperOf } from '../../src/papers/paper-of.ts';
import { readRecord } from '../../src/papers/read-record.ts';
import { recordOf } from '../../src/papers/record-of.ts';
import type { SheetRequest } from '../../src/papers/request.ts';
import { FAMILIES } from '../../src/questions/families/index.ts';
import type { Family } from '../../src/questions/family.ts';
import { gate } from '../../src/questions/gate/gate.ts';
import { makeQuestion, slotOf } from '../../src/questions/make-question.ts';
import { itemMarks } from '../../src/questions/part-marks.ts';
import type { Level, Question } from '../../src/questions/question.ts';
import { earnedIn, rowsOf } from '../../src/questions/rows.ts';
import { COLOURS, saidIn } from '../support/asked-colours.ts';
import { seeds, tables, wording } from '../support/data.ts';

const cases = FAMILIES.flatMap((family) => (['core', 'stretch'] as const).map((level) => ({ family, level, name: family.id })));

function make(family: Family, level: Level, seed: string, withoutColourRecall: boolean): Question {
  const ask = askOf({ units: 'dm', withoutColourRecall }, level, 'written');
  return makeQuestion(family, slotOf(seed, family.id, 's1', 0), ask, tables, wording);
}

describe.each(cases)('$name, $level, without recall of colours', ({ family, level }) => {
  const pairs = seeds(40).map((seed) => [make(family, level, seed, true), make(family, level, seed, false)] as const);

  it('asks for no colour and gives no mark for one', () => {
    for (const [question] of pairs) {
      expect(question.asks.filter((fact) => fact.startsWith('colour:'))).toEqual([]);
      expect(saidIn(question), question.code).not.toMatch(COLOURS);
    }
  });

  it('passes the gate, with rows that lose marks', () => {
    for (const [question] of pairs) {
      expect(gate(question, tables)).toEqual([]);
      for (const row of rowsOf(question)) {
        const lost = question.parts.reduce((sum, part) => sum + part.points.length - earnedIn(row, part), 0);
        expect(lost, `${question.code} ${row.slip}`).toBeGreaterThan(0);
      }
    }
  });

  it('has the chemistry, the parts and the marks that the question has with colours', () => {
    for (const [without, usual] of pairs) {
      expect([without.identity, itemMarks(without)]).toEqual([usual.identity, itemMarks(usual)]);
      expect(without.parts.map(({ points }) => points.length)).toEqual(usual.parts.map(({ points }) => points.length));
      expect(without.parts.map(({ command }) => command).length).toBe(usual.parts.length);
    }
  });
});

describe('a paper without recall of colours', () => {
  const request: SheetRequest = {
    seed: 'no colours',
    name: 'no-colours',
    level: 'core',
    support: 'worked',
    choice: 0,
    units: 'dm',
    withoutColourRecall: true,
    families: ['stepwise-reduction', 'titration-concentration'],
    topics: [],
    without: [],
    length: { unit: 'questions', count: 4 },
  };
  const paper = makePaper(request, tables, wording, 'test');

  it('is made again from its record', () => {
    const record = readRecord(JSON.stringify(recordOf(paper)), 'record.json');
    expect(record.request.withoutColourRecall).toBe(true);
    const again = paperOf(record, tables, wording, 'test').paper;
    expect(again.questions.map(saidIn)).toEqual(paper.questions.map(saidIn));
  });

  it('has the marks and minutes of the same paper with colours', () => {
    const { withoutColourRecall: _without, ...usual } = request;
    const other = makePaper(usual, tables, wording, 'test');
    expect([paper.marks, paper.minutes]).toEqual([other.marks, other.minutes]);
    expect(other.questions.map(saidIn).join('\n')).toMatch(COLOURS);
  });

  it('has worked examples without colours too', () => {
    expect(paper.examples.size).toBe(paper.questions.length);
    for (const example of paper.examples.values()) expect(saidIn(example)).not.toMatch(COLOURS);
  });
});
