import type { Equation } from '../chemistry/equation.ts';
import type { Formula } from '../chemistry/formula.ts';
import type { Arrow, Inline, Role } from './inline.ts';

const tagged = (role: Role | undefined) => (role === undefined ? {} : { role });

/** Plain words. */
export const text = (words: string): Inline => ({ kind: 'text', text: words });

/** Words that carry weight. */
export const strong = (words: string): Inline => ({ kind: 'text', text: words, weight: 'strong' });

/** A species, with its state only where the formula carries one. */
export const species = (formula: Formula, role?: Role): Inline => ({ kind: 'formula', formula, ...tagged(role) });

/** A number, already printed, with its unit in caret text (`mol dm^-3`). */
export const quantity = (number: string, unit: string, role?: Role): Inline => ({
  kind: 'quantity',
  number,
  unit,
  ...tagged(role),
});

/** A whole equation. */
export const equation = (value: Equation, arrow: Arrow = 'forward', role?: Role): Inline => ({
  kind: 'equation',
  equation: value,
  arrow,
  ...tagged(role),
});

/** Several runs joined by plain words. */
export function joined(runs: readonly (readonly Inline[])[], separator: string, last = separator): Inline[] {
  return runs.flatMap((run, at) => [...(at === 0 ? [] : [text(at === runs.length - 1 ? last : separator)]), ...run]);
}
