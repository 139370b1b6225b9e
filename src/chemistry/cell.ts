import type { Decimal } from '../exact/decimal.ts';
import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import { type Combined, combine } from './combine.ts';
import type { Couple } from './couple.ts';

/** Which of a couple's two values is used: sheets compute from what is printed on them, calculators from what is stored. */
export type Values = 'stored' | 'printed';

/** A cell of two half-cells: oxidation at the negative one, reduction at the positive one. */
export interface Cell {
  readonly negative: Couple;
  readonly positive: Couple;
  /** V, E°(positive) − E°(negative), with the decimals of the less precise value */
  readonly emf: Decimal;
  /** under standard conditions: the e.m.f. is positive */
  readonly feasible: boolean;
  readonly combined: Combined;
}

/** Standard electrode potential of a couple in V, as stored or as printed. */
export function potentialOf(couple: Couple, values: Values): Decimal {
  return values === 'printed' ? couple.printed : couple.stored;
}

/**
 * Standard e.m.f., in V. Coefficients play no part in it.
 * @returns E°(positive) − E°(negative), exact, with the decimals of the less precise value; the zero of hydrogen is exact
 * @see IUPAC Green Book, 3rd ed., 2.13
 */
export function standardEmf(negative: Couple, positive: Couple, values: Values): Decimal {
  const [low, high] = [potentialOf(negative, values), potentialOf(positive, values)];
  const places = isHydrogen(negative) ? high.places : isHydrogen(positive) ? low.places : Math.min(low.places, high.places);
  return { value: high.value.minus(low.value), places };
}

function isHydrogen(couple: Couple): boolean {
  return couple.oxidisedKey === 'H^+' && couple.reducedKey === 'H2' && couple.stored.value.isZero();
}

const JOINED = new WeakMap<Couple, WeakMap<Couple, Combined>>();

/** Overall equation of two couples, found once for each pair. @throws Fault `same-couple` */
export function joined(oxidant: Couple, reductant: Couple): Combined {
  let partners = JOINED.get(oxidant);
  if (!partners) {
    partners = new WeakMap();
    JOINED.set(oxidant, partners);
  }
  let found = partners.get(reductant);
  if (!found) {
    if (oxidant.id === reductant.id)
      throw new Fault('same-couple', `a cell needs two couples, found \`${oxidant.id}\` twice`, {});
    found = combine(oxidant.half, reductant.half);
    partners.set(reductant, found);
  }
  return found;
}

/**
 * A cell as written: reduction at `positive`, oxidation at `negative`, even if the e.m.f. then comes out negative.
 * @throws Fault `same-couple`
 */
export function cell(negative: Couple, positive: Couple, values: Values): Cell {
  const combined = joined(positive, negative);
  const emf = standardEmf(negative, positive, values);
  return { negative, positive, emf, feasible: emf.value.sign() > 0, combined };
}

/** The cell of two couples with the more positive one as the positive half-cell; the first as negative when they are equal. */
export function spontaneousCell(one: Couple, other: Couple, values: Values): Cell {
  const higher = potentialOf(other, values).value.compare(potentialOf(one, values).value) >= 0;
  return higher ? cell(one, other, values) : cell(other, one, values);
}

/** V, the least e.m.f. that counts as a step and as drawn: below it concentration decides. */
export const THRESHOLD = Rational.of(1, 10);
