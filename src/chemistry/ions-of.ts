import type { Rational } from '../exact/rational.ts';
import { type Complex, describe } from './complex.ts';
import { complexParts } from './complex-parts.ts';
import { atomsInNodes } from './composition.ts';
import type { Formula, FormulaNode } from './formula.ts';
import { type KnownIon, knownIon } from './ions.ts';
import { oxidationNumbers } from './oxidation-numbers.ts';
import { splitIons } from './split-ions.ts';
import { writeNodes } from './write-formula.ts';

/** An ion of a salt. */
export type SaltIon =
  | { readonly kind: 'known'; readonly ion: KnownIon; readonly count: number }
  | { readonly kind: 'complex'; readonly complex: Complex; readonly count: number }
  | { readonly kind: 'single'; readonly symbol: string; readonly number: Rational; readonly atoms: number };

/**
 * The ions of one neutral unit of a formula, in order; undefined when something in it is no ion that is known.
 * @throws Fault `undecided` when charges cannot be decided
 */
export function ionsOf(nodes: readonly FormulaNode[]): SaltIon[] | undefined {
  const formula: Formula = { units: [{ count: 1, nodes }], charge: 0 };
  const ions: SaltIon[] = [];
  for (const piece of splitIons(nodes, true)) {
    if (piece.kind === 'complex') {
      if (!complexParts(piece.nodes)) return undefined;
      ions.push({ kind: 'complex', complex: describe(piece.nodes, formula), count: piece.count });
    } else if (piece.kind === 'known') {
      const ion = knownIon(writeNodes(piece.formula.units[0]!.nodes));
      if (!ion) return undefined;
      ions.push({ kind: 'known', ion, count: piece.count });
    } else {
      ions.push(...restIons(piece.nodes, formula));
    }
  }
  return ions;
}

/** What is left: an oxido cation that is known (VO in VOSO4), else single atoms with their oxidation numbers. */
function restIons(nodes: readonly FormulaNode[], formula: Formula): SaltIon[] {
  const whole = knownIon(writeNodes(nodes));
  if (whole && whole.charge > 0) return [{ kind: 'known', ion: whole, count: 1 }];
  const { sites } = oxidationNumbers(formula);
  return [...atomsInNodes(nodes)].map(([symbol, atoms]) => {
    const mine = sites.filter((site) => site.element === symbol);
    const site = mine.find((each) => each.atoms === atoms) ?? mine[0]!;
    return { kind: 'single' as const, symbol, number: site.number, atoms };
  });
}
