import { complexParts } from './complex-parts.ts';
import type { Formula, FormulaNode } from './formula.ts';
import { knownIon } from './ions.ts';
import { knownLigand } from './ligands.ts';
import { writeNodes } from './write-formula.ts';

/** A piece of one unit of a formula. */
export type Piece =
  /** an ion or a neutral molecule whose charge is known; `formula` carries that charge */
  | { readonly kind: 'known'; readonly formula: Formula; readonly count: number }
  /** a complex in square brackets; its charge follows from the rest */
  | { readonly kind: 'complex'; readonly nodes: readonly FormulaNode[]; readonly count: number }
  /** whatever is left, taken together */
  | { readonly kind: 'rest'; readonly nodes: readonly FormulaNode[] };

/**
 * Cuts a unit into ions. The ammonium ion and complexes are always taken apart; polyatomic anions and neutral ligands only when
 * `all` is set, because most formulas are decided without it.
 */
export function splitIons(nodes: readonly FormulaNode[], all: boolean): Piece[] {
  const pieces: Piece[] = [];
  const rest: FormulaNode[] = [];
  let run: FormulaNode[] = [];
  const close = (): void => {
    const cut = cutRun(run, all);
    pieces.push(...cut.pieces);
    rest.push(...cut.rest);
    run = [];
  };
  for (const node of nodes) {
    if (node.kind === 'element') {
      run.push(node);
      continue;
    }
    close();
    const piece = groupPiece(node, all);
    if (piece) pieces.push(piece);
    else rest.push(node);
  }
  close();
  return rest.length > 0 ? [...pieces, { kind: 'rest', nodes: rest }] : pieces;
}

function groupPiece(node: FormulaNode & { kind: 'group' }, all: boolean): Piece | undefined {
  if (node.bracket === '[' && complexParts(node.nodes)) return { kind: 'complex', nodes: node.nodes, count: node.count };
  const text = writeNodes(node.nodes);
  const charge = text === 'NH4' ? 1 : all ? (knownIon(text) ?? knownLigand(text))?.charge : undefined;
  return charge === undefined ? undefined : known(node.nodes, charge, node.count);
}

function known(nodes: readonly FormulaNode[], charge: number, count: number): Piece {
  return { kind: 'known', formula: { units: [{ count: 1, nodes }], charge }, count };
}

/** Takes ammonium from the front of a run of elements and, when asked, the longest known anion from its end. */
function cutRun(run: readonly FormulaNode[], all: boolean): { pieces: Piece[]; rest: readonly FormulaNode[] } {
  const pieces: Piece[] = [];
  let rest = run;
  if (rest.length > 2 && writeNodes(rest.slice(0, 2)) === 'NH4') {
    pieces.push(known(rest.slice(0, 2), 1, 1));
    rest = rest.slice(2);
  }
  if (!all) return { pieces, rest };
  for (let from = 0; from < rest.length - 1; from += 1) {
    const ion = knownIon(writeNodes(rest.slice(from)));
    if (ion && ion.charge < 0) return { pieces: [...pieces, known(rest.slice(from), ion.charge, 1)], rest: rest.slice(0, from) };
  }
  return { pieces, rest };
}
