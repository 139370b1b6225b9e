import { type Account, accountOf, chargeInBrackets, oxidationNumber, sumOf } from '../chemistry/oxidation-number.ts';
import { speciesOf } from '../chemistry/sides.ts';
import type { Slip } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';

/** Ways of getting the oxidation number of an element in a species wrong. */
export function accountSlips(at: string, key: string, element: string): Slip[] {
  return wrongSums(key, element).map(({ id, value, figures }) => ({
    id,
    at,
    tells: [`species ${key}`, ...figures],
    work: () => ({ kind: 'number', value, unit: '' }),
  }));
}

/** A figure that a misconception gives, and the figures that its words hold. */
interface WrongSum {
  readonly id: string;
  readonly value: Fraction;
  readonly figures: readonly string[];
}

/** The wrong sums by themselves. */
export function wrongSums(key: string, element: string): WrongSum[] {
  const account = accountOf(key, element);
  if (!account) return [];
  const { charge, others, atoms } = account;
  const sum = sumOf(account);
  const right = Fraction.of(charge - sum, atoms);
  const slip = (id: string, value: Fraction, ...figures: string[]): WrongSum => ({ id, value, figures });
  const once = others.reduce((total, { each }) => total + each, 0);
  return [
    slip('ON-COMPLEX-CHARGE', Fraction.of(chargeInBrackets(key))),
    slip('ON-ION-CHARGE', Fraction.of(charge)),
    slip('ON-PEROXIDE-STATE', withPlainOxygen(account, element), 'number \u22122'),
    slip('ON-SUM-ZERO', Fraction.of(-sum, atoms)),
    slip('ON-NOT-PER-ATOM', right.multiply(Fraction.of(atoms))),
    slip('ON-ROUND-FRACTION', awayFromZero(right)),
    slip('ON-COUNT-IGNORED', Fraction.of(charge - once, atoms)),
    slip('ON-CHARGE-SIGN', Fraction.of(-charge - sum, atoms)),
  ];
}

/** Every oxygen taken as −2: the answer itself where oxygen is asked for, else what it leaves to the other element. */
function withPlainOxygen({ charge, others, atoms }: Account, element: string): Fraction {
  if (element === 'O') return Fraction.of(-2);
  const sum = others.reduce((total, { count, each }) => total + count * (each === -1 ? -2 : each), 0);
  return Fraction.of(charge - sum, atoms);
}

function awayFromZero(value: Fraction): Fraction {
  const size = value.size();
  const up = value.isWhole() ? size.above : size.above / size.below + 1n;
  return Fraction.of(value.side() < 0 ? -up : up);
}

/** Figures that may stand in such a sum: charge, what others bring and how often, numbers of atoms. */
export function accountFigures(key: string, element: string): string[] {
  const { atoms, charge } = speciesOf(key);
  const others = accountOf(key, element)?.others ?? [];
  // Of oxygen the number may be argued from that of the other element.
  const numbers = [...atoms.keys()].flatMap((other) =>
    oxidationNumber(key, other)?.isWhole() ? [Number(oxidationNumber(key, other)?.above)] : [],
  );
  const all = [charge, ...atoms.values(), ...others.flatMap(({ count, each }) => [count, each]), ...numbers, 0, 1, 2];
  return all.map((each) => String(Math.abs(each)));
}
