import type { Fraction } from '../exact/fraction.ts';
import type { Equation } from '../reading/equation.ts';
import { oxidationNumber } from './oxidation-number.ts';
import { ELECTRON, type Side, speciesOf } from './sides.ts';

/** The two forms of a half-equation that is written as a reduction. */
export interface Couple {
  readonly oxidised: string;
  readonly reduced: string;
  readonly half: Equation;
  readonly potential: Fraction;
  /** what stands before it in its row: the label of the half-cell */
  readonly label: string;
}

/** The forms of a half-equation: the two species between which an element's oxidation number falls. @returns undefined when none does */
export function formsOf({ left, right }: Pick<Equation, 'left' | 'right'>): { oxidised: string; reduced: string } | undefined {
  const taking = (side: Side) => [...side.keys()].filter((key) => key !== ELECTRON);
  for (const oxidised of taking(left)) {
    for (const reduced of taking(right)) {
      if (oxidised !== reduced && falls(oxidised, reduced)) return { oxidised, reduced };
    }
  }
  return undefined;
}

function falls(oxidised: string, reduced: string): boolean {
  return [...speciesOf(oxidised).atoms.keys()].some((element) => {
    const [before, after] = [oxidationNumber(oxidised, element), oxidationNumber(reduced, element)];
    return before !== undefined && after !== undefined && before.compare(after) > 0;
  });
}
