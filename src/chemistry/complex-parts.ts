import { isMetal } from './elements.ts';
import type { FormulaNode } from './formula.ts';
import { knownLigand, type Ligand } from './ligands.ts';
import { writeNodes } from './write-formula.ts';

/** What stands in the square brackets of a complex: its central atom and its ligands. */
export interface ComplexParts {
  readonly centre: string;
  /** central atoms, 1 unless the complex is polynuclear */
  readonly centres: number;
  /** in the order of the formula, equal ligands added up */
  readonly ligands: readonly { readonly ligand: Ligand; readonly count: number }[];
}

/** Non-metals that stand at the centre of a complex: `[SiF6]^2-`, `[BF4]^-`. */
const CENTRES = new Set(['B', 'Si', 'P', 'As', 'Ge', 'Se', 'Te']);

/**
 * Takes a complex apart: `Fe(CN)6` is Fe with six cyanido. The central atom may stand before or among its ligands.
 * @param nodes what stands inside the bracket
 * @returns undefined when there is not exactly one kind of central atom, or when a ligand is not known
 */
export function complexParts(nodes: readonly FormulaNode[]): ComplexParts | undefined {
  const elements = nodes.filter((node) => node.kind === 'element');
  const metals = elements.filter((node) => isMetal(node.symbol));
  const centre = metals[0] ?? elements.find((node) => CENTRES.has(node.symbol));
  if (!centre || metals.length > 1) return undefined;
  const at = nodes.indexOf(centre);
  const before = ligandsIn(nodes.slice(0, at));
  const after = ligandsIn(nodes.slice(at + 1));
  if (!before || !after || before.length + after.length === 0) return undefined;
  return { centre: centre.symbol, centres: centre.count, ligands: addedUp([...before, ...after]) };
}

type Counted = { readonly ligand: Ligand; readonly count: number };

/** Ligands in a run of nodes; undefined when something is none. Bare runs are read by the longest ligand first. */
function ligandsIn(nodes: readonly FormulaNode[]): Counted[] | undefined {
  const found: Counted[] = [];
  let at = 0;
  while (at < nodes.length) {
    const next = ligandAt(nodes, at);
    if (!next) return undefined;
    found.push(next);
    at += next.length;
  }
  return found;
}

function ligandAt(nodes: readonly FormulaNode[], at: number): (Counted & { length: number }) | undefined {
  const node = nodes[at]!;
  if (node.kind === 'group') {
    const ligand = knownLigand(writeNodes(node.nodes));
    return ligand && { ligand, count: node.count, length: 1 };
  }
  for (let end = nodes.length; end > at + 1; end -= 1) {
    const ligand = knownLigand(writeNodes(nodes.slice(at, end)));
    if (ligand) return { ligand, count: 1, length: end - at };
  }
  const ligand = knownLigand(node.symbol);
  return ligand && { ligand, count: node.count, length: 1 };
}

function addedUp(counted: readonly Counted[]): Counted[] {
  const sums = new Map<Ligand, number>();
  for (const { ligand, count } of counted) sums.set(ligand, (sums.get(ligand) ?? 0) + count);
  return [...sums].map(([ligand, count]) => ({ ligand, count }));
}

/** The charge that the ligands of a complex bring. */
export function ligandCharge(parts: ComplexParts): number {
  return parts.ligands.reduce((sum, { ligand, count }) => sum + ligand.charge * count, 0);
}
