import { describe, expect, it } from 'vitest';
import { CODATA, SHEET, SHEET_TEMPERATURE, STANDARD_TEMPERATURE } from '../../src/chemistry/constants.ts';
import {
  emfFromGibbs,
  equilibriumConstant,
  gibbsEnergy,
  lnEquilibrium,
  log10Of,
  nernstEmf,
  reactionQuotient,
} from '../../src/chemistry/energetics.ts';
import { molarPhotonEnergy, photonEnergy, wavelengthOf } from '../../src/chemistry/light.ts';
import { exponential, naturalLog, scientificText } from '../../src/chemistry/logarithm.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { Rational } from '../../src/exact/rational.ts';

const r = Rational.parse;

describe('energetics', () => {
  it('gives the Gibbs energy of the equation as written, exactly', () => {
    expect(gibbsEnergy(r('2'), r('1.10'), SHEET).toString()).toBe('-212300');
    expect(gibbsEnergy(r('4'), r('1.10'), SHEET).toString()).toBe('-424600');
    expect(emfFromGibbs(r('2'), r('-212300'), SHEET).equals(r('1.10'))).toBe(true);
  });
  it('gives ln K exactly, and K of any size', () => {
    const lnK = lnEquilibrium(r('2'), r('1.10'), SHEET_TEMPERATURE, SHEET);
    expect(lnK.toNumber()).toBeCloseTo(85.73, 2);
    expect(scientificText(equilibriumConstant(lnK), 2)).toBe('1.7e+37');
    expect(log10Of(lnK)).toBeCloseTo(37.23, 2);
    const huge = equilibriumConstant(lnEquilibrium(r('12'), r('3.5'), STANDARD_TEMPERATURE, CODATA));
    expect(huge.exponent).toBe(709);
    expect(scientificText(equilibriumConstant(r('-85.73')), 2)).toBe('5.9e-38');
  });
  it('takes logarithms of rationals beyond the range of doubles', () => {
    expect(naturalLog(r('1e100').times(r('1e100')).times(r('1e200')))).toBeCloseTo(400 * Math.LN10, 9);
    expect(naturalLog(Rational.of(1n, 10n ** 400n))).toBeCloseTo(-400 * Math.LN10, 9);
    expect(naturalLog(r('2'))).toBe(Math.LN2);
    expect(() => naturalLog(Rational.zero)).toThrow(RangeError);
    expect(scientificText(exponential(Math.log(9.996) + 5 * Math.LN10), 3)).toBe('1.00e+6');
  });
  it('refuses a temperature at or below zero kelvin', () => {
    expect(() => lnEquilibrium(r('1'), r('1'), Rational.zero, SHEET)).toThrow(
      expect.objectContaining({ code: 'bad-temperature' }),
    );
  });
  it('counts dissolved species and gases in the quotient, not solids, liquids or water', () => {
    const equation = parseEquation('MnO4^-(aq) + 8H^+(aq) + 5Fe^2+(aq) -> Mn^2+(aq) + 4H2O(l) + 5Fe^3+(aq)');
    const q = reactionQuotient(
      equation,
      new Map([
        ['H^+', r('0.1')],
        ['Fe^3+', r('2')],
      ]),
    );
    expect(q.toString()).toBe(String(32n * 10n ** 8n));
    const zinc = parseEquation('Zn(s) + Cu^2+(aq) -> Zn^2+(aq) + Cu(s)');
    expect(
      reactionQuotient(
        zinc,
        new Map([
          ['Zn^2+', r('0.5')],
          ['Cu^2+', r('0.25')],
        ]),
      ).toString(),
    ).toBe('2');
    expect(() => reactionQuotient(zinc, new Map([['Fe^2+', r('1')]]))).toThrow(
      expect.objectContaining({ code: 'unknown-species' }),
    );
    expect(() => reactionQuotient(zinc, new Map([['Cu^2+', r('0')]]))).toThrow(
      expect.objectContaining({ code: 'bad-concentration' }),
    );
  });
  it('changes the e.m.f. by 59 mV for each power of ten and electron', () => {
    expect(nernstEmf(r('1'), r('1'), r('10'), STANDARD_TEMPERATURE, CODATA)).toBeCloseTo(1 - 0.05916, 5);
    expect(nernstEmf(r('1'), r('2'), r('1'), STANDARD_TEMPERATURE, CODATA)).toBe(1);
  });
});

describe('light', () => {
  it('has the energy hc/λ', () => {
    expect(photonEnergy(r('500'), SHEET).toNumber()).toBeCloseTo(3.978e-19, 22);
    expect(molarPhotonEnergy(r('500'), CODATA).toNumber()).toBeCloseTo(239.25, 1);
    expect(wavelengthOf(photonEnergy(r('612.5'), SHEET), SHEET).equals(r('612.5'))).toBe(true);
  });
});
