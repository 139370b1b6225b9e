import type { Formula, FormulaNode, SpeciesKey } from './formula.ts';
import { isElectron } from './formula-parts.ts';

const KEYS = new WeakMap<Formula, SpeciesKey>();

/**
 * Caret notation: `MnO4^-`, `CuSO4·5H2O`, `e^-`; parses back to the same formula.
 * @param options.state whether a state that the formula carries is written; it is unless this is false
 */
export function writeFormula(formula: Formula, options: { readonly state?: boolean } = {}): string {
  const state = formula.state && options.state !== false ? `(${formula.state})` : '';
  return `${keyOf(formula)}${state}`;
}

/** The key by which the species is known: caret notation without state. */
export function keyOf(formula: Formula): SpeciesKey {
  let key = KEYS.get(formula);
  if (key === undefined) {
    key = isElectron(formula) ? 'e^-' : `${writeUnits(formula)}${writeCharge(formula.charge)}`;
    KEYS.set(formula, key);
  }
  return key;
}

/** True when two formulas are one species, whatever their states. */
export function sameSpecies(one: Formula, other: Formula): boolean {
  return one === other || keyOf(one) === keyOf(other);
}

function writeUnits(formula: Formula): string {
  return formula.units.map(({ count, nodes }) => `${numberOf(count)}${writeNodes(nodes)}`).join('·');
}

/** A run of nodes as plain text. */
export function writeNodes(nodes: readonly FormulaNode[]): string {
  return nodes.map(writeNode).join('');
}

function writeNode(node: FormulaNode): string {
  const count = numberOf(node.count);
  if (node.kind === 'element') return `${node.symbol}${count}`;
  return `${node.bracket}${writeNodes(node.nodes)}${node.bracket === '(' ? ')' : ']'}${count}`;
}

function numberOf(count: number): string {
  return count === 1 ? '' : String(count);
}

function writeCharge(charge: number): string {
  return charge === 0 ? '' : `^${numberOf(Math.abs(charge))}${charge > 0 ? '+' : '-'}`;
}
