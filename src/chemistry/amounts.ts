import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import type { Equation } from './equation.ts';
import type { SpeciesKey } from './formula.ts';
import { coefficientOf } from './terms.ts';
import { keyOf } from './write-formula.ts';

const THOUSAND = Rational.of(1000);

/** mol in a volume of solution. @param concentration mol dm⁻³ @param volume cm³ */
export function molesIn(concentration: Rational, volume: Rational): Rational {
  return concentration.times(volume).over(THOUSAND);
}

/** mol dm⁻³ from moles in a volume in cm³. */
export function concentrationOf(moles: Rational, volume: Rational): Rational {
  return moles.times(THOUSAND).over(volume);
}

/**
 * How many of one species go with one of another in an equation, whichever sides they stand on.
 * @throws Fault `unknown-species`
 */
export function moleRatio(equation: Equation, of: SpeciesKey, to: SpeciesKey): Rational {
  return coefficientIn(equation, of).over(coefficientIn(equation, to));
}

function coefficientIn(equation: Equation, key: SpeciesKey): Rational {
  const sum = coefficientOf(equation.left, key).plus(coefficientOf(equation.right, key));
  if (!sum.isZero()) return sum;
  const known = [...equation.left, ...equation.right].map((term) => `\`${keyOf(term.formula)}\``).join(', ');
  throw new Fault('unknown-species', `expected a species of the equation (${known}), found \`${key}\``, {});
}

/** Moles of metal that a charge deposits, or of a species that it changes: Q/zF. @param charge C @param faraday C mol⁻¹ */
export function molesByCharge(charge: Rational, electronsEach: Rational, faraday: Rational): Rational {
  return charge.over(electronsEach.times(faraday));
}

/** Volume strength of hydrogen peroxide: dm³ of oxygen from 1 dm³ of solution. @param molarVolume dm³ mol⁻¹, as printed */
export function volumeStrength(concentration: Rational, molarVolume: Rational): Rational {
  return concentration.times(molarVolume).over(Rational.of(2));
}

/** mol dm⁻³ of hydrogen peroxide from its volume strength. @param molarVolume dm³ mol⁻¹, as printed */
export function peroxideConcentration(strength: Rational, molarVolume: Rational): Rational {
  return strength.times(Rational.of(2)).over(molarVolume);
}

/** Moles of gas by pV = nRT. @param pressure Pa @param volume cm³ @param temperature K @param gas J K⁻¹ mol⁻¹ */
export function molesOfGas(pressure: Rational, volume: Rational, temperature: Rational, gas: Rational): Rational {
  return pressure.times(volume).over(gas.times(temperature).times(Rational.of(1_000_000)));
}
