import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../src/questions/families/index.ts';
import type { Ask, Family } from '../../src/questions/family.ts';
import { gate } from '../../src/questions/gate/gate.ts';
import { inlinesIn, inlinesOfSpace, plainText } from '../../src/questions/gate/inlines-of.ts';
import { makeQuestion, slotOf } from '../../src/questions/make-question.ts';
import { itemMarks } from '../../src/questions/part-marks.ts';
import type { Answering, Level, Question } from '../../src/questions/question.ts';
import { earnedIn, rowsOf } from '../../src/questions/rows.ts';
import { sameValue } from '../../src/questions/same-value.ts';
import { solve } from '../../src/questions/solve.ts';
import { seeds, tables, wording } from '../support/data.ts';

const LEVELS: readonly Level[] = ['core', 'stretch'];

/** Every way a family can be asked. */
const asks = FAMILIES.flatMap((family) =>
  LEVELS.flatMap((level) =>
    family.answering.map((answering) => ({
      family,
      level,
      answering,
      name: `${family.id}, ${level}, ${answering}`,
    })),
  ),
);

function make(family: Family, level: Level, answering: Answering, seed: string, units: Ask['units'] = 'dm'): Question {
  return makeQuestion(family, slotOf(seed, family.id, 's1', 0), { level, answering, units }, tables, wording);
}

/** Questions of one way of asking, made once for all laws. */
const made = new Map<string, Question[]>();
function questions(family: Family, level: Level, answering: Answering): Question[] {
  const key = `${family.id} ${level} ${answering}`;
  const found = made.get(key) ?? seeds(200).map((seed) => make(family, level, answering, seed));
  made.set(key, found);
  return found;
}

/** All that is printed of a question, as plain text. */
function pageText(question: Question): string {
  const runs = question.parts.flatMap(({ prompt, hints, space, options }) => [
    prompt,
    ...hints,
    inlinesOfSpace(space),
    ...(options ?? []).map(({ content }) => content),
  ]);
  return [...question.stem.map((block) => inlinesIn([block])), ...runs].map(plainText).join('\n');
}

/** All that the scheme says, as plain text. */
function schemeText(question: Question): string {
  const points = question.parts.flatMap((part) =>
    part.points.flatMap(({ accept, refuse, ignore }) => [...accept, ...refuse, ...ignore]),
  );
  return points.map(plainText).join('\n');
}

describe.each(asks)('$name', ({ family, level, answering }) => {
  it('gives the same question for the same seed', () => {
    const [one, again] = [make(family, level, answering, 'kingfisher'), make(family, level, answering, 'kingfisher')];
    expect(JSON.stringify([again.stem, again.parts, again.data])).toBe(JSON.stringify([one.stem, one.parts, one.data]));
  });

  it('gives other chemistry for other seeds', () => {
    expect(new Set(questions(family, level, answering).map(({ identity }) => identity)).size).toBeGreaterThanOrEqual(6);
  });

  it('passes the gate', () => {
    expect(questions(family, level, answering).flatMap((question) => gate(question, tables))).toEqual([]);
  });

  it('has marks that are the points of its parts', () => {
    for (const question of questions(family, level, answering)) {
      expect(itemMarks(question)).toBe(question.parts.reduce((sum, part) => sum + part.points.length, 0));
      expect(itemMarks(question)).toBeGreaterThan(0);
    }
  });

  it('leaves no hole and no markup in any text', () => {
    for (const question of questions(family, level, answering)) {
      expect(`${pageText(question)}\n${schemeText(question)}`).not.toMatch(
        /undefined|NaN|\[object|\{\{|\}\}|\*\*| {2,}|[\uE000-\uF8FF]/,
      );
    }
  });

  it('has "if you see this" rows that lose marks and differ from the answer', () => {
    for (const question of questions(family, level, answering)) {
      const right = solve(question);
      for (const row of rowsOf(question)) {
        const lost = question.parts.reduce((sum, part) => sum + part.points.length - earnedIn(row, part), 0);
        expect(lost, `${question.code} ${row.slip}`).toBeGreaterThan(0);
        for (const part of question.parts) {
          const alike = (row.seen.get(part.id) ?? []).map((seen) => {
            const step = question.steps.find(({ id }) => id === seen.step)!;
            return sameValue(seen.value, right.get(seen.step)!, step.printed);
          });
          const at = `${question.code} ${row.slip} ${part.id}`;
          // Answers that stand together are all shown where one differs.
          if (part.together) expect(alike.length === 0 || alike.includes(false), at).toBe(true);
          else expect(alike, at).not.toContain(true);
        }
      }
    }
  });

  it('gives every slip feedback of at most thirty words', () => {
    for (const { slips } of questions(family, level, answering)) {
      for (const { feedback } of slips) expect(feedback.split(/\s+/).length).toBeLessThanOrEqual(30);
    }
  });

  it('prints the same figures with either set of units', () => {
    const [dm, litre] = [make(family, level, answering, 'otter', 'dm'), make(family, level, answering, 'otter', 'litre')];
    const figures = (question: Question) => pageText(question).match(/[+\u2212]?\d+\.\d+/g) ?? [];
    expect(figures(litre)).toEqual(figures(dm));
    expect(pageText(litre)).not.toMatch(/cm\^3|dm\^-?3/);
  });
});

describe.each(FAMILIES.map((family) => ({ family, name: family.id })))('$name', ({ family }) => {
  it('shows every misconception it declares within 200 seeds', () => {
    const shown = new Set(
      LEVELS.flatMap((level) => family.answering.flatMap((answering) => questions(family, level, answering)))
        .flatMap(rowsOf)
        .flatMap(({ slip, aliases }) => [slip, ...aliases]),
    );
    expect([...shown].sort()).toEqual([...family.misconceptions].sort());
  });

  it('holds equal demand features to equal marks', () => {
    const marks = new Map<string, Set<number>>();
    for (const level of LEVELS) {
      for (const question of questions(family, level, 'written')) {
        const key = JSON.stringify([level, question.features]);
        marks.set(key, (marks.get(key) ?? new Set()).add(itemMarks(question)));
      }
    }
    for (const [features, found] of marks) expect([...found], features).toHaveLength(1);
  });
});
