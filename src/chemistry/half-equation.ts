import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import { balanceByNullSpace } from './balance-by-null-space.ts';
import { misfit } from './balanced.ts';
import { asHalf } from './check-half.ts';
import { solventSpecies } from './common-species.ts';
import { atomsOf, CHARGE, elementsIn } from './composition.ts';
import type { Medium } from './couple.ts';
import type { Equation, HalfEquation, Term } from './equation.ts';
import type { Formula } from './formula.ts';
import { electron } from './formula-parts.ts';
import { cancelEquation, lowestTerms } from './terms.ts';
import { keyOf } from './write-formula.ts';

/**
 * The reduction half-equation of a couple, built from its two species: oxygen by H₂O, hydrogen by H⁺, charge by e⁻, and in alkali
 * OH⁻ instead of H⁺.
 * @param extras species whose atoms come or go with the couple: Cl⁻ for AgCl/Ag, SO₄²⁻ for PbO₂/PbSO₄, I⁻ for Cu²⁺/CuI
 * @returns whole coefficients in lowest terms, electrons on the left
 * @throws Fault `cannot-balance`, `not-unique`, or `not-a-reduction` when the electrons come out on the right or cancel
 */
export function halfEquation(oxidised: Formula, reduced: Formula, medium: Medium, extras: readonly Formula[] = []): HalfEquation {
  const alkaline = medium === 'alkali' || medium === 'strong-alkali';
  const states = oxidised.state !== undefined && reduced.state !== undefined;
  const equation =
    extras.length > 0 ? withExtras(oxidised, reduced, alkaline, states, extras) : fromTwo(oxidised, reduced, alkaline, states);
  return asHalf(lowestTerms(electronsLast(equation)));
}

/** The pupil's way: the element that is neither O nor H first, then O, H and charge in turn. */
function fromTwo(oxidised: Formula, reduced: Formula, alkaline: boolean, states: boolean): Equation {
  const [left, right] = ratio(oxidised, reduced);
  let equation: Equation = {
    left: [{ coefficient: left, formula: oxidised }],
    right: [{ coefficient: right, formula: reduced }],
  };
  const { water, hydrogenIon, hydroxide } = solventSpecies(states);
  equation = makeUp(equation, 'O', water);
  const hydrogen = misfit(equation).get('H') ?? Rational.zero; // right minus left
  // In alkali each missing H is an H₂O there and an OH⁻ on the other side.
  equation = alkaline ? put(put(equation, water, hydrogen.negate()), hydroxide, hydrogen) : makeUp(equation, 'H', hydrogenIon);
  return cancelEquation(makeUp(equation, CHARGE, electron));
}

/** How many of each species conserve the elements they share: not O or H unless nothing else is shared. */
function ratio(oxidised: Formula, reduced: Formula): [Rational, Rational] {
  const shared = elementsIn(oxidised).filter((symbol) => atomsOf(reduced, symbol) > 0);
  const others = shared.filter((symbol) => symbol !== 'O' && symbol !== 'H');
  const key = others[0] ?? (shared.includes('O') ? 'O' : shared[0]);
  if (key === undefined) throw cannot(oxidised, reduced, 'they have no element in common');
  const left = Rational.of(atomsOf(reduced, key));
  const right = Rational.of(atomsOf(oxidised, key));
  const strays = [...elementsIn(oxidised), ...elementsIn(reduced)].filter(
    (symbol) =>
      symbol !== 'O' &&
      symbol !== 'H' &&
      !left.times(Rational.of(atomsOf(oxidised, symbol))).equals(right.times(Rational.of(atomsOf(reduced, symbol)))),
  );
  if (strays.length > 0)
    throw cannot(oxidised, reduced, `${strays[0]} is not conserved; name the species that takes or brings it`);
  return [left, right];
}

function cannot(oxidised: Formula, reduced: Formula, because: string): Fault {
  return new Fault('cannot-balance', `\`${keyOf(oxidised)}\` and \`${keyOf(reduced)}\` make no half-equation: ${because}`, {});
}

/** Puts as many of a species as are missing of one component on the side where they are missing. */
function makeUp(equation: Equation, component: string, formula: Formula): Equation {
  const missing = misfit(equation).get(component);
  if (!missing) return equation;
  // One H₂O brings one O, one H⁺ one H; an electron brings −1 charge.
  return put(equation, formula, component === CHARGE ? missing : missing.negate());
}

/** Adds an amount to the right when positive, to the left when negative. */
function put(equation: Equation, formula: Formula, amount: Rational): Equation {
  const term: Term = { coefficient: amount.abs(), formula };
  if (amount.isZero()) return equation;
  return amount.sign() > 0 ? { ...equation, right: [...equation.right, term] } : { ...equation, left: [...equation.left, term] };
}

function withExtras(
  oxidised: Formula,
  reduced: Formula,
  alkaline: boolean,
  states: boolean,
  extras: readonly Formula[],
): Equation {
  const { water, hydrogenIon, hydroxide } = solventSpecies(states);
  const found = balanceByNullSpace([oxidised], [reduced], [...extras, alkaline ? hydroxide : hydrogenIon, water, electron]);
  if (found.kind === 'unique') return found.equation;
  if (found.kind === 'none') throw cannot(oxidised, reduced, found.because);
  throw new Fault(
    'not-unique',
    `with these species \`${keyOf(oxidised)}/${keyOf(reduced)}\` can be balanced in more than one way`,
    {},
  );
}

/** Electrons stand last on their side. */
function electronsLast(equation: Equation): Equation {
  const last = (terms: readonly Term[]) => [
    ...terms.filter((term) => term.formula !== electron),
    ...terms.filter((term) => term.formula === electron),
  ];
  return { left: last(equation.left), right: last(equation.right) };
}
