import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearMatches } from '../../src/exact/near-matches.ts';
import { nullSpace } from '../../src/exact/null-space.ts';
import { Rational } from '../../src/exact/rational.ts';

const entry = fc.integer({ min: -4, max: 8 }).map((n) => Rational.of(n));
const matrix = fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 6 })).chain(([rows, columns]) =>
  fc.array(fc.array(entry, { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  }),
);
const dot = (a: readonly Rational[], b: readonly Rational[]) =>
  a.reduce((sum, each, at) => sum.plus(each.times(b[at]!)), Rational.zero);

describe('the null space', () => {
  it('holds vectors that every row sends to zero', () => {
    fc.assert(
      fc.property(matrix, (rows) => {
        for (const vector of nullSpace(rows, rows[0]!.length))
          for (const row of rows) expect(dot(row, vector).isZero()).toBe(true);
      }),
    );
  });

  it('has a vector for each column beyond the rank', () => {
    const rows = [
      ['1', '2', '3'],
      ['2', '4', '6'],
    ].map((row) => row.map((text) => Rational.parse(text)));
    expect(nullSpace(rows, 3)).toHaveLength(2);
    expect(nullSpace([], 2)).toHaveLength(2);
  });
});

describe('near matches', () => {
  it('finds what a slip of the finger meant, nearest first, and nothing far-fetched', () => {
    const known = ['cell-emf', 'stepwise-reduction', 'titration-concentration'];
    expect(nearMatches('cell-efm', known)).toEqual(['cell-emf']);
    expect(nearMatches('titration', known)).toContain('titration-concentration');
    expect(nearMatches('zebra', known)).toEqual([]);
  });
});
