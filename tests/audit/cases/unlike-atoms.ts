import { oxidationNumber } from '../chemistry/oxidation-number.ts';
import { speciesOf } from '../chemistry/sides.ts';
import type { PointRule } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';
import { elementMark } from './elements.ts';

const COUNTS: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 };
const CLAUSE = /\b(one|two|three|four|five|six)\b[^,()]*?\b(?:is|are) ([+\u2212]?\d+)/g;

/** `two iron are +3, one is +2`: all atoms are told, and together they make the average. */
export function unlikeAtoms(key: string, element: string): PointRule {
  return {
    check: (text) => {
      const clauses = [...text.matchAll(CLAUSE)].map(([, count, number]) => ({
        count: COUNTS[count!] ?? 0,
        number: Number(number!.replace('\u2212', '-')),
      }));
      const atoms = clauses.reduce((sum, { count }) => sum + count, 0);
      const total = clauses.reduce((sum, { count, number }) => sum + count * number, 0);
      const average = atoms === 0 ? undefined : Fraction.of(total, atoms);
      const fits = atoms === speciesOf(key).atoms.get(element) && average?.equals(oxidationNumber(key, element)!);
      return fits && text.includes(elementMark(element).slice('label '.length))
        ? undefined
        : `"${text}" does not make the average in ${key}`;
    },
  };
}
