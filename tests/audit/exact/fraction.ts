/** An exact fraction in lowest terms, the denominator positive. The auditor's own: it shares no arithmetic with what it audits. */
export class Fraction {
  private constructor(
    readonly above: bigint,
    readonly below: bigint,
  ) {}

  static of(above: bigint | number, below: bigint | number = 1n): Fraction {
    let [top, bottom] = [BigInt(above), BigInt(below)];
    if (bottom === 0n) throw new RangeError('a fraction over nothing');
    if (bottom < 0n) [top, bottom] = [-top, -bottom];
    let [a, b] = [top < 0n ? -top : top, bottom];
    while (b !== 0n) [a, b] = [b, a % b];
    return a === 1n || a === 0n ? new Fraction(top, top === 0n ? 1n : bottom) : new Fraction(top / a, bottom / a);
  }

  static readonly zero = Fraction.of(0);
  static readonly one = Fraction.of(1);

  add(other: Fraction): Fraction {
    return Fraction.of(this.above * other.below + other.above * this.below, this.below * other.below);
  }
  subtract(other: Fraction): Fraction {
    return Fraction.of(this.above * other.below - other.above * this.below, this.below * other.below);
  }
  multiply(other: Fraction): Fraction {
    return Fraction.of(this.above * other.above, this.below * other.below);
  }
  divide(other: Fraction): Fraction {
    return Fraction.of(this.above * other.below, this.below * other.above);
  }
  negative(): Fraction {
    return new Fraction(-this.above, this.below);
  }
  size(): Fraction {
    return this.above < 0n ? this.negative() : this;
  }
  /** below zero, zero or above zero as −1, 0 or 1 */
  side(): -1 | 0 | 1 {
    return this.above === 0n ? 0 : this.above < 0n ? -1 : 1;
  }
  compare(other: Fraction): -1 | 0 | 1 {
    return this.subtract(other).side();
  }
  equals(other: Fraction): boolean {
    return this.above === other.above && this.below === other.below;
  }
  isWhole(): boolean {
    return this.below === 1n;
  }
  toString(): string {
    return this.below === 1n ? String(this.above) : `${this.above}/${this.below}`;
  }
}
