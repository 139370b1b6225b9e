import type { Couple, Medium } from '../chemistry/couple.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Tables } from '../potentials/tables.ts';
import { companionsOf } from './companions.ts';

/** Aqua ions that disproportionate in acid or water, so that a couple with one says nothing that is seen (common practice, no source). */
const FLEETING: readonly SpeciesKey[] = ['Cu^+', 'Mn^3+', 'MnO4^2-'];

/**
 * True when a couple tells what one of its forms does in acid or neutral solution: through it the form usually acts there, or the form has
 * no other by which it does (magnesium ions, which do nothing). Manganate(VII) goes to manganese(II), not to manganate(VI).
 */
export function isMain(couple: Couple, form: 'oxidised' | 'reduced', medium: Medium, { couples }: Tables): boolean {
  if ([couple.oxidisedKey, couple.reducedKey].some((key) => FLEETING.includes(key)) || companionsOf(couple).length > 0)
    return false;
  const key = (each: Couple) => (form === 'oxidised' ? each.oxidisedKey : each.reducedKey);
  const isUsual = (each: Couple) => (form === 'oxidised' ? each.usualOxidant : each.usualReductant).includes(medium);
  const own = couples.filter((each) => !each.calculationOnly && each.medium !== 'alkali' && key(each) === key(couple));
  return isUsual(couple) || !own.some(isUsual);
}
