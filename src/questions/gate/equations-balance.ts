import { composition } from '../../chemistry/composition.ts';
import type { Equation, Term } from '../../chemistry/equation.ts';
import { keyOf, writeFormula } from '../../chemistry/write-formula.ts';
import { nullSpace } from '../../exact/null-space.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Value } from '../value.ts';
import { inlinesIn } from './inlines-of.ts';
import type { GateRule } from './rule.ts';

/** Every equation that is printed conserves atoms and charge, and a second method confirms its coefficients. */
export const equationsBalance: GateRule = {
  id: 'equations-balance',
  holds: 'every equation conserves atoms and charge and is confirmed by a second method',
  check: ({ item, tables, values }) => {
    const printed = [...inlinesIn(item.stem), ...item.parts.flatMap(({ prompt, hints }) => [...prompt, ...hints.flat()])];
    const shown = printed.flatMap((inline): Checked[] => (inline.kind === 'equation' ? [{ equation: inline.equation }] : []));
    const worked = [...values.values()].flatMap(equationsIn);
    return [...shown, ...worked].flatMap(({ equation, couples }) => problemsOf(equation, couples, tables));
  },
};

interface Checked {
  readonly equation: Equation;
  readonly couples?: readonly [string, string];
}

function equationsIn(value: Value): Checked[] {
  if (value.kind === 'list') return value.values.flatMap(equationsIn);
  return value.kind === 'equation' ? [value] : [];
}

function problemsOf(equation: Equation, couples: readonly [string, string] | undefined, tables: Tables): string[] {
  const terms = signedTerms(equation);
  const named = terms.map(({ formula }) => writeFormula(formula)).join(' , ');
  const unbalanced = componentsOf(terms).filter((component) => !sumOf(terms, component).isZero());
  if (unbalanced.length > 0) return [`${unbalanced.join(' and ')} not conserved over ${named}`];
  if (terms.some(({ coefficient }) => !coefficient.isInteger())) return [`a coefficient is not whole over ${named}`];
  const keys = terms.map(({ formula }) => keyOf(formula));
  if (new Set(keys).size !== keys.length) return [`a species stands twice, or on both sides, over ${named}`];
  const dimension = nullSpace(matrixOf(terms), terms.length).length;
  if (dimension === 1) return [];
  if (!couples) return [`conservation alone does not fix the equation of ${named}, and no couples are named`];
  return electronsAgree(equation, couples, tables) ? [] : [`electrons lost and gained differ over ${named}`];
}

/** Terms of both sides, those on the left counted negative. */
function signedTerms(equation: Equation): Term[] {
  return [
    ...equation.left.map(({ coefficient, formula }) => ({ coefficient: coefficient.negate(), formula })),
    ...equation.right,
  ];
}

function componentsOf(terms: readonly Term[]): string[] {
  return [...new Set(terms.flatMap(({ formula }) => [...composition(formula).keys()]))];
}

function sumOf(terms: readonly Term[], component: string): Rational {
  return terms.reduce(
    (sum, { coefficient, formula }) => sum.plus(coefficient.times(Rational.of(composition(formula).get(component) ?? 0))),
    Rational.zero,
  );
}

function matrixOf(terms: readonly Term[]): Rational[][] {
  return componentsOf(terms).map((component) =>
    terms.map(({ formula }) => Rational.of(composition(formula).get(component) ?? 0)),
  );
}

/** Where conservation leaves freedom, the couples' electrons decide: as many are taken up by one as are given by the other. */
function electronsAgree(equation: Equation, [reduced, oxidised]: readonly [string, string], tables: Tables): boolean {
  const [gaining, losing] = [tables.couple(reduced), tables.couple(oxidised)];
  const taken = turns(equation.left, gaining.oxidisedKey, gaining.half.left).times(gaining.half.electrons);
  const given = turns(equation.left, losing.reducedKey, losing.half.right).times(losing.half.electrons);
  return taken.sign() > 0 && taken.equals(given);
}

/** How many times a half-equation runs, told from one of its species. */
function turns(side: readonly Term[], key: string, half: readonly Term[]): Rational {
  const coefficientIn = (terms: readonly Term[]) =>
    terms.find(({ formula }) => keyOf(formula) === key)?.coefficient ?? Rational.zero;
  const unit = coefficientIn(half);
  return unit.isZero() ? Rational.zero : coefficientIn(side).over(unit);
}
