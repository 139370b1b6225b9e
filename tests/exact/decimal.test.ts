import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalAt, decimalText, decimalWithFigures, figuresOf, parseDecimal, printDecimal } from '../../src/exact/decimal.ts';
import { printNumber } from '../../src/exact/print-number.ts';
import { Rational } from '../../src/exact/rational.ts';
import { magnitudeOf, roundToFigures, roundToPlaces } from '../../src/exact/rounding.ts';

const value = fc
  .tuple(fc.bigInt({ min: -(10n ** 9n), max: 10n ** 9n }), fc.integer({ min: 1, max: 99999 }))
  .map(([n, d]) => Rational.of(n, d));

describe('rounding', () => {
  it('takes halves away from zero', () => {
    expect(decimalText(decimalAt(Rational.parse('0.125'), 2))).toBe('0.13');
    expect(decimalText(decimalAt(Rational.parse('-0.125'), 2))).toBe('-0.13');
    expect(decimalText(decimalAt(Rational.parse('2.5'), 0))).toBe('3');
  });

  it('never moves a value by more than half a unit of the last place', () => {
    fc.assert(
      fc.property(value, fc.integer({ min: 0, max: 6 }), (exact, places) => {
        const off = roundToPlaces(exact, places).minus(exact).abs();
        expect(off.times(Rational.of(2n * 10n ** BigInt(places))).compare(Rational.one)).toBeLessThanOrEqual(0);
      }),
    );
  });

  it('counts figures from the leading digit', () => {
    expect(magnitudeOf(Rational.parse('0.0312'))).toBe(-2);
    expect(magnitudeOf(Rational.parse('9.99'))).toBe(0);
    expect(magnitudeOf(Rational.parse('10'))).toBe(1);
    expect(roundToFigures(Rational.parse('0.0099951'), 3).toString()).toBe('1/100');
  });

  it('agrees with the magnitude of the double nearest to it', () => {
    fc.assert(
      fc.property(
        value.filter((each) => !each.isZero()),
        (exact) => {
          expect(magnitudeOf(exact)).toBe(Number(exact.abs().toNumber().toExponential(15).split('e')[1]));
        },
      ),
    );
  });
});

describe('a decimal', () => {
  it('keeps the places it was written with', () => {
    expect(parseDecimal('0.80').places).toBe(2);
    expect(decimalText(parseDecimal('0.80'))).toBe('0.80');
    expect(figuresOf(parseDecimal('0.0250'))).toBe(3);
  });

  it('carries into a new figure: 9.996 to three figures is 10.0', () => {
    expect(decimalText(decimalWithFigures(Rational.parse('9.996'), 3))).toBe('10.0');
  });

  it('prints a true minus, and a plus only when it is asked for and there is something to be positive', () => {
    expect(printDecimal(parseDecimal('-0.76'))).toBe('\u22120.76');
    expect(printDecimal(parseDecimal('0.80'), true)).toBe('+0.80');
    expect(printDecimal(parseDecimal('0.00'), true)).toBe('0.00');
    expect(printDecimal(decimalAt(Rational.parse('-0.004'), 2))).toBe('0.00');
  });

  it('goes to standard form when it is small, large, or has figures that are not meant', () => {
    expect(printNumber(decimalWithFigures(Rational.parse('0.0004690'), 4))).toBe('4.690 × 10^-4');
    expect(printNumber(decimalWithFigures(Rational.parse('0.001234'), 3))).toBe('0.00123');
    expect(printNumber(decimalWithFigures(Rational.parse('151000'), 3))).toBe('1.51 × 10^5');
    expect(printNumber(decimalWithFigures(Rational.parse('1520'), 2))).toBe('1.5 × 10^3');
    expect(printNumber(parseDecimal('23.45'))).toBe('23.45');
  });
});
