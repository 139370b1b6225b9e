import { parseDecimal } from '../exact/decimal.ts';
import { Rational } from '../exact/rational.ts';

/** Physical constants that an answer is computed from. */
export interface Constants {
  /** C mol⁻¹ */
  readonly faraday: Rational;
  /** J K⁻¹ mol⁻¹ */
  readonly gas: Rational;
  /** J s */
  readonly planck: Rational;
  /** m s⁻¹ */
  readonly light: Rational;
  /** mol⁻¹ */
  readonly avogadro: Rational;
}

/** Exact values: the 2019 SI and CODATA 2022 (F = N_A e, R = N_A k). Calculators use these. */
export const CODATA: Constants = {
  faraday: Rational.parse('6.02214076e23').times(Rational.parse('1.602176634e-19')),
  gas: Rational.parse('6.02214076e23').times(Rational.parse('1.380649e-23')),
  planck: Rational.parse('6.62607015e-34'),
  light: Rational.parse('299792458'),
  avogadro: Rational.parse('6.02214076e23'),
};

/** The rounded values that are printed on sheets, and that sheets compute from (common practice, no source). */
export const SHEET: Constants = {
  faraday: Rational.parse('96500'),
  gas: Rational.parse('8.31'),
  planck: Rational.parse('6.63e-34'),
  light: Rational.parse('3.00e8'),
  avogadro: Rational.parse('6.02e23'),
};

/** K, standard temperature of electrode potentials: 298 as it is printed on sheets. */
export const SHEET_TEMPERATURE = parseDecimal('298').value;
/** K, 25 °C. */
export const STANDARD_TEMPERATURE = parseDecimal('298.15').value;
