import type { SpeciesKey } from '../../chemistry/formula.ts';
import { type Decimal, decimalWithFigures } from '../../exact/decimal.ts';
import type { Draws } from '../../random/draws.ts';

/** Concentrations in use, mol dm⁻³: as titrated, least and most, and of a stock that is diluted first. */
export interface Limits {
  readonly least: string;
  readonly most: string;
  readonly stock: string;
}

const USUAL: Limits = { least: '0.0100', most: '0.2000', stock: '1.0' };

/** Strongly coloured or sparingly soluble solutions are kept dilute. Common practice, no source. */
const SPECIAL: Readonly<Record<SpeciesKey, Limits>> = {
  'MnO4^-': { least: '0.0050', most: '0.0250', stock: '0.2' },
  'Cr2O7^2-': { least: '0.0080', most: '0.0250', stock: '0.2' },
  I2: { least: '0.0100', most: '0.0600', stock: '0.2' },
  'C2O4^2-': { least: '0.0100', most: '0.1000', stock: '0.25' },
  SO2: { least: '0.0100', most: '0.1000', stock: '0.5' },
};

export const limitsOf = (key: SpeciesKey): Limits => SPECIAL[key] ?? USUAL;

/** A concentration as a bottle is labelled, to three significant figures: 0.00750, 0.0200 or 0.120 mol dm⁻³. */
export function drawConcentration(draws: Draws, key: SpeciesKey): Decimal {
  const { least, most } = limitsOf(key);
  return decimalWithFigures(draws.decimal(least, most, '0.0005', 4).value, 3);
}
