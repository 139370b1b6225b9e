import type { Decimal } from '../exact/decimal.ts';
import type { HalfEquation } from './equation.ts';
import type { Formula, SpeciesKey } from './formula.ts';

/** Medium in which a couple or a beaker stands. `neutral` couples contain neither H⁺ nor OH⁻. */
export type Medium = 'acid' | 'neutral' | 'alkali' | 'strong-alkali';

/** A redox couple with its standard electrode potential, as a row of the table in force. */
export interface Couple {
  /** `oxidised/reduced`, with `@medium` where the same pair stands in two media: `MnO4^-/MnO2@alkali` */
  readonly id: string;
  readonly oxidised: Formula;
  readonly reduced: Formula;
  readonly oxidisedKey: SpeciesKey;
  readonly reducedKey: SpeciesKey;
  readonly half: HalfEquation;
  /** V, as stored (published digits) */
  readonly stored: Decimal;
  /** V, to two decimals, as printed on sheets; sheets compute from this one */
  readonly printed: Decimal;
  readonly medium: Medium;
  /** media in which this couple is the usual one of its oxidised form (as oxidant) */
  readonly usualOxidant: readonly Medium[];
  /** media in which this couple is the usual one of its reduced form (as reductant) */
  readonly usualReductant: readonly Medium[];
  /** never a step of a mixture: calculation only */
  readonly calculationOnly: boolean;
  readonly source: string;
  readonly note?: string;
}
