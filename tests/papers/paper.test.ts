import { describe, expect, it } from 'vitest';
import { conflictBetween } from '../../src/papers/conflicts.ts';
import { makePaper } from '../../src/papers/make-paper.ts';
import { markScheme } from '../../src/papers/mark-scheme.ts';
import { minutesFor, withExtraTime } from '../../src/papers/minutes.ts';
import { paperOf } from '../../src/papers/paper-of.ts';
import { keyPlaceOf } from '../../src/papers/place-keys.ts';
import { questionSheet } from '../../src/papers/question-sheet.ts';
import { readRecord } from '../../src/papers/read-record.ts';
import { recordOf } from '../../src/papers/record-of.ts';
import type { SheetRequest } from '../../src/papers/request.ts';
import { keyPlaces } from '../../src/questions/choice.ts';
import { itemMarks } from '../../src/questions/part-marks.ts';
import { speciesIn } from '../../src/questions/species-in.ts';
import { seeds, tables, wording } from '../support/data.ts';

const request = (changes: Partial<SheetRequest> = {}): SheetRequest => ({
  seed: 'wagtail',
  name: 'test',
  level: 'core',
  support: 'open',
  choice: 0,
  units: 'dm',
  families: [],
  topics: [],
  without: [],
  length: { unit: 'questions', count: 6 },
  ...changes,
});
const paper = (changes: Partial<SheetRequest> = {}) => makePaper(request(changes), tables, wording, '0.0.0');

describe('a paper', () => {
  it('is the same for the same seed and another for another', () => {
    const codes = (seed: string) => paper({ seed }).questions.map(({ code }) => code);
    expect(codes('wagtail')).toEqual(codes('wagtail'));
    expect(codes('wagtail')).not.toEqual(codes('dipper'));
  });

  it('has the number of questions, or the marks, that are asked', () => {
    expect(paper().questions).toHaveLength(6);
    for (const marks of [12, 20, 31, 47]) expect(paper({ length: { unit: 'marks', count: marks } }).marks).toBe(marks);
  });

  it('asks for little twice, and prints no reaction twice, where a family has more to ask for', () => {
    for (const seed of ['wagtail', 'dipper', 'siskin']) {
      const { questions } = paper({ seed, families: ['oxidation-number'], length: { unit: 'questions', count: 8 } });
      const asked = questions.flatMap(({ asks }) => asks);
      const printed = questions.flatMap(({ gives }) => gives.filter((fact) => fact.startsWith('eq:')));
      expect(new Set(printed).size).toBe(printed.length);
      // strong oxidants are few, so four come again in eight reactions; taken as they are drawn it would be eight
      expect(asked.length - new Set(asked).size).toBeLessThanOrEqual(5);
    }
  });

  it('fills the minutes that are asked to nine tenths or more and never goes over', () => {
    for (const minutes of [20, 35, 60]) {
      const made = paper({ length: { unit: 'minutes', count: minutes } });
      expect(made.minutes).toBeLessThanOrEqual(minutes);
      expect(made.minutes).toBeGreaterThanOrEqual(minutes * 0.9);
    }
  });

  it('allows 1.2 minutes a mark, rounded up, and a quarter more', () => {
    expect([minutesFor(10), minutesFor(11), withExtraTime(12), withExtraTime(14)]).toEqual([12, 14, 15, 18]);
  });

  it('never holds two questions of which one answers the other', () => {
    for (const seed of seeds(12)) {
      const { questions } = paper({ seed, length: { unit: 'questions', count: 8 } });
      const pairs = questions.flatMap((one, at) => questions.slice(at + 1).map((other) => conflictBetween(one, other)));
      expect(pairs.filter((each) => each !== undefined)).toEqual([]);
    }
  });

  it('keeps neighbours of one strategy apart when it can', () => {
    for (const seed of seeds(12)) {
      const { questions } = paper({ seed });
      const neighbours = questions.filter(({ strategy }, at) => strategy === questions[at + 1]?.strategy);
      expect(neighbours, seed).toEqual([]);
    }
  });

  it('leaves out what it is told to', () => {
    const made = paper({ without: ['Cr2O7^2-', 'cell-emf', 'Zn'] });
    for (const question of made.questions) {
      expect(question.family).not.toBe('cell-emf');
      expect(speciesIn(question).has('Cr2O7^2-') || speciesIn(question).has('Zn')).toBe(false);
    }
  });

  it('adds its parts up to its questions, and those to its marks', () => {
    const made = paper();
    expect(made.marks).toBe(made.questions.reduce((sum, question) => sum + itemMarks(question), 0));
  });

  it('spreads the keys of its choices and never puts one letter three times running', () => {
    const { questions } = paper({
      choice: 1,
      families: ['cell-emf', 'titration-concentration'],
      length: { unit: 'questions', count: 15 },
    });
    const places = questions.map((question) => keyPlaceOf(question)!);
    const unevenness = (all: readonly number[]) =>
      [0, 1, 2].reduce((sum, place) => sum + all.filter((each) => each === place).length ** 2, 0);
    const runs = (all: readonly number[]) => all.filter((place, at) => place === all[at + 1] && place === all[at + 2]).length;
    // Not every key can stand at every letter; no other letter of any one question would spread them better.
    for (const [at, { parts }] of questions.entries()) {
      for (const other of keyPlaces(parts[0]!)) {
        const changed = places.with(at, other);
        expect(runs(changed) > 0 || unevenness(changed) >= unevenness(places), `question ${at + 1} at ${other}`).toBe(true);
      }
    }
    const thrice = places.filter((place, at) => place === places[at + 1] && place === places[at + 2]);
    expect(thrice).toEqual([]);
  });
});

describe('an impossible request', () => {
  const fault = (changes: Partial<SheetRequest>) => expect(() => paper(changes));

  it('is met with what can be had', () => {
    fault({ families: ['cell-efm'] }).toThrow('`cell-emf`');
    fault({ length: { unit: 'marks', count: 1 } }).toThrow(/nearest are \d+ marks/);
    fault({ families: ['stepwise-reduction'], length: { unit: 'questions', count: 90 } }).toThrow(/\d+ different questions/);
    fault({ without: ['electrode-potentials', 'redox-titration', 'oxidation-and-reduction', 'transition-metals'] }).toThrow(
      'no family fits',
    );
    fault({ without: ['zzz'] }).toThrow('a topic, a family or a species');
    fault({ support: 'completion', on: 'TI-RATIO-WON' }).toThrow('`TI-RATIO-ONE`');
    fault({ length: { unit: 'questions', count: 0 } }).toThrow('between 1 and');
  });
});

describe('a record', () => {
  it('makes the same documents again', () => {
    for (const changes of [
      {},
      { choice: 0.5, level: 'stretch' as const },
      { support: 'worked' as const, length: { unit: 'questions' as const, count: 3 } },
    ]) {
      const made = paper(changes);
      const record = readRecord(JSON.stringify(recordOf(made)), 'record.json');
      const again = paperOf(record, tables, wording, '0.0.0');
      expect(again.differences).toEqual([]);
      expect(JSON.stringify(questionSheet(again.paper, wording))).toBe(JSON.stringify(questionSheet(made, wording)));
      expect(JSON.stringify(markScheme(again.paper, tables, wording))).toBe(JSON.stringify(markScheme(made, tables, wording)));
    }
  });

  it('says when version, table or wording differ', () => {
    const record = recordOf(paper());
    const other = { ...record, made: { version: '9.9.9', table: { name: 'theirs', digest: '0' }, wording: '0' } };
    expect(paperOf(other, tables, wording, '0.0.0').differences).toHaveLength(3);
  });

  it('is refused with every field that is not as expected', () => {
    expect(() => readRecord('{', 'r.json')).toThrow('JSON');
    expect(() => readRecord('{"kind":"other"}', 'r.json')).toThrow('couplet-record');
    const record = JSON.parse(JSON.stringify(recordOf(paper()))) as { marks: unknown; questions: { code: string }[] };
    record.marks = 'many';
    record.questions[1]!.code = 'oops';
    expect(() => readRecord(JSON.stringify(record), 'r.json')).toThrow(/`marks`[\s\S]*`questions\[1\]\.code`/);
  });
});

describe('a question sheet', () => {
  it('holds no answer: not an equation that is asked, nor a point of the scheme', () => {
    const made = paper({ length: { unit: 'questions', count: 3 } });
    const sheet = JSON.stringify(questionSheet(made, wording));
    for (const word of ['accept', 'refuse', 'carries', 'slip', 'happened']) expect(sheet).not.toContain(`"${word}"`);
    for (const question of made.questions)
      for (const part of question.parts)
        for (const point of part.points) expect(sheet).not.toContain(JSON.stringify(point.accept));
  });
});
