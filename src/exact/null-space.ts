import { Rational } from './rational.ts';

/**
 * Basis of the null space of a matrix, exactly, by reduced row echelon form.
 * @param rows the matrix, row by row; all rows of one length
 * @param width number of columns (needed when there are no rows)
 * @returns one vector for each free column, in column order
 */
export function nullSpace(rows: readonly (readonly Rational[])[], width: number): Rational[][] {
  const matrix = rows.map((row) => [...row]);
  const pivots: number[] = [];
  for (let column = 0; column < width && pivots.length < matrix.length; column += 1) {
    const at = pivots.length;
    const found = matrix.findIndex((row, index) => index >= at && !row[column]!.isZero());
    if (found < 0) continue;
    [matrix[at], matrix[found]] = [matrix[found]!, matrix[at]!];
    eliminate(matrix, at, column);
    pivots.push(column);
  }
  const free = Array.from({ length: width }, (_, column) => column).filter((column) => !pivots.includes(column));
  return free.map((column) => {
    const vector = Array.from({ length: width }, () => Rational.zero);
    vector[column] = Rational.one;
    pivots.forEach((pivot, row) => {
      vector[pivot] = matrix[row]![column]!.negate();
    });
    return vector;
  });
}

/** Scales the pivot row to one and clears the column in every other row. */
function eliminate(matrix: Rational[][], pivotRow: number, column: number): void {
  const lead = matrix[pivotRow]![column]!;
  matrix[pivotRow] = matrix[pivotRow]!.map((entry) => entry.over(lead));
  matrix.forEach((row, index) => {
    const factor = row[column]!;
    if (index === pivotRow || factor.isZero()) return;
    matrix[index] = row.map((entry, at) => entry.minus(factor.times(matrix[pivotRow]![at]!)));
  });
}
