import { oxidationNumber } from '../chemistry/oxidation-number.ts';
import { speciesOf } from '../chemistry/sides.ts';
import { numberMark } from '../engine/answer.ts';
import type { PointRule } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';
import { writeNumber } from '../exact/printed-number.ts';
import { elementMark } from './elements.ts';

const COUNTS: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 };
const CLAUSE = /\b(one|two|three|four|five|six)\b[^,()]*?\b(?:is|are) ([+\u2212]?\d+)/g;

/** States of atoms that differ, as textbooks tell them: two ions side by side in an oxide, the ends and the middle of a chain. */
const STATES: Readonly<Record<string, readonly (readonly [count: number, number: number])[]>> = {
  'Fe3O4 Fe': [
    [1, 2],
    [2, 3],
  ],
  'Co3O4 Co': [
    [1, 2],
    [2, 3],
  ],
  'Mn3O4 Mn': [
    [1, 2],
    [2, 3],
  ],
  'Pb3O4 Pb': [
    [2, 2],
    [1, 4],
  ],
  'Pb2O3 Pb': [
    [1, 2],
    [1, 4],
  ],
  'Sb2O4 Sb': [
    [1, 3],
    [1, 5],
  ],
  'S2O3^2- S': [
    [1, 5],
    [1, -1],
  ],
  'S4O6^2- S': [
    [2, 5],
    [2, 0],
  ],
};

/** A sodium salt has the ion of its formula in it. */
const ION_OF: Readonly<Record<string, string>> = { Na2S2O3: 'S2O3^2-', Na2S4O6: 'S4O6^2-' };

export const statesOf = (key: string, element: string) => STATES[`${ION_OF[key] ?? key} ${element}`] ?? [];

/** `+2 (one atom) and +3 (two atoms)`: also right for an average. */
export function statesMarks(key: string, element: string): string[][] {
  const states = statesOf(key, element);
  return states.length === 0 ? [] : [states.map(([, number]) => numberMark(writeNumber(Fraction.of(number), 'whole', true), ''))];
}

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
