import type { Couple } from '../chemistry/couples.ts';
import { factors } from '../chemistry/half-equations.ts';
import type { Answer } from '../engine/answer.ts';
import type { Slip } from '../engine/case.ts';
import type { Fraction } from '../exact/fraction.ts';

export const volts = (value: Fraction): Answer => ({ kind: 'number', value, unit: 'V' });

/** Ways of getting a cell potential wrong, at a step. */
export function potentialSlips(at: string, reduced: Couple, oxidised: Couple): Slip[] {
  const [high, low] = [reduced.potential, oxidised.potential];
  const { forReduced, forOxidised } = factors(reduced.half, oxidised.half);
  const slip = (id: string, value: Fraction): Slip => ({ id, at, work: () => volts(value) });
  return [
    slip('EP-ADD', high.add(low)),
    slip('EP-SIGN-DROPPED', high.size().subtract(low.size()).size()),
    slip('EP-REVERSED', low.subtract(high)),
    slip('EP-MULTIPLIED', high.multiply(forReduced).subtract(low.multiply(forOxidised))),
  ];
}
