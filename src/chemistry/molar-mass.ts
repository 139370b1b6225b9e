import type { Decimal } from '../exact/decimal.ts';
import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import { atomsOf, elementsIn } from './composition.ts';
import type { Formula } from './formula.ts';
import { writeFormula } from './write-formula.ts';

/** One element's share of a molar mass. */
export interface MassPart {
  readonly symbol: string;
  readonly atoms: number;
  /** relative atomic mass as given */
  readonly each: Decimal;
  /** atoms × each, exact */
  readonly sum: Decimal;
}

/**
 * The shares of the elements in a molar mass, in order of appearance.
 * @param masses relative atomic mass by symbol
 * @throws Fault `no-atomic-mass`
 */
export function massParts(formula: Formula, masses: ReadonlyMap<string, Decimal>): MassPart[] {
  return elementsIn(formula).map((symbol) => {
    const each = masses.get(symbol);
    if (!each) {
      throw new Fault('no-atomic-mass', `no relative atomic mass is given for ${symbol} in \`${writeFormula(formula)}\``, {});
    }
    const atoms = atomsOf(formula, symbol);
    return { symbol, atoms, each, sum: { value: each.value.times(Rational.of(atoms)), places: each.places } };
  });
}

/**
 * Molar mass in g mol⁻¹: the exact sum of atoms × relative atomic mass, with the decimals of the least precise mass used. The
 * mass of an electron is neglected.
 * @throws Fault `no-atomic-mass`
 */
export function molarMass(formula: Formula, masses: ReadonlyMap<string, Decimal>): Decimal {
  const parts = massParts(formula, masses);
  const value = parts.reduce((sum, part) => sum.plus(part.sum.value), Rational.zero);
  return { value, places: parts.length === 0 ? 0 : Math.min(...parts.map((part) => part.sum.places)) };
}
