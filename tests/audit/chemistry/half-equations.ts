import { Fraction } from '../exact/fraction.ts';
import { balanced } from './conservation.ts';
import { added, cancelled, count, ELECTRON, inLowestTerms, type Sides, speciesOf, times, turnedRound, without } from './sides.ts';

/** Electrons taken up as it is written: below zero for an oxidation. */
export const electronsIn = ({ left, right }: Sides): Fraction => count(left, ELECTRON).subtract(count(right, ELECTRON));

/**
 * The half-equation that takes one species to another: water and H⁺ (in alkali water and OH⁻) for atoms, electrons for charge. Every side on
 * which they can stand is tried; electrons must pass, or the element would only be shared out anew.
 * @returns as a reduction when electrons are taken up, as an oxidation when they are given; undefined when the two cannot be joined
 */
export function halfBetween(from: string, to: string, medium: 'acid' | 'alkali' = 'acid'): Sides | undefined {
  const helpers = [medium === 'acid' ? 'H^+' : 'OH^-', 'H2O'].filter((key) => key !== from && key !== to);
  for (let choice = 0; choice < 3 ** helpers.length; choice += 1) {
    const at = (place: number) => helpers.filter((_, index) => Math.floor(choice / 3 ** index) % 3 === place);
    for (const electronsLeft of [true, false]) {
      const left = [from, ...at(1), ...(electronsLeft ? [ELECTRON] : [])];
      const found = balanced(left, [to, ...at(2), ...(electronsLeft ? [] : [ELECTRON])]);
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
