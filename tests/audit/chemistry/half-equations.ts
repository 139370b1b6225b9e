import { Fraction } from '../exact/fraction.ts';
import { balanced } from './conservation.ts';
import {
  added,
  cancelled,
  count,
  ELECTRON,
  inLowestTerms,
  type Sides,
  side,
  speciesOf,
  times,
  turnedRound,
  without,
} from './sides.ts';

/** Electrons taken up as it is written: below zero for an oxidation. */
export const electronsIn = ({ left, right }: Sides): Fraction => count(left, ELECTRON).subtract(count(right, ELECTRON));

/**
 * The half-equation that takes one species to another: oxygen by water, hydrogen by H⁺ (or, in alkali, OH⁻ and water), charge by electrons.
 * @param others what else takes part beside water and its ions: the ligands or the other element of either species
 * @returns as a reduction when electrons are taken up, as an oxidation when they are given; undefined when the two cannot be joined
 */
export function halfBetween(
  from: string,
  to: string,
  medium: 'acid' | 'alkali' = 'acid',
  others: readonly string[] = [],
): Sides | undefined {
  const acid = joined(from, to, others);
  if (!acid) return undefined;
  if (medium === 'acid') return inLowestTerms(acid);
  const protons = count(acid.left, 'H^+').add(count(acid.right, 'H^+'));
  const neutral = added(acid, {
    left: side({ 'OH^-': protons }),
    right: side({ 'OH^-': protons }),
  });
  return inLowestTerms(cancelled(neutralised(neutral)));
}

/** H⁺ and OH⁻ on one side are water. */
function neutralised({ left, right }: Sides): Sides {
  const met = (own: Sides['left']) => {
    const both = [count(own, 'H^+'), count(own, 'OH^-')].sort((a, b) => a.compare(b))[0]!;
    const rest = new Map(own);
    rest.set('H^+', count(own, 'H^+').subtract(both));
    rest.set('OH^-', count(own, 'OH^-').subtract(both));
    rest.set('H2O', count(own, 'H2O').add(both));
    return new Map([...rest].filter(([, amount]) => amount.side() > 0));
  };
  return { left: met(left), right: met(right) };
}

/** Tries every side on which electrons, water, H⁺ and the others can stand; one of them balances in one way. */
function joined(from: string, to: string, others: readonly string[]): Sides | undefined {
  const helpers = ['H2O', 'H^+', ...others].filter((key) => key !== from && key !== to);
  for (let choice = 0; choice < 3 ** helpers.length; choice += 1) {
    const left = [from];
    const right = [to];
    helpers.forEach((key, at) => {
      const place = Math.floor(choice / 3 ** at) % 3;
      if (place === 1) left.push(key);
      if (place === 2) right.push(key);
    });
    // Electrons must pass: without them the element would only be shared out anew.
    for (const sides of [
      { left: [...left, ELECTRON], right },
      { left, right: [...right, ELECTRON] },
    ]) {
      const found = balanced(sides.left, sides.right);
      if (typeof found !== 'number') return found;
    }
  }
  return undefined;
}

/** Both half-equations written as reductions: the second turned round, electrons made equal, added, cancelled, in lowest terms. */
export function combined(reduced: Sides, oxidised: Sides): Sides {
  const { forReduced, forOxidised } = factors(reduced, oxidised);
  return inLowestTerms(cancelled(added(times(reduced, forReduced), turnedRound(times(oxidised, forOxidised)))));
}

/** The least whole factors that make the electrons equal. */
export function factors(reduced: Sides, oxidised: Sides): { readonly forReduced: Fraction; readonly forOxidised: Fraction } {
  const share = electronsIn(reduced).divide(electronsIn(oxidised));
  return { forReduced: Fraction.of(share.below), forOxidised: Fraction.of(share.above) };
}

/** What is written by one who leaves the electrons out: both half-equations taken some times and added. */
export function sumWithoutElectrons(reduced: Sides, oxidised: Sides, forReduced: Fraction, forOxidised: Fraction): Sides {
  return added(times(without(reduced, ELECTRON), forReduced), turnedRound(times(without(oxidised, ELECTRON), forOxidised)));
}

/** The element that changes its oxidation number most plainly: in both species, neither oxygen nor hydrogen if that can be had. */
export function sharedElement(one: string, other: string): string | undefined {
  const shared = [...speciesOf(one).atoms.keys()].filter((element) => speciesOf(other).atoms.has(element));
  return shared.find((element) => element !== 'O' && element !== 'H') ?? shared[0];
}
