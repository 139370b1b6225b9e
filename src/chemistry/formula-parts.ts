import type { Formula, FormulaNode } from './formula.ts';

/** The electron: no units, charge −1. */
export const electron: Formula = { units: [], charge: -1 };

/** True for the electron. */
export function isElectron(formula: Formula): boolean {
  return formula.units.length === 0;
}

/** A run of one element. */
export function element(symbol: string, count = 1): FormulaNode {
  return { kind: 'element', symbol, count };
}
