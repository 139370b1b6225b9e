import type { Equation } from '../chemistry/equation.ts';
import type { Formula } from '../chemistry/formula.ts';

/** What a piece of prose prints: an id of the question's data or steps, so that an auditor can read a finished page. */
export type Role = string;

/** One run of a paragraph. Chemistry and quantities stand as values; each printer writes them its own way. */
export type Inline =
  | { readonly kind: 'text'; readonly text: string; readonly weight?: 'strong' | 'light' }
  /** a species: never broken over a line; states are printed when the formula carries one */
  | { readonly kind: 'formula'; readonly formula: Formula; readonly role?: Role }
  /** a whole equation or half-equation; may break only before its arrow or a plus sign */
  | { readonly kind: 'equation'; readonly equation: Equation; readonly arrow: Arrow; readonly role?: Role }
  /** a number with its unit, never broken: `+1.56 V`, `0.0200 mol dm⁻³`; unit in caret text (`mol dm^-3`) */
  | { readonly kind: 'quantity'; readonly number: string; readonly unit: string; readonly role?: Role }
  /** a physical symbol: italic letter, raised and lowered parts: E°cell is {letter: 'E', raised: '°', lowered: 'cell'} */
  | PhysicalSymbol
  /** a stacked fraction in worked lines */
  | { readonly kind: 'fraction'; readonly above: readonly Inline[]; readonly below: readonly Inline[] }
  /** dotted gap to write in, width in ems; on a teacher copy what belongs into it stands on the dots */
  | { readonly kind: 'gap'; readonly width: number; readonly filled?: readonly Inline[] };

/** → or ⇌ */
export type Arrow = 'forward' | 'reversible';

export interface PhysicalSymbol {
  readonly kind: 'symbol';
  readonly letter: string;
  readonly raised?: string;
  readonly lowered?: string;
  /** bracketed argument, as in c(Fe²⁺) */
  readonly of?: readonly Inline[];
}
