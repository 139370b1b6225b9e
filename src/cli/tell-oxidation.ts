import { oxidationText } from '../chemistry/oxidation-rules.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { Numbered } from './calculators/oxidation.ts';
import { columns, lines } from './tell.ts';

/** The number of each element, and the rules that give it. */
export function tellOxidation({ formula, sites, rules }: Numbered): string {
  const table = sites.map(({ element, number, atoms }) => [
    element,
    oxidationText(number),
    atoms === 1 ? '1 atom' : `${atoms} atoms`,
  ]);
  return lines(
    keyOf(formula),
    columns(table),
    rules.map((rule) => `  - ${rule}`),
  );
}
