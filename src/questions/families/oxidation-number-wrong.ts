import { Rational } from '../../exact/rational.ts';
import { type Account, numberFrom, sumOf } from '../oxidation-account.ts';
import type { MisconceptionId } from '../question.ts';
import type { Kind } from './oxidation-number-species.ts';

/** What the usual wrong sums give, by misconception; absent where the species gives no cause for it. */
export function wrongNumbers(account: Account, kind?: Kind): Partial<Record<MisconceptionId, Rational>> {
  const { charge, others, atoms, complexCharge = charge } = account;
  const right = numberFrom(account);
  const isComplex = kind === 'complex' || kind === 'mixed complex';
  const peroxide = kind === 'peroxide' || kind === 'peroxo ion' ? peroxideWrong(account, kind) : undefined;
  return {
    ...(isComplex
      ? { 'ON-COMPLEX-CHARGE': Rational.of(complexCharge) }
      : charge === 0
        ? {}
        : { 'ON-ION-CHARGE': Rational.of(charge) }),
    ...(peroxide ? { 'ON-PEROXIDE-STATE': peroxide } : {}),
    ...(charge === 0 ? {} : { 'ON-SUM-ZERO': Rational.of(-sumOf(others), atoms) }),
    ...(atoms === 1 ? {} : { 'ON-NOT-PER-ATOM': right.times(Rational.of(atoms)) }),
    ...(right.isInteger() ? {} : { 'ON-ROUND-FRACTION': roundedUp(right) }),
    ...wholeOnly(others.length === 0 ? {} : countedWrong(account)),
  };
}

/** Oxygen taken as −2 throughout: in a peroxide that is the answer itself, in a peroxo ion it moves the other element. */
function peroxideWrong({ charge, others, atoms }: Account, kind: Kind): Rational {
  if (kind === 'peroxide') return Rational.of(-2);
  const swapped = others.map((other) => (other.each === -1 ? { ...other, each: -2 } : other));
  return Rational.of(charge - sumOf(swapped), atoms);
}

/** The next whole number away from zero. */
function roundedUp(value: Rational): Rational {
  const size = value.abs();
  return Rational.of((size.n / size.d + 1n) * BigInt(value.sign()));
}

/** Sums that go wrong in the counting. */
function countedWrong({ charge, others, atoms }: Account): Partial<Record<MisconceptionId, Rational>> {
  const once = others.reduce((sum, { each }) => sum + each, 0);
  return {
    'ON-COUNT-IGNORED': Rational.of(charge - once, atoms),
    ...(charge === 0 ? {} : { 'ON-CHARGE-SIGN': Rational.of(-charge - sumOf(others), atoms) }),
  };
}

/** A fraction tells a pupil that the sum went wrong, so it is not what a marker sees. */
function wholeOnly(wrong: Partial<Record<MisconceptionId, Rational>>): Partial<Record<MisconceptionId, Rational>> {
  return Object.fromEntries(Object.entries(wrong).filter(([, value]) => value?.isInteger()));
}
