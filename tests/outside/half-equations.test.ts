import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkHalf } from '../../src/chemistry/check-half.ts';
import type { Term } from '../../src/chemistry/equation.ts';
import { halfEquation } from '../../src/chemistry/half-equation.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { lowestTerms, sameEquation } from '../../src/chemistry/terms.ts';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';

/** OpenStax Chemistry 2e, Appendix L (each row names its source). */
const rows = readFileSync(new URL('data/electrode-potentials-openstax.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(',')[0]!);

const SOLVENT = new Set(['H2O', 'H^+', 'OH^-', 'e^-']);
const main = (terms: readonly Term[]) => terms.filter((term) => !SOLVENT.has(keyOf(term.formula))).map((term) => term.formula);

describe('half-equations built from two species', () => {
  it.each(rows)('are the published ones: %s', (text) => {
    const published = lowestTerms(parseEquation(text));
    expect(checkHalf(published)).toEqual([]);
    const [oxidised = published.left[0]!.formula, ...others] = main(published.left);
    const [reduced = published.right[0]!.formula, ...more] = main(published.right);
    const medium = published.left.concat(published.right).some((term) => keyOf(term.formula) === 'OH^-') ? 'alkali' : 'acid';
    const built = halfEquation(oxidised, reduced, medium, [...others, ...more]);
    expect(writeEquation(built), text).toBe(sameEquation(built, published) ? writeEquation(built) : writeEquation(published));
  });
  it('number 134', () => {
    expect(rows).toHaveLength(134);
  });
});
