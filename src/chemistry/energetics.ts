import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import type { Constants } from './constants.ts';
import type { Equation, Term } from './equation.ts';
import type { SpeciesKey } from './formula.ts';
import { isElectron } from './formula-parts.ts';
import { exponential, naturalLog, type Scientific } from './logarithm.ts';
import { keyOf } from './write-formula.ts';

/**
 * Standard Gibbs energy change, exact.
 * @param electrons electrons in the equation as it is written
 * @param emf V
 * @returns J per mole of the equation as written: −nFE°
 */
export function gibbsEnergy(electrons: Rational, emf: Rational, { faraday }: Constants): Rational {
  return electrons.times(faraday).times(emf).negate();
}

/** E.m.f. in V from a Gibbs energy in J mol⁻¹, exact: −ΔG°/nF. @throws Fault `zero-denominator` for no electrons */
export function emfFromGibbs(electrons: Rational, gibbs: Rational, { faraday }: Constants): Rational {
  return gibbs.negate().over(electrons.times(faraday));
}

/** ln K = nFE°/RT, exact. @param temperature K @throws Fault `bad-temperature` */
export function lnEquilibrium(electrons: Rational, emf: Rational, temperature: Rational, constants: Constants): Rational {
  return gibbsEnergy(electrons, emf, constants).negate().over(thermal(temperature, constants));
}

/** ln K = −ΔG°/RT, exact. @param gibbs J mol⁻¹ @param temperature K @throws Fault `bad-temperature` */
export function lnFromGibbs(gibbs: Rational, temperature: Rational, constants: Constants): Rational {
  return gibbs.negate().over(thermal(temperature, constants));
}

/** RT in J mol⁻¹. */
function thermal(temperature: Rational, { gas }: Constants): Rational {
  if (temperature.sign() <= 0) throw new Fault('bad-temperature', 'expected a temperature above zero kelvin', {});
  return gas.times(temperature);
}

/** K from its natural logarithm, of any size. */
export function equilibriumConstant(lnK: Rational): Scientific {
  return exponential(lnK.toNumber());
}

/** log₁₀ K from ln K. */
export function log10Of(lnK: Rational): number {
  return lnK.toNumber() / Math.LN10;
}

/** ΔG° in J mol⁻¹ from K: −RT ln K. */
export function gibbsFromConstant(k: Rational, temperature: Rational, constants: Constants): number {
  return -thermal(temperature, constants).toNumber() * naturalLog(k);
}

/**
 * The reaction quotient of an equation: amounts of the right over those of the left, each to the power of its coefficient.
 * Solids, liquids, water and electrons stand at 1, and so do dissolved species and gases that are not given.
 * @param activities concentration over 1 mol dm⁻³, or pressure over 100 kPa, by species
 * @throws Fault `bad-concentration` for zero or less, `unknown-species` for a species that is not in the equation
 */
export function reactionQuotient(equation: Equation, activities: ReadonlyMap<SpeciesKey, Rational>): Rational {
  const keys = new Set([...equation.left, ...equation.right].map((term) => keyOf(term.formula)));
  for (const [key, activity] of activities) {
    if (!keys.has(key)) throw new Fault('unknown-species', `\`${key}\` does not stand in the equation`, {});
    if (activity.sign() <= 0) throw new Fault('bad-concentration', `expected a concentration above zero of \`${key}\``, {});
  }
  const product = (terms: readonly Term[]) =>
    terms.reduce((all, { coefficient, formula }) => {
      const fixed = formula.state === 's' || formula.state === 'l' || keyOf(formula) === 'H2O' || isElectron(formula);
      return fixed ? all : all.times(power(activities.get(keyOf(formula)) ?? Rational.one, coefficient));
    }, Rational.one);
  return product(equation.right).over(product(equation.left));
}

function power(base: Rational, exponent: Rational): Rational {
  if (!exponent.isInteger() || exponent.n > 1000n)
    throw new Fault('bad-coefficient', 'expected whole coefficients below 1000', {});
  return Rational.of(base.n ** exponent.n, base.d ** exponent.n);
}

/**
 * E.m.f. away from standard conditions by the Nernst equation, in V: E° − (RT/nF) ln Q.
 * @param quotient of the equation whose electrons are given
 * @param temperature K
 */
export function nernstEmf(
  emf: Rational,
  electrons: Rational,
  quotient: Rational,
  temperature: Rational,
  constants: Constants,
): number {
  const slope = thermal(temperature, constants).over(electrons.times(constants.faraday));
  return emf.toNumber() - slope.toNumber() * naturalLog(quotient);
}
