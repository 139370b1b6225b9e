import { Fault } from './fault.ts';
import { gcd } from './gcd.ts';

/** An exact rational number in lowest terms; the denominator is positive. Immutable. */
export class Rational {
  readonly n: bigint;
  readonly d: bigint;

  private constructor(n: bigint, d: bigint) {
    this.n = n;
    this.d = d;
  }

  static readonly zero = new Rational(0n, 1n);
  static readonly one = new Rational(1n, 1n);

  /**
   * @param numerator an integer, as a bigint or a safe integer number
   * @param denominator an integer other than zero
   * @throws Fault `zero-denominator`
   */
  static of(numerator: bigint | number, denominator: bigint | number = 1n): Rational {
    const n = BigInt(numerator);
    const d = BigInt(denominator);
    if (d === 0n) throw new Fault('zero-denominator', 'a fraction needs a denominator other than zero');
    const divisor = gcd(n, d) * (d < 0n ? -1n : 1n);
    return new Rational(n / divisor, d / divisor);
  }

  /**
   * Reads `3`, `-0.76`, `5/2` or `6.02e23`, exactly; a true minus (U+2212) is accepted.
   * @throws Fault `not-a-number`
   */
  static parse(text: string): Rational {
    const plain = text.trim().replace('\u2212', '-');
    const fraction = /^([+-]?\d+)\/(\d+)$/.exec(plain);
    if (fraction) return Rational.of(BigInt(fraction[1]!), BigInt(fraction[2]!));
    const decimal = /^([+-]?)(\d*)(?:\.(\d*))?(?:[eE]([+-]?\d{1,3}))?$/.exec(plain);
    if (!decimal || !(decimal[2] || decimal[3])) {
      throw new Fault('not-a-number', `expected a number such as 0.76, found \`${text}\``, { text, at: 0, length: text.length });
    }
    const places = decimal[3] ?? '';
    const digits = BigInt((decimal[2] ?? '') + places) * (decimal[1] === '-' ? -1n : 1n);
    const shift = Number(decimal[4] ?? 0) - places.length;
    return shift >= 0 ? Rational.of(digits * 10n ** BigInt(shift)) : Rational.of(digits, 10n ** BigInt(-shift));
  }

  plus(addend: Rational): Rational {
    // whole numbers, which most coefficients are, need no common divisor
    if (this.d === 1n && addend.d === 1n) return new Rational(this.n + addend.n, 1n);
    return Rational.of(this.n * addend.d + addend.n * this.d, this.d * addend.d);
  }
  minus(subtrahend: Rational): Rational {
    return this.plus(subtrahend.negate());
  }
  times(factor: Rational): Rational {
    if (this.d === 1n && factor.d === 1n) return new Rational(this.n * factor.n, 1n);
    return Rational.of(this.n * factor.n, this.d * factor.d);
  }
  /** @throws Fault `zero-denominator` when the divisor is zero */
  over(divisor: Rational): Rational {
    return Rational.of(this.n * divisor.d, this.d * divisor.n);
  }
  negate(): Rational {
    return new Rational(-this.n, this.d);
  }
  abs(): Rational {
    return this.n < 0n ? this.negate() : this;
  }
  /** @returns −1, 0 or 1 */
  sign(): -1 | 0 | 1 {
    return this.n < 0n ? -1 : this.n > 0n ? 1 : 0;
  }
  /** @returns negative, zero or positive, as a sort expects */
  compare(other: Rational): number {
    const difference = this.n * other.d - other.n * this.d;
    return difference < 0n ? -1 : difference > 0n ? 1 : 0;
  }
  equals(other: Rational): boolean {
    return this.n === other.n && this.d === other.d;
  }
  isZero(): boolean {
    return this.n === 0n;
  }
  isInteger(): boolean {
    return this.d === 1n;
  }
  /** The nearest double: for page coordinates, exp and log only. */
  toNumber(): number {
    return Number(this.n) / Number(this.d);
  }
  /** `3`, `-5/2`: parses back to the same value. */
  toString(): string {
    return this.d === 1n ? `${this.n}` : `${this.n}/${this.d}`;
  }
  toJSON(): string {
    return this.toString();
  }
}
