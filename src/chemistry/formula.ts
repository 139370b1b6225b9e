/** Physical state as written after a formula. */
export type State = 's' | 'l' | 'g' | 'aq';

/** A run of one element (`O2` → O, 2), or a bracketed group with its multiplier (`(OH)3`, `[Fe(CN)6]`). */
export type FormulaNode =
  | { readonly kind: 'element'; readonly symbol: string; readonly count: number }
  | { readonly kind: 'group'; readonly bracket: '(' | '['; readonly nodes: readonly FormulaNode[]; readonly count: number };

/** One part of a formula between raised dots: `CuSO4·5H2O` has two, the second taken five times. */
export interface FormulaUnit {
  readonly count: number;
  readonly nodes: readonly FormulaNode[];
}

/**
 * A chemical formula as it is read and written. An electron is the formula with no units and charge −1.
 * Printers write it their own way; `writeFormula` gives the caret notation that parses back (`MnO4^-`, `Fe^3+`, `CuSO4·5H2O`, `e^-`).
 */
export interface Formula {
  readonly units: readonly FormulaUnit[];
  /** in elementary charges */
  readonly charge: number;
  readonly state?: State;
}

/** The key by which a species is known everywhere: its caret notation without state, such as `Cr2O7^2-`. */
export type SpeciesKey = string;
