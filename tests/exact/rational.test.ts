import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { Rational } from '../../src/exact/rational.ts';

const whole = fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n });
const rational = fc
  .tuple(
    whole,
    whole.filter((d) => d !== 0n),
  )
  .map(([n, d]) => Rational.of(n, d));
/** The same number in fraction.js (MIT), a general-purpose reference library. */
const reference = (value: Rational) => new Fraction(value.n, value.d);
const same = (value: Rational, other: Fraction) => expect(value.toString()).toBe(other.toFraction());

describe('a rational number', () => {
  it('reads whole numbers, decimals, fractions and powers of ten exactly', () => {
    expect(Rational.parse('-0.7618').toString()).toBe('-3809/5000');
    expect(Rational.parse('\u22120.76').toString()).toBe('-19/25');
    expect(Rational.parse('5/2').toString()).toBe('5/2');
    expect(Rational.parse('6.02e23').toString()).toBe('602000000000000000000000');
  });

  it('refuses what is not a number, and a denominator of zero', () => {
    for (const text of ['', '-', '1,5', '0x10', '1/0', '1e5000', 'NaN']) expect(() => Rational.parse(text)).toThrow();
    expect(() => Rational.of(1, 0)).toThrow('denominator');
  });

  it('adds, subtracts, multiplies, divides and compares as fraction.js does', () => {
    fc.assert(
      fc.property(rational, rational, (a, b) => {
        same(a.plus(b), reference(a).add(reference(b)));
        same(a.minus(b), reference(a).sub(reference(b)));
        same(a.times(b), reference(a).mul(reference(b)));
        if (!b.isZero()) same(a.over(b), reference(a).div(reference(b)));
        expect(Math.sign(a.compare(b))).toBe(reference(a).compare(reference(b)));
      }),
    );
  });

  it('parses back what it prints', () => {
    fc.assert(
      fc.property(rational, (a) => {
        expect(Rational.parse(a.toString()).toString()).toBe(a.toString());
      }),
    );
  });
});
