import { Fault } from '../exact/fault.ts';
import type { Complex } from './complex.ts';
import { elementOf } from './elements.ts';
import type { Ligand } from './ligands.ts';
import { ateStem, compoundMultiplier, multiplier } from './naming-words.ts';
import { roman } from './roman.ts';

/**
 * Additive name of a complex without the word ion: `tetraamminediaquacopper(II)`, `hexacyanidoferrate(III)`.
 * Ligands stand in alphabetical order of their names, whatever their number; an anion ends in -ate.
 * @param trade older ligand names: `hexacyanoferrate(III)`
 * @throws Fault `no-name` for several centres, a fractional oxidation number, or too many ligands
 * @see IUPAC, Nomenclature of Inorganic Chemistry, Recommendations 2005, IR-9.2.2
 */
export function complexName(complex: Complex, trade = false): string {
  const { centre, centres, charge, oxidationNumber } = complex;
  if (centres !== 1 || !oxidationNumber.isInteger())
    throw new Fault('no-name', 'complexes of more than one central atom are not named here', {});
  const named = complex.ligands.map(({ ligand, count }) => ({ ligand, count, name: trade ? ligand.tradeName : ligand.name }));
  const parts = named.toSorted((one, other) => (letters(one.name) < letters(other.name) ? -1 : 1)).map(ligandPart);
  const metal = charge < 0 ? `${ateStem(centre)}ate` : elementOf(centre).name;
  return `${parts.join('')}${metal}(${roman(Number(oxidationNumber.n))})`;
}

/** What is compared in alphabetical order. */
function letters(name: string): string {
  return name.replace(/[^a-z]/g, '');
}

function ligandPart({ ligand, count, name }: { ligand: Ligand; count: number; name: string }): string {
  const prefix = ligand.bracketed ? compoundMultiplier(count) : multiplier(count);
  if (prefix === undefined) throw new Fault('no-name', `${count} ligands of one kind are too many to name`, {});
  if (!ligand.bracketed) return `${prefix}${name}`;
  return name.startsWith('(') ? `${prefix}[${name}]` : `${prefix}(${name})`;
}
