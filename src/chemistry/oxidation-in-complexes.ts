import { Rational } from '../exact/rational.ts';
import { complexParts, ligandCharge } from './complex-parts.ts';
import { atomsInNodes } from './composition.ts';
import { elementOf } from './elements.ts';
import type { Formula, FormulaNode } from './formula.ts';
import type { Ligand } from './ligands.ts';
import { chargeText, oxidationText } from './oxidation-rules.ts';
import { joinParts, type OxidationNumbers, type Site, sumOfSites, timesPart } from './oxidation-sites.ts';
import { parseFormula } from './parse-formula.ts';
import type { Piece } from './split-ions.ts';

/** The usual number of an element that stands alone outside a bracket. */
function usualNumber(symbol: string): number | undefined {
  const { group } = elementOf(symbol);
  if (group === 1 || symbol === 'Ag') return 1;
  if (group === 2 || symbol === 'Zn' || symbol === 'Cd') return 2;
  if (symbol === 'Al') return 3;
  return group === 17 ? -1 : undefined;
}

/** Simple ions beside a complex, each with its usual charge, and the sum of these; or why it is not known. */
export function counterIons(
  nodes: readonly FormulaNode[],
): { readonly charge: number; readonly numbers: OxidationNumbers } | string {
  const sites: Site[] = [];
  for (const [element, atoms] of atomsInNodes(nodes)) {
    const number = usualNumber(element);
    if (number === undefined) return `the charge of ${elementOf(element).name} outside the bracket is not known`;
    sites.push({ element, number: Rational.of(number), atoms });
  }
  const rules = sites.map(({ element, number }) => `${elementOf(element).name} outside the bracket is ${oxidationText(number)}`);
  return { charge: Number(sumOfSites(sites).n), numbers: { sites, rules } };
}

/**
 * Numbers in complexes that bear a charge together: the ligands have their own charges, the central atom the rest. Two
 * complexes of one metal are taken to be in the same state.
 * @param ofFormula the numbers of a species, used for the ligands
 */
export function ofComplexes(
  complexes: readonly (Piece & { kind: 'complex' })[],
  charge: number,
  ofFormula: (formula: Formula) => OxidationNumbers,
): OxidationNumbers | string {
  const all = complexes.map(({ nodes, count }) => ({ parts: complexParts(nodes)!, count }));
  const centre = all[0]!.parts.centre;
  if (all.some(({ parts }) => parts.centre !== centre)) return 'two complexes share the charge';
  const atoms = all.reduce((sum, { parts, count }) => sum + parts.centres * count, 0);
  const brought = all.reduce((sum, { parts, count }) => sum + ligandCharge(parts) * count, 0);
  const number = Rational.of(charge - brought, atoms);
  const ligands = all.flatMap(({ parts, count }) =>
    parts.ligands.map((entry) => ({ ligand: entry.ligand, count: entry.count * count })),
  );
  const metal = {
    sites: [{ element: centre, number, atoms }],
    rules: [...ligands.map(({ ligand }) => ligandRule(ligand)), `so ${elementOf(centre).name} is ${oxidationText(number)}`],
  };
  const inside = ligands.map(({ ligand, count }) => timesPart({ ...ofFormula(ligandFormula(ligand)), rules: [] }, count));
  return joinParts([metal, ...inside]);
}

function ligandRule({ text, charge }: Ligand): string {
  return charge === 0 ? `the ligand ${text} is neutral` : `the ligand ${text} has the charge ${chargeText(charge)}`;
}

/** The ligand as a species of its own: `CN^-`. */
export function ligandFormula(ligand: Ligand): Formula {
  return { units: parseFormula(ligand.text).units, charge: ligand.charge };
}
