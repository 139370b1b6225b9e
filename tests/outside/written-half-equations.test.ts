import { describe, expect, it } from 'vitest';
import { halfEquation } from '../../src/chemistry/half-equation.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { sameEquation } from '../../src/chemistry/terms.ts';
import { Rational } from '../../src/exact/rational.ts';
import { planOf } from '../../src/questions/families/half-equation-plan.ts';
import { writtenHalf } from '../../src/questions/families/half-equation-write.ts';
import { tables } from '../support/data.ts';
import { casesOf } from './cases.ts';

interface Given {
  readonly type: string;
}
interface Answer {
  readonly equation: string;
}
const published = casesOf<Given, Answer>('balance').filter(({ given }) => given.type === 'half');

/** The couple of each published half-equation, the medium it is printed for, and whether it runs as a reduction there. */
const RUNS: Readonly<Record<string, readonly [couple: string, medium: 'acid' | 'alkali', isReduction: boolean]>> = {
  'os-4-q37a': ['Sn^4+/Sn^2+', 'acid', true],
  'os-4-q37d': ['O2/H2O', 'acid', false],
  'os-4-q37e': ['IO3^-/I2', 'alkali', true],
  'os-4-q37f': ['SO4^2-/SO3^2-', 'acid', false],
  'os-4-q37h': ['ClO3^-/Cl^-', 'alkali', false],
};

describe('the half-equation that the mark scheme writes', () => {
  it.each(published)('is the published one: $id, $source', ({ id, answer }) => {
    const [name, medium, isReduction] = RUNS[id]!;
    const couple = tables.couple(name);
    // The table may hold the couple for the other medium: it is built from its two species for this one.
    const built = { ...couple, half: halfEquation(couple.oxidised, couple.reduced, medium) };
    const plan = planOf(built, isReduction, medium);
    const written = writtenHalf(plan, 'right', Rational.of(plan.change!.atoms * Math.abs(plan.change!.from - plan.change!.to)));
    expect(written.kind === 'equation' && sameEquation(written.equation, parseEquation(answer.equation)), answer.equation).toBe(
      true,
    );
  });

  it('is tried on each of them', () => {
    expect(published.map(({ id }) => id).sort()).toEqual(Object.keys(RUNS).sort());
  });
});
