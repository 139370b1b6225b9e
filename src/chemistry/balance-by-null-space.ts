import { nullSpace } from '../exact/null-space.ts';
import { Rational } from '../exact/rational.ts';
import { atomsOf, composition, elementsIn } from './composition.ts';
import type { Equation, Term } from './equation.ts';
import type { Formula } from './formula.ts';
import { sidedSolutions } from './sided-solutions.ts';
import { lowestTerms } from './terms.ts';
import { keyOf } from './write-formula.ts';

/** What conservation alone says of an equation. */
export type Balance =
  | { readonly kind: 'unique'; readonly equation: Equation }
  /** `solutions`: independent equations, each with every given reactant and product on its side */
  | { readonly kind: 'many'; readonly dimension: number; readonly solutions: readonly Equation[] }
  | { readonly kind: 'none'; readonly because: string };

/** A species and where it may stand: 1 on the right only, −1 on the left only, 0 on either side or nowhere. */
export interface Sided {
  readonly formula: Formula;
  readonly side: 1 | -1 | 0;
}

/**
 * Balances by the null space of the matrix of elements and charge, exactly.
 * @param extras species that may stand on either side or drop out: water, H⁺, e⁻
 */
export function balanceByNullSpace(
  reactants: readonly Formula[],
  products: readonly Formula[],
  extras: readonly Formula[] = [],
): Balance {
  const given = new Set([...reactants, ...products].map(keyOf));
  const free = unique(extras).filter((formula) => !given.has(keyOf(formula)));
  const species: Sided[] = [
    ...unique(reactants).map((formula) => ({ formula, side: -1 as const })),
    ...unique(products).map((formula) => ({ formula, side: 1 as const })),
    ...free.map((formula) => ({ formula, side: 0 as const })),
  ];
  const twice = unique(reactants).find((formula) => products.some((other) => keyOf(other) === keyOf(formula)));
  if (twice) return { kind: 'none', because: `\`${keyOf(twice)}\` stands on both sides` };
  const lonely = lonelyElement(species);
  if (lonely) return { kind: 'none', because: lonely };
  const matrix = conservationMatrix(species.map(({ formula }) => formula));
  const basis = nullSpace(matrix, species.length);
  if (basis.length === 0) return { kind: 'none', because: 'no coefficients conserve every element and the charge' };
  return basis.length === 1 ? fromOne(species, basis[0]!) : fromMany(species, matrix, basis.length);
}

/** One row for each element and for charge, one column for each species. */
export function conservationMatrix(species: readonly Formula[]): Rational[][] {
  const components = new Set(species.flatMap((formula) => [...composition(formula).keys()]));
  return [...components].map((component) => species.map((formula) => Rational.of(composition(formula).get(component) ?? 0)));
}

function unique(formulas: readonly Formula[]): Formula[] {
  return [...new Map(formulas.map((formula) => [keyOf(formula), formula])).values()];
}

/** The single solution, turned so that reactants stand on the left; says which species refuses. */
function fromOne(species: readonly Sided[], vector: readonly Rational[]): Balance {
  const first = species.findIndex(({ side }, index) => side !== 0 && !vector[index]!.isZero());
  const turn = first >= 0 && vector[first]!.sign() !== species[first]!.side ? Rational.of(-1) : Rational.one;
  const turned = vector.map((entry) => entry.times(turn));
  const idle = species.find(({ side }, index) => side !== 0 && turned[index]!.isZero());
  if (idle) return { kind: 'none', because: `\`${keyOf(idle.formula)}\` can take no part` };
  const wrong = species.find(({ side }, index) => side !== 0 && turned[index]!.sign() !== side);
  if (wrong) return { kind: 'none', because: `\`${keyOf(wrong.formula)}\` would have to stand on the other side` };
  return { kind: 'unique', equation: lowestTerms(toEquation(species, turned)) };
}

function fromMany(species: readonly Sided[], matrix: Rational[][], dimension: number): Balance {
  const solutions = sidedSolutions(species, matrix);
  if ('idle' in solutions) return { kind: 'none', because: `\`${keyOf(solutions.idle)}\` can take no part` };
  const equations = solutions.vectors.map((vector) => lowestTerms(toEquation(species, vector)));
  if (equations.length === 1) return { kind: 'unique', equation: equations[0]! };
  return { kind: 'many', dimension, solutions: equations };
}

/** Positive entries go right, negative left; zeros drop out. */
function toEquation(species: readonly Sided[], vector: readonly Rational[]): Equation {
  const terms = (sign: 1 | -1): Term[] =>
    species.flatMap(({ formula }, index) =>
      vector[index]!.sign() === sign ? [{ formula, coefficient: vector[index]!.abs() }] : [],
    );
  return { left: terms(-1), right: terms(1) };
}

/** An element that stands on one side only, in words. */
function lonelyElement(species: readonly Sided[]): string | undefined {
  for (const { formula, side } of species) {
    if (side === 0) continue;
    const lonely = elementsIn(formula).find(
      (symbol) => !species.some((other) => other.side !== side && atomsOf(other.formula, symbol) > 0),
    );
    if (lonely) return `nothing on the ${side < 0 ? 'right' : 'left'} holds the ${lonely} of \`${keyOf(formula)}\``;
  }
  return undefined;
}
