import { Fault } from '../exact/fault.ts';
import type { Rational } from '../exact/rational.ts';
import { type ComplexParts, complexParts } from './complex-parts.ts';
import { elementOf } from './elements.ts';
import type { Formula, FormulaNode } from './formula.ts';
import { oxidationNumbers } from './oxidation-numbers.ts';
import { keyOf } from './write-formula.ts';

export type Shape = 'linear' | 'tetrahedral' | 'square planar' | 'trigonal bipyramidal' | 'octahedral';

/** Bond angles in degrees, the smallest first. */
export const BOND_ANGLES: Readonly<Record<Shape, readonly number[]>> = {
  linear: [180],
  tetrahedral: [109.5],
  'square planar': [90],
  'trigonal bipyramidal': [90, 120],
  octahedral: [90],
};

/** A complex: what stands in the square brackets, and what follows from it. */
export interface Complex extends ComplexParts {
  readonly oxidationNumber: Rational;
  /** charge of the complex itself, without counter-ions */
  readonly charge: number;
  /** bonds from ligands to the centre */
  readonly coordinationNumber: number;
  /** undefined for coordination numbers whose shape is not told by number and metal alone */
  readonly shape?: Shape;
}

/** The complexes of a formula, each once, in order. */
export function complexNodes(formula: Formula): (readonly FormulaNode[])[] {
  return formula.units.flatMap(({ nodes }) => {
    const bracketed = nodes.flatMap((node) =>
      node.kind === 'group' && node.bracket === '[' && complexParts(node.nodes) ? [node.nodes] : [],
    );
    // A complex may be typed without its square brackets: Cu(NH3)4^2+, Ni(CO)4; but Ca(OH)2 is none.
    const parts =
      bracketed.length === 0 && formula.units.length === 1 && nodes.some((node) => node.kind === 'group')
        ? complexParts(nodes)
        : undefined;
    const bare = parts && (formula.charge !== 0 || parts.ligands.every(({ ligand }) => ligand.charge === 0));
    return bare ? [nodes] : bracketed;
  });
}

/** Central atom of the first complex in a formula. */
export function centreOf(formula: Formula): string | undefined {
  const [nodes] = complexNodes(formula);
  return nodes && complexParts(nodes)!.centre;
}

/** @throws Fault `not-a-complex`; `undecided` when the oxidation number cannot be decided */
export function complexOf(formula: Formula): Complex {
  const [nodes] = complexNodes(formula);
  if (!nodes)
    throw new Fault('not-a-complex', `expected a complex such as \`[Cu(NH3)4(H2O)2]^2+\`, found \`${keyOf(formula)}\``, {});
  return describe(nodes, formula);
}

/** A complex from its nodes, its oxidation number taken from the whole formula. */
export function describe(nodes: readonly FormulaNode[], formula: Formula): Complex {
  const parts = complexParts(nodes)!;
  const { number } = oxidationNumbers(formula).sites.find(({ element }) => element === parts.centre)!;
  const brought = parts.ligands.reduce((sum, { ligand, count }) => sum + ligand.charge * count, 0);
  const charge = Math.round(number.toNumber() * parts.centres) + brought;
  const coordinationNumber = parts.ligands.reduce((sum, { ligand, count }) => sum + ligand.denticity * count, 0) / parts.centres;
  const shape = shapeOf(parts, coordinationNumber, number);
  const found = { ...parts, oxidationNumber: number, charge, coordinationNumber };
  return shape ? { ...found, shape } : found;
}

/**
 * Shape by coordination number; four is square planar for platinum(II), palladium(II), gold(III), copper(II) with ammonia,
 * and nickel(II) with cyanide, else tetrahedral. (Common practice, no source.)
 */
function shapeOf(parts: ComplexParts, coordination: number, number: Rational): Shape | undefined {
  if (coordination === 2) return 'linear';
  if (coordination === 6) return 'octahedral';
  if (coordination === 5) return parts.ligands.every(({ ligand }) => ligand.text === 'CO') ? 'trigonal bipyramidal' : undefined;
  if (coordination !== 4) return undefined;
  const state = `${parts.centre}${number}`;
  const only = (text: string) => parts.ligands.every(({ ligand }) => ligand.text === text);
  const planar = ['Pt2', 'Pd2', 'Au3'].includes(state) || (state === 'Ni2' && only('CN')) || (state === 'Cu2' && only('NH3'));
  return planar ? 'square planar' : 'tetrahedral';
}

/** Electrons in the d subshell of a metal in an oxidation state. @throws Fault `not-d-block` */
export function dElectrons(symbol: string, oxidationNumber: number): number {
  const { group, name } = elementOf(symbol);
  if (group === undefined || group < 3 || group > 12) throw new Fault('not-d-block', `${name} is not in the d block`, {});
  const electrons = group - oxidationNumber;
  if (electrons < 0 || electrons > 10)
    throw new Fault('not-d-block', `${name} cannot have the oxidation number ${oxidationNumber}`, {});
  return electrons;
}

/**
 * Unpaired d electrons of a complex.
 * @param spin `low` fills the lower level of an octahedral complex first; a tetrahedral one is always high
 */
export function unpairedInComplex(electrons: number, shape: Shape, spin: 'high' | 'low' = 'high'): number {
  const hund = (count: number, orbitals: number) => Math.min(count, 2 * orbitals - count);
  if (shape === 'square planar' && electrons === 8) return 0;
  if (shape !== 'octahedral' || spin === 'high') return hund(electrons, 5);
  return electrons <= 6 ? hund(electrons, 3) : hund(electrons - 6, 2);
}
