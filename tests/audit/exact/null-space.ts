import { Fraction } from './fraction.ts';

/**
 * Every independent way of making the rows vanish: one vector for each column without a pivot.
 * @param rows all of one length
 */
export function nullSpace(rows: readonly (readonly Fraction[])[]): Fraction[][] {
  const width = rows[0]?.length ?? 0;
  const work = rows.map((row) => [...row]);
  const pivots: number[] = [];
  for (let column = 0; column < width && pivots.length < work.length; column += 1) {
    const top = pivots.length;
    const at = work.findIndex((row, index) => index >= top && row[column]!.side() !== 0);
    if (at < 0) continue;
    [work[top], work[at]] = [work[at]!, work[top]!];
    const lead = work[top]![column]!;
    work[top] = work[top]!.map((entry) => entry.divide(lead));
    for (let other = 0; other < work.length; other += 1) {
      const times = work[other]![column]!;
      if (other === top || times.side() === 0) continue;
      work[other] = work[other]!.map((entry, index) => entry.subtract(work[top]![index]!.multiply(times)));
    }
    pivots.push(column);
  }
  const free = Array.from({ length: width }, (_, column) => column).filter((column) => !pivots.includes(column));
  return free.map((column) =>
    Array.from({ length: width }, (_, index) => {
      if (index === column) return Fraction.one;
      const row = pivots.indexOf(index);
      return row < 0 ? Fraction.zero : work[row]![column]!.negative();
    }),
  );
}

/** The same direction in whole numbers without a common factor, the first entry that is not zero positive. */
export function wholeNumbers(vector: readonly Fraction[]): Fraction[] {
  const common = vector.reduce((all, { below }) => all * (below / greatest(all, below)), 1n);
  const whole = vector.map(({ above, below }) => above * (common / below));
  const divisor = whole.reduce((all, each) => greatest(all, each), 0n) || 1n;
  const sign = (whole.find((each) => each !== 0n) ?? 1n) < 0n ? -1n : 1n;
  return whole.map((each) => Fraction.of((each / divisor) * sign));
}

/** Greatest common divisor; that of nothing and a number is the number's size. */
function greatest(one: bigint, other: bigint): bigint {
  let [a, b] = [one < 0n ? -one : one, other < 0n ? -other : other];
  while (b !== 0n) [a, b] = [b, a % b];
  return a;
}
