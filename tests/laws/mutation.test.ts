import { describe, expect, it } from 'vitest';
import { Rational } from '../../src/exact/rational.ts';
import { FAMILIES } from '../../src/questions/families/index.ts';
import { gate } from '../../src/questions/gate/gate.ts';
import { makeQuestion, slotOf } from '../../src/questions/make-question.ts';
import type { Question, Step } from '../../src/questions/question.ts';
import { sameValue } from '../../src/questions/same-value.ts';
import { solve } from '../../src/questions/solve.ts';
import type { Value } from '../../src/questions/value.ts';
import { seeds, tables, wording } from '../support/data.ts';

/** Corrupts what a step gives, or how its line is printed. */
type Corruption = (step: Step) => Step | undefined;

const raiseFirst = (value: Value): Value => {
  if (value.kind !== 'equation') return value;
  const [first, ...rest] = value.equation.left;
  return {
    ...value,
    equation: {
      ...value.equation,
      left: [{ ...first!, coefficient: first!.coefficient.plus(Rational.one) }, ...rest],
    },
  };
};

const coefficient: Corruption = (step) => ({
  ...step,
  work: (values) => raiseFirst(step.work(values)),
});

/** The last digit of the printed result goes up by one, nine to zero. */
const figure: Corruption = (step) => {
  const { line } = step;
  if (!line || step.printed === 'exact') return undefined;
  return {
    ...step,
    line: (values) => {
      const { left, right } = line(values);
      const last = right.at(-1)!;
      if (last.kind !== 'quantity') throw new Error('a line ends in its result');
      const [mantissa, power] = last.number.split(' × ');
      const bumped = mantissa!.replace(/\d$/, (digit) => String((Number(digit) + 1) % 10));
      return {
        left,
        right: [
          ...right.slice(0, -1),
          {
            ...last,
            number: power === undefined ? bumped : `${bumped} × ${power}`,
          },
        ],
      };
    },
  };
};

function corrupted(question: Question, at: number, change: Corruption): Question | undefined {
  const changed = change(question.steps[at]!);
  return (
    changed && {
      ...question,
      steps: question.steps.map((step, index) => (index === at ? changed : step)),
    }
  );
}

describe.each(FAMILIES.map((family) => ({ family, name: family.id })))('the gate, on $name', ({ family }) => {
  const questions = (['core', 'stretch'] as const).flatMap((level) =>
    seeds(10).map((seed) =>
      makeQuestion(family, slotOf(seed, family.id, 's1', 0), { level, answering: 'written', units: 'dm' }, tables, wording),
    ),
  );

  it('catches a coefficient that is one too large', () => {
    for (const question of questions) {
      const rightly = new Set(gate(question, tables).map(({ rule }) => rule));
      expect([...rightly]).toEqual([]);
      question.steps.forEach((_, at) => {
        const wrong = corrupted(question, at, coefficient)!;
        if (givesEquation(question, at))
          expect(
            gate(wrong, tables).map(({ rule }) => rule),
            question.code,
          ).toContain('equations-balance');
      });
    }
  });

  it('catches a figure of the working that is one out in its last digit', () => {
    for (const question of questions) {
      question.steps.forEach((_, at) => {
        const wrong = corrupted(question, at, figure);
        if (wrong)
          expect(
            gate(wrong, tables).map(({ rule }) => rule),
            `${question.code} ${question.steps[at]!.id}`,
          ).toContain('working-recomputes');
      });
    }
  });

  it('catches a mark that belongs to no step of its part', () => {
    for (const question of questions) {
      const [first, ...others] = question.parts;
      const foreign = others.flatMap(({ points }) => points)[0];
      if (!foreign) continue;
      const wrong = {
        ...question,
        parts: [{ ...first!, points: [...first!.points, foreign] }, ...others],
      };
      expect(gate(wrong, tables).map(({ rule }) => rule)).toContain('marks-add-up');
    }
  });

  it('catches an answer that slips into a prompt', () => {
    for (const question of questions) {
      const part = question.parts.find(({ answers }) => question.steps.some(({ id, line }) => answers.includes(id) && line));
      const step = part && question.steps.find(({ id, line }) => part.answers.includes(id) && line);
      if (!part || !step) continue;
      const shown = step.line!(valuesOf(question)).right.at(-1)!;
      const digits = shown.kind === 'quantity' ? shown.number.replaceAll(/\D/g, '') : '';
      // Beside the hydrogen electrode the answer is a datum of the sheet.
      const isDatum = question.data.some(({ value, printed }) => sameValue(value, valuesOf(question).get(step.id)!, printed));
      if (digits.length < 3 || isDatum) continue;
      const told = {
        ...part,
        prompt: [...part.prompt, { kind: 'text' as const, text: ' ' }, shown],
      };
      const wrong = {
        ...question,
        parts: question.parts.map((each) => (each === part ? told : each)),
      };
      expect(
        gate(wrong, tables).map(({ rule }) => rule),
        question.code,
      ).toContain('no-leak');
    }
  });
});

function valuesOf(question: Question) {
  return solve(question, 'printed');
}

function givesEquation(question: Question, at: number): boolean {
  return solve(question).get(question.steps[at]!.id)?.kind === 'equation';
}
