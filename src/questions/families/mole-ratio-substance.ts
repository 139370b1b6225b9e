import type { SpeciesKey } from '../../chemistry/formula.ts';
import { molarMass } from '../../chemistry/molar-mass.ts';
import type { Salt } from '../../chemistry/species.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import type { Decimal } from '../../exact/decimal.ts';
import type { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { cautionsFor, type Handled } from '../cautions.ts';

/** How much of a reagent there is, or is asked for: by volume and concentration, by mass, or as an amount. */
export type Measure = 'solution' | 'mass' | 'amount';

/** A reagent from the shelf, each formula unit of which gives one of the species that reacts. */
export interface Substance {
  readonly key: SpeciesKey;
  readonly salt: Salt;
  /** an element that is weighed as it is: its molar mass is one relative atomic mass */
  readonly isMetal: boolean;
}

/** Every substance on the shelf that gives one of a species for each formula unit. */
export function substancesFor(key: SpeciesKey, tables: Tables): Substance[] {
  const isMetal = tables.speciesOf(key).role === 'metal';
  return tables.salts.filter(({ gives, count }) => gives === key && count === 1).map((salt) => ({ key, salt, isMetal }));
}

/** True when the species is met in solution. */
export const isDissolved = ({ key }: Substance, tables: Tables): boolean => tables.speciesOf(key).role === 'solution';

/** True when the substance is kept as a solid, so that it can be weighed. */
export function isWeighed({ salt }: Substance, tables: Tables): boolean {
  return cautionsFor([{ key: keyOf(salt.formula), form: 'solid' }], tables) !== undefined;
}

/** g mol⁻¹, from relative atomic masses as printed. */
export function molarMassOf({ salt }: Substance, tables: Tables): Rational {
  return molarMass(salt.formula, printedMasses(tables)).value;
}

export function printedMasses(tables: Tables): ReadonlyMap<string, Decimal> {
  return new Map([...tables.atomicMasses].map(([symbol, { printed }]) => [symbol, printed]));
}

/** What is handled of a reagent. */
export function handledOf({ key, salt }: Substance, measure: Measure, concentration: number, tables: Tables): Handled {
  const { role } = tables.speciesOf(key);
  return measure === 'mass' || role !== 'solution'
    ? { key: keyOf(salt.formula), form: 'solid' }
    : { key, form: 'solution', concentration };
}

/** The acids that are added, as they are named on a page. */
export const ACIDS = { H2SO4: 'dilute sulfuric acid', HCl: 'dilute hydrochloric acid' } as const;

/** The acid for two reagents: sulfuric, but hydrochloric where tin(II) takes part, whose solutions need chloride. Common practice. */
export function acidFor({ known, found }: { readonly known: Substance; readonly found: Substance }): keyof typeof ACIDS {
  return [known, found].some(({ key }) => key === 'Sn^2+') ? 'HCl' : 'H2SO4';
}
