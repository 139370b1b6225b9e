import { Rational } from '../exact/rational.ts';
import type { Constants } from './constants.ts';

/** Energy of one photon in J from its wavelength in nm: hc/λ. */
export function photonEnergy(wavelength: Rational, { planck, light }: Constants): Rational {
  return planck.times(light).over(wavelength.times(Rational.parse('1e-9')));
}

/** Energy of a mole of photons in kJ mol⁻¹. */
export function molarPhotonEnergy(wavelength: Rational, constants: Constants): Rational {
  return photonEnergy(wavelength, constants).times(constants.avogadro).over(Rational.of(1000));
}

/** Wavelength in nm from the energy of one photon in J. */
export function wavelengthOf(energy: Rational, { planck, light }: Constants): Rational {
  return planck.times(light).over(energy).times(Rational.parse('1e9'));
}

/** Frequency in Hz from a wavelength in nm. */
export function frequencyOf(wavelength: Rational, { light }: Constants): Rational {
  return light.over(wavelength.times(Rational.parse('1e-9')));
}
