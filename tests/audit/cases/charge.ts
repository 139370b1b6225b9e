import { speciesOf } from '../chemistry/sides.ts';
import { Fraction } from '../exact/fraction.ts';

/** Charge of a species as it is written. */
export const chargeOf = (key: string): Fraction => Fraction.of(speciesOf(key).charge);
