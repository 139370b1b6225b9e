import { joined } from '../../chemistry/cell.ts';
import type { Couple } from '../../chemistry/couple.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { quantity, species } from '../../document/inlines.ts';
import type { WordsContext } from '../../document/words.ts';
import { printDecimal } from '../../exact/decimal.ts';
import type { Tables } from '../../potentials/tables.ts';
import { coupleName } from '../couple-name.ts';
import { inPlural } from '../names.ts';
import { type Asked, formulaOf } from './predict-reaction-draw.ts';

/** Id of the datum that prints a couple's E°. */
export const datumOf = ({ id }: Couple): string => `E:${id}`;

/** Which of two couples has the more positive printed E°. */
export function ranked(one: Couple, other: Couple): { readonly high: Couple; readonly low: Couple } {
  return one.printed.value.compare(other.printed.value) > 0 ? { high: one, low: other } : { high: other, low: one };
}

/** What fills the wording about one couple, under a prefix: `highCouple`, `highE`. */
export function coupleContext(prefix: string, couple: Couple): WordsContext {
  return {
    [`${prefix}Couple`]: coupleName(couple),
    [`${prefix}E`]: quantity(printDecimal(couple.printed, true), 'V'),
  };
}

/** What fills the wording about one species, under a prefix: `first`, `firstName`. */
export function askedContext(prefix: string, asked: Asked, tables: Tables): WordsContext {
  const formula = formulaOf(asked);
  return { [prefix]: species(formula), [`${prefix}Name`]: inPlural(keyOf(formula), tables) };
}

/** How the electrons of two half-equations compare: a demand feature. */
export function electronRatio(one: Couple, other: Couple): string {
  const { timesReduction, timesOxidation } = joined(one, other);
  const whole = [timesReduction, timesOxidation].filter((each) => each.n === 1n).length;
  return whole === 2 ? 'equal' : whole === 1 ? 'multiple' : 'awkward';
}
