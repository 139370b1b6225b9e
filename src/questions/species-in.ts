import type { SpeciesKey } from '../chemistry/formula.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { inlinesIn } from './gate/inlines-of.ts';
import type { Item } from './question.ts';
import { solve } from './solve.ts';
import type { Value } from './value.ts';

/** Every species that an item prints or answers with, so that one can be left out of a sheet. */
export function speciesIn(item: Item): Set<SpeciesKey> {
  const printed = [...inlinesIn(item.stem), ...item.parts.flatMap(({ prompt }) => prompt)].flatMap((inline) => {
    if (inline.kind === 'formula') return [inline.formula];
    return inline.kind === 'equation' ? [...inline.equation.left, ...inline.equation.right].map(({ formula }) => formula) : [];
  });
  return new Set([...printed, ...[...solve(item).values()].flatMap(formulasIn)].map(keyOf));
}

function formulasIn(value: Value): Parameters<typeof keyOf>[0][] {
  if (value.kind === 'species') return [value.formula];
  if (value.kind === 'equation') return [...value.equation.left, ...value.equation.right].map(({ formula }) => formula);
  return value.kind === 'list' ? value.values.flatMap(formulasIn) : [];
}
