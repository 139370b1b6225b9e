import type { Change } from '../chemistry/changes.ts';
import { changesIn } from '../chemistry/changes.ts';
import { electronsIn, halfBetween } from '../chemistry/half-equations.ts';
import { added, cancelled, count, ELECTRON, inLowestTerms, type Sides, side, speciesOf, without } from '../chemistry/sides.ts';
import { Unreadable } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';

export type Medium = 'acid' | 'alkali';
export type MakeUp = 'right' | 'oxygen gas' | 'hydrogen ions';

/** A half-equation that is asked for, as it runs, built by the auditor from its two species. */
export interface Half {
  readonly subject: string;
  readonly product: string;
  readonly medium: Medium;
  readonly isReduction: boolean;
  readonly sides: Sides;
  /** without its electrons */
  readonly skeleton: Sides;
  /** how many of the subject stand in it */
  readonly units: Fraction;
  /** electrons for one of the subject */
  readonly perUnit: Fraction;
  readonly change: Change;
}

/** @throws Unreadable when no half-equation joins the two */
export function halfOf(subject: string, product: string, medium: Medium): Half {
  const sides = halfBetween(subject, product, medium);
  const [change] = changesIn(sides ?? { left: side({ [subject]: 1 }), right: side({ [product]: 1 }) });
  if (!sides || !change) throw new Unreadable(`the half-equation from ${subject} to ${product}`);
  const electrons = electronsIn(sides);
  const units = count(sides.left, subject);
  return {
    subject,
    product,
    medium,
    isReduction: electrons.side() > 0,
    sides,
    skeleton: without(sides, ELECTRON),
    units,
    perUnit: electrons.size().divide(units),
    change,
  };
}

/** Atoms of the element that change in one of the subject. */
export const atomsIn = ({ perUnit, change }: Half): Fraction => perUnit.divide(change.before.subtract(change.after).size());

/**
 * What is written by one who makes up oxygen and hydrogen in a way and counts so many electrons for each of the subject.
 * @param placing electrons left out, or on the other side
 */
export function writtenHalf(
  half: Half,
  makeUp: MakeUp,
  perUnit: Fraction,
  placing: 'right' | 'wrong side' | 'none' = 'right',
): Sides {
  const skeleton = skeletonOf(half, makeUp);
  const electrons = perUnit.multiply(count(skeleton.left, half.subject));
  if (placing === 'none' || electrons.side() === 0) return skeleton;
  const term = side({ [ELECTRON]: electrons });
  const onLeft = half.isReduction === (placing !== 'wrong side');
  return added(skeleton, onLeft ? { left: term, right: new Map() } : { left: new Map(), right: term });
}

function skeletonOf(half: Half, makeUp: MakeUp): Sides {
  if (makeUp === 'oxygen gas') return withOxygenGas(half);
  if (makeUp === 'right') return half.skeleton;
  const inAcid = halfBetween(half.subject, half.product, 'acid');
  return inAcid ? without(inAcid, ELECTRON) : half.skeleton;
}

/** Oxygen made up with the gas, hydrogen with hydrogen ions, in whole numbers. */
function withOxygenGas({ subject, product, skeleton }: Half): Sides {
  const kept: Sides = {
    left: side({ [subject]: count(skeleton.left, subject) }),
    right: side({ [product]: count(skeleton.right, product) }),
  };
  const missing = (element: string) => {
    const atoms = (key: string, amount: Fraction) => amount.multiply(Fraction.of(speciesOf(key).atoms.get(element) ?? 0));
    return atoms(subject, count(kept.left, subject)).subtract(atoms(product, count(kept.right, product)));
  };
  const put = (key: string, surplus: Fraction): Sides =>
    surplus.side() > 0
      ? { left: new Map(), right: side({ [key]: surplus }) }
      : { left: side({ [key]: surplus.negative() }), right: new Map() };
  const oxygen = put('O2', missing('O').divide(Fraction.of(2)));
  const hydrogen = put('H^+', missing('H'));
  const nonZero = ({ left, right }: Sides) => cancelled({ left, right });
  return inLowestTerms(nonZero(added(added(kept, oxygen), hydrogen)));
}

/** Two electrons for each oxygen that leaves as water or comes from it. */
export function oxideElectrons({ skeleton, units }: Half): Fraction {
  const water = count(skeleton.left, 'H2O').add(count(skeleton.right, 'H2O'));
  return water.multiply(Fraction.of(2)).divide(units);
}
