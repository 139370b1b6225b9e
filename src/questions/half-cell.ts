import type { Couple } from '../chemistry/couple.ts';
import type { Formula } from '../chemistry/formula.ts';
import { isElectron } from '../chemistry/formula-parts.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { Tables } from '../potentials/tables.ts';

/** How a couple is set up as a half-cell. */
export type HalfCellKind = 'metal' | 'solution' | 'gas';

/**
 * The kind of half-cell a couple makes: a metal in its ions, platinum in a solution of both forms, or a gas over platinum.
 * @returns undefined when it needs something else (a solid that does not conduct, two solids)
 */
export function halfCellKind(couple: Couple, tables: Tables): HalfCellKind | undefined {
  const roles = [couple.oxidisedKey, couple.reducedKey].map((key) => tables.speciesOf(key).role);
  if (roles[1] === 'metal' && roles[0] === 'solution') return 'metal';
  if (roles.every((role) => role === 'solution')) return 'solution';
  if (roles.includes('gas') && roles.every((role) => role === 'gas' || role === 'solution')) return 'gas';
  return undefined;
}

/** Dissolved species of a half-cell's solution, those of the couple first; water is not named. */
export function dissolved(couple: Couple, tables: Tables): Formula[] {
  const all = [...couple.half.left, ...couple.half.right].map(({ formula }) => formula);
  return all.filter(
    (formula) => !isElectron(formula) && keyOf(formula) !== 'H2O' && tables.speciesOf(keyOf(formula)).role === 'solution',
  );
}

/** The gas or the metal of a half-cell. */
export function undissolved(couple: Couple, tables: Tables): string | undefined {
  const key = [couple.oxidisedKey, couple.reducedKey].find((each) => ['metal', 'gas'].includes(tables.speciesOf(each).role));
  return key === undefined ? undefined : tables.speciesOf(key).name;
}

/** True when the couple takes part in reactions that sheets ask about. */
export function inUse(couple: Couple): boolean {
  return !couple.calculationOnly && couple.usualOxidant.length + couple.usualReductant.length > 0;
}
