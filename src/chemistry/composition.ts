import type { Formula, FormulaNode } from './formula.ts';

/** The name under which charge stands beside the elements in a composition. No element has it. */
export const CHARGE = 'charge';

/** What a species is made of: atoms by element symbol, and its charge under `charge` (absent when zero). */
export type Composition = ReadonlyMap<string, number>;

const KNOWN = new WeakMap<Formula, Composition>();

/** What is conserved in a species: the number of atoms of each element, and the charge. Computed once for each formula. */
export function composition(formula: Formula): Composition {
  let found = KNOWN.get(formula);
  if (!found) {
    const counts = new Map<string, number>();
    for (const unit of formula.units) addNodes(counts, unit.nodes, unit.count);
    if (formula.charge !== 0) counts.set(CHARGE, formula.charge);
    found = counts;
    KNOWN.set(formula, found);
  }
  return found;
}

/** Atoms of one element, given by its symbol, in a formula unit. */
export function atomsOf(formula: Formula, symbol: string): number {
  return composition(formula).get(symbol) ?? 0;
}

/** The elements of a formula, in order of first appearance. */
export function elementsIn(formula: Formula): string[] {
  return [...composition(formula).keys()].filter((component) => component !== CHARGE);
}

/** All atoms of a formula unit. */
export function totalAtoms(formula: Formula): number {
  return elementsIn(formula).reduce((total, symbol) => total + atomsOf(formula, symbol), 0);
}

/** Atoms in a run of nodes, as a composition without charge. */
export function atomsInNodes(nodes: readonly FormulaNode[]): Composition {
  const counts = new Map<string, number>();
  addNodes(counts, nodes, 1);
  return counts;
}

function addNodes(counts: Map<string, number>, nodes: readonly FormulaNode[], times: number): void {
  for (const node of nodes) {
    if (node.kind === 'element') counts.set(node.symbol, (counts.get(node.symbol) ?? 0) + node.count * times);
    else addNodes(counts, node.nodes, node.count * times);
  }
}
