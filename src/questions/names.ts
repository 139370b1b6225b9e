import type { Formula, SpeciesKey } from '../chemistry/formula.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { Tables } from '../potentials/tables.ts';

/** A species in the plural of prose: `iron(II) ions`, `hydrogen peroxide`. */
export function inPlural(key: SpeciesKey, tables: Tables): string {
  const { name } = tables.speciesOf(key);
  return name.endsWith(' ion') ? `${name}s` : name;
}

/** A substance in solution: its name without the water of crystallisation. A substance that is not listed is a fault of the data. */
export function solutionName(salt: Formula, tables: Tables): string {
  const found = tables.salts.find(({ formula }) => keyOf(formula) === keyOf(salt));
  if (!found) throw new Error(`no salt ${keyOf(salt)} is listed`);
  return found.name.replace(/ \S*hydrate$/, '');
}
