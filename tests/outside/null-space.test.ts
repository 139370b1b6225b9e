import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { conservationMatrix } from '../../src/chemistry/balance-by-null-space.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { nullSpace } from '../../src/exact/null-space.ts';
import { Rational } from '../../src/exact/rational.ts';
import { tables } from '../chemistry/tables.ts';

/** Rank by elimination, written apart from ours. Source of the arithmetic: the fractions of fraction.js (npm, MIT). */
function rank(matrix: readonly (readonly Fraction[])[]): number {
  const rows = matrix.map((row) => [...row]);
  const width = rows[0]?.length ?? 0;
  let found = 0;
  for (let column = 0; column < width; column += 1) {
    const at = rows.findIndex((row, index) => index >= found && !row[column]!.equals(0));
    if (at < 0) continue;
    [rows[at], rows[found]] = [rows[found]!, rows[at]!];
    for (let row = found + 1; row < rows.length; row += 1) {
      const factor = rows[row]![column]!.div(rows[found]![column]!);
      rows[row] = rows[row]!.map((entry, index) => entry.sub(factor.mul(rows[found]![index]!)));
    }
    found += 1;
  }
  return found;
}

const theirs = (matrix: readonly (readonly Rational[])[]) =>
  matrix.map((row) => row.map((entry) => new Fraction(entry.toString())));

function expectNullSpace(matrix: readonly (readonly Rational[])[], width: number): void {
  const basis = nullSpace(matrix, width);
  const fractions = theirs(matrix);
  expect(basis.length).toBe(width - rank(fractions));
  for (const vector of basis) {
    const entries = vector.map((entry) => new Fraction(entry.toString()));
    for (const row of fractions) {
      const product = row.reduce((sum, entry, index) => sum.add(entry.mul(entries[index]!)), new Fraction(0));
      expect(product.equals(0)).toBe(true);
    }
  }
  expect(rank(theirs(basis))).toBe(basis.length);
}

describe('the null space', () => {
  it('has the dimension that fraction.js gives, and every vector in it is sent to zero', () => {
    const entry = fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: 1, max: 6 })).map(([n, d]) => Rational.of(n, d));
    const matrix = fc
      .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 7 }))
      .chain(([height, width]) =>
        fc.array(fc.array(entry, { minLength: width, maxLength: width }), { minLength: height, maxLength: height }),
      );
    fc.assert(fc.property(matrix, (rows) => expectNullSpace(rows, rows[0]!.length)));
  });
  it('agrees for the species of every couple of the table', () => {
    for (const { half } of tables.couples) {
      const species = [...half.left, ...half.right].map((term) => term.formula);
      expectNullSpace(conservationMatrix(species), species.length);
    }
    const odd = ['MnO4^-', 'H2O2', 'H^+', 'Mn^2+', 'O2', 'H2O'].map(parseFormula);
    expect(nullSpace(conservationMatrix(odd), odd.length)).toHaveLength(2);
  });
});
