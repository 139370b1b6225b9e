import { nullSpace } from '../exact/null-space.ts';
import { Rational } from '../exact/rational.ts';
import { conservationMatrix } from './balance-by-null-space.ts';
import { isBalanced } from './balanced.ts';
import { electronsByNumber } from './electrons-by-number.ts';
import type { Equation, HalfEquation } from './equation.ts';
import type { SpeciesKey } from './formula.ts';
import { netAmounts } from './terms.ts';
import { keyOf } from './write-formula.ts';

/** What the second method says of an equation that was made from two half-equations. */
export interface Confirmation {
  readonly agrees: boolean;
  readonly method: 'null-space' | 'electron-count';
  /** why not, when it does not agree */
  readonly because?: string;
}

/**
 * Checks an overall equation without adding half-equations: by the null space of elements and charge when that has one
 * dimension, else by conservation and by electrons lost and gained, counted by oxidation number.
 * @param oxidation stored as a reduction
 */
export function confirm(equation: Equation, reduction: HalfEquation, oxidation: HalfEquation): Confirmation {
  const net = netAmounts(equation);
  const terms = equation.left.length + equation.right.length;
  if (net.size !== terms) return { agrees: false, method: 'null-space', because: 'a species stands more than once' };
  const basis = nullSpace(conservationMatrix([...net.values()].map(({ formula }) => formula)), net.size);
  if (basis.length === 1)
    return byNullSpace(
      basis[0]!,
      [...net.values()].map(({ net: amount }) => amount),
    );
  if (!isBalanced(equation)) return { agrees: false, method: 'electron-count', because: 'elements or charge are not conserved' };
  return byElectrons(net, reduction, oxidation);
}

/** The single solution must be the equation, up to one factor. */
function byNullSpace(vector: readonly Rational[], amounts: readonly Rational[]): Confirmation {
  const at = vector.findIndex((entry) => !entry.isZero());
  const factor = amounts[at]!.over(vector[at]!);
  const agrees = !factor.isZero() && vector.every((entry, index) => entry.times(factor).equals(amounts[index]!));
  return agrees
    ? { agrees, method: 'null-space' }
    : { agrees, method: 'null-space', because: 'conservation gives other coefficients' };
}

type Net = ReturnType<typeof netAmounts>;

function byElectrons(net: Net, reduction: HalfEquation, oxidation: HalfEquation): Confirmation {
  const gained = electronsIn(net, reduction, oxidation, 1);
  const lost = electronsIn(net, oxidation, reduction, -1);
  if (!gained || !lost) {
    return {
      agrees: false,
      method: 'electron-count',
      because: 'the species of a couple do not stand in the ratio of its half-equation',
    };
  }
  if (gained.equals(lost) && gained.sign() > 0) return { agrees: true, method: 'electron-count' };
  return { agrees: false, method: 'electron-count', because: `electrons gained ${gained}, electrons lost ${lost}` };
}

/**
 * Electrons that pass in one couple of the equation: how often its half-equation runs, told by the species that stand in no
 * other, times its electrons counted by oxidation number. Undefined when those species do not agree.
 */
function electronsIn(net: Net, half: HalfEquation, other: HalfEquation, direction: 1 | -1): Rational | undefined {
  const elsewhere = new Set([...other.left, ...other.right].map((term) => keyOf(term.formula)));
  const times: Rational[] = [];
  const note = (key: SpeciesKey, coefficient: Rational, sign: 1 | -1): void => {
    const amount = net.get(key)?.net;
    if (amount && !elsewhere.has(key)) times.push(amount.over(coefficient).times(Rational.of(sign * direction)));
  };
  for (const { formula, coefficient } of half.left) note(keyOf(formula), coefficient, -1);
  for (const { formula, coefficient } of half.right) note(keyOf(formula), coefficient, 1);
  const [first] = times;
  if (!first || !times.every((each) => each.equals(first))) return undefined;
  return first.times(electronsByNumber(half));
}
