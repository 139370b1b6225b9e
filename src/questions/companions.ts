import type { Couple } from '../chemistry/couple.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import { isElectron } from '../chemistry/formula-parts.ts';
import { keyOf } from '../chemistry/write-formula.ts';

/** What a solution of the stated medium holds anyhow. */
const OF_THE_MEDIUM: readonly SpeciesKey[] = ['H^+', 'OH^-', 'H2O'];

/** Species that a half-equation needs beside its two forms, electrons and the medium: iodide for copper(I) iodide, ammonia for its complex. */
export function companionsOf({ half, oxidisedKey, reducedKey }: Couple): SpeciesKey[] {
  const own = [oxidisedKey, reducedKey, ...OF_THE_MEDIUM];
  return [...half.left, ...half.right].flatMap(({ formula }) => {
    const key = keyOf(formula);
    return isElectron(formula) || own.includes(key) ? [] : [key];
  });
}
