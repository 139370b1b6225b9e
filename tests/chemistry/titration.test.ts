import { describe, expect, it } from 'vitest';
import { moleRatio, molesByCharge, molesOfGas, peroxideConcentration, volumeStrength } from '../../src/chemistry/amounts.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { type Titration, workTitration } from '../../src/chemistry/titration.ts';
import { concordantTitres, percentageUncertainty } from '../../src/chemistry/titres.ts';
import { parseDecimal } from '../../src/exact/decimal.ts';
import { Fault } from '../../src/exact/fault.ts';
import { Rational } from '../../src/exact/rational.ts';

const r = Rational.parse;
const work = (given: Record<string, string>) =>
  workTitration(Object.fromEntries(Object.entries(given).map(([name, text]) => [name, r(text)])) as unknown as Titration);
const code = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    return error instanceof Fault ? error.code : 'other';
  }
  return 'none';
};

describe('a titration', () => {
  it('gives a concentration from a titre', () => {
    const { answer, working } = work({ ratio: '5', titrantConcentration: '0.0200', titre: '23.40', aliquot: '25.0' });
    expect(working.map((line) => line.what)).toEqual(['moles-titrant', 'moles-analyte', 'analyte-concentration']);
    expect([answer.value.toString(), answer.unit]).toEqual(['117/1250', 'mol dm^-3']);
  });
  it('undoes a dilution', () => {
    const { answer } = work({
      ratio: '5/2',
      titrantConcentration: '0.02',
      titre: '20',
      aliquot: '25',
      flask: '250',
      taken: '10',
    });
    expect([answer.what, answer.value.toString()]).toEqual(['original-concentration', '1']);
  });
  it('gives a mass and a percentage through the flask', () => {
    const { working } = work({
      ratio: '5',
      titrantConcentration: '0.00500',
      titre: '20.0',
      aliquot: '25.0',
      flask: '250',
      molarMass: '55.8',
      sample: '0.558',
    });
    expect(working.map(({ what, value }) => `${what} ${value.toNumber()}`)).toEqual([
      'moles-titrant 0.0001',
      'moles-analyte 0.0005',
      'moles-in-flask 0.005',
      'mass 0.279',
      'percentage 50',
    ]);
  });
  it('gives the molar mass of a weighed sample, for water of crystallisation', () => {
    const { answer } = work({
      ratio: '5',
      titrantConcentration: '0.02',
      titre: '25',
      aliquot: '25',
      flask: '250',
      sample: '6.95',
    });
    expect([answer.what, answer.value.toString()]).toEqual(['molar-mass', '278']);
  });
  it('works backwards to the titre or to the titrant', () => {
    const base = { ratio: '5', analyteConcentration: '0.1', aliquot: '25' };
    expect(work({ ...base, titrantConcentration: '0.02' }).answer).toMatchObject({ what: 'titre', value: r('25') });
    expect(work({ ...base, titre: '25' }).answer).toMatchObject({ what: 'titrant-concentration', value: r('0.02') });
  });
  it('says when something is missing or cannot be', () => {
    expect(code(() => work({ ratio: '5', titre: '25' }))).toBe('not-enough');
    expect(code(() => work({ ratio: '5', titre: '-25', titrantConcentration: '1' }))).toBe('bad-quantity');
  });
});

describe('titres', () => {
  const list = (...texts: string[]) => texts.map(parseDecimal);
  it('are averaged over the largest set within 0.10 cm³; the rough one falls out', () => {
    const found = concordantTitres(list('24.10', '23.45', '23.65', '23.40', '23.50'));
    expect(found.used).toEqual([1, 3, 4]);
    expect(found.mean.equals(r('23.45'))).toBe(true);
  });
  it('that do not agree, or agree in two ways, are refused', () => {
    expect(code(() => concordantTitres(list('24.10', '23.45')))).toBe('no-concordant');
    expect(code(() => concordantTitres(list('24.10', '24.15', '23.45', '23.40')))).toBe('many-concordant');
    expect(code(() => concordantTitres([]))).toBe('no-concordant');
  });
  it('have the uncertainty of two readings', () => {
    expect(percentageUncertainty(r('25.00'), r('0.05'), 2).equals(r('0.4'))).toBe(true);
  });
});

describe('amounts', () => {
  it('follow from an equation, a charge, a gas', () => {
    const equation = parseEquation('2MnO4^- + 16H^+ + 5C2O4^2- -> 2Mn^2+ + 8H2O + 10CO2');
    expect(moleRatio(equation, 'C2O4^2-', 'MnO4^-').toString()).toBe('5/2');
    expect(code(() => moleRatio(equation, 'Fe^2+', 'MnO4^-'))).toBe('unknown-species');
    expect(molesByCharge(r('96500'), r('2'), r('96500')).toString()).toBe('1/2');
    expect(molesOfGas(r('100000'), r('24000'), r('298'), r('8.31')).toNumber()).toBeCloseTo(0.969, 3);
  });
  it('turn volume strength into concentration and back', () => {
    expect(peroxideConcentration(r('20'), r('24.0')).toNumber()).toBeCloseTo(1.67, 2);
    expect(peroxideConcentration(r('20'), r('22.4')).toNumber()).toBeCloseTo(1.79, 2);
    expect(volumeStrength(peroxideConcentration(r('20'), r('24')), r('24')).toString()).toBe('20');
  });
});
