import { describe, expect, it } from 'vitest';
import { isBalanced } from '../../src/chemistry/balanced.ts';
import { decimalText } from '../../src/exact/decimal.ts';
import { Rational } from '../../src/exact/rational.ts';
import { TABLES } from './default-tables.ts';

/** Couples that the default table must hold. */
const NEEDED = `
Li^+/Li K^+/K Ba^2+/Ba Ca^2+/Ca Na^+/Na Mg^2+/Mg Al^3+/Al Ti^2+/Ti V^2+/V Mn^2+/Mn Zn^2+/Zn Cr^3+/Cr Cr^2+/Cr Fe^2+/Fe Fe^3+/Fe
Cd^2+/Cd Co^2+/Co Ni^2+/Ni Sn^2+/Sn Pb^2+/Pb Cu^2+/Cu Cu^+/Cu Ag^+/Ag Hg^2+/Hg Au^3+/Au H^+/H2 Cr^3+/Cr^2+ Cr2O7^2-/Cr^3+
CrO4^2-/Cr(OH)3 MnO4^-/Mn^2+ MnO4^-/MnO2@acid MnO4^-/MnO2@alkali MnO4^-/MnO4^2- MnO4^2-/MnO2@acid MnO4^2-/MnO2@alkali MnO2/Mn^2+
MnO2/Mn^3+ Mn^3+/Mn^2+ VO2^+/VO^2+ VO^2+/V^3+ V^3+/V^2+ TiO^2+/Ti^3+ Ti^3+/Ti^2+ Fe^3+/Fe^2+ [Fe(CN)6]^3-/[Fe(CN)6]^4-
Fe(OH)3/Fe(OH)2 Co^3+/Co^2+ [Co(NH3)6]^3+/[Co(NH3)6]^2+ Cu^2+/Cu^+ Cu^2+/CuI Sn^4+/Sn^2+ PbO2/Pb^2+ PbO2/PbSO4 PbSO4/Pb
Ce^4+/Ce^3+ F2/F^- Cl2/Cl^- Br2/Br^- I2/I^- ClO^-/Cl^- HOCl/Cl2 HOCl/Cl^- ClO^-/Cl2 ClO3^-/Cl2 ClO3^-/Cl^- BrO3^-/Br2 BrO3^-/Br^-
IO3^-/I2 IO3^-/I^- O2/H2O O2/OH^- O2/H2O2 H2O2/H2O HO2^-/OH^- H2O/H2 S2O8^2-/SO4^2- S4O6^2-/S2O3^2- SO4^2-/SO2
SO4^2-/S2O3^2-@acid SO2/S S/H2S NO3^-/NO2 NO3^-/NO NO3^-/NH4^+ CO2/H2C2O4 CO2/C2O4^2- AgCl/Ag NiO(OH)/Ni(OH)2 Ni(OH)2/Ni
Cd(OH)2/Cd [Zn(OH)4]^2-/Zn [Al(OH)4]^-/Al [Ag(NH3)2]^+/Ag MnO2/MnO(OH) CO2/CH3OH CO2/C2H5OH CoO2/LiCoO2`
  .trim()
  .split(/\s+/);

/**
 * E° printed of the reductant's couple, then of the rungs of an element from the top, with the number of rungs that are
 * taken.
 */
const LADDERS: readonly { reductant: string; rungs: readonly string[]; taken: number }[] = [
  { reductant: 'Zn^2+/Zn', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+', 'V^3+/V^2+', 'V^2+/V'], taken: 3 },
  { reductant: 'Fe^2+/Fe', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+', 'V^3+/V^2+', 'V^2+/V'], taken: 3 },
  { reductant: 'Cd^2+/Cd', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+', 'V^3+/V^2+', 'V^2+/V'], taken: 3 },
  { reductant: 'Cr^3+/Cr^2+', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+', 'V^3+/V^2+', 'V^2+/V'], taken: 3 },
  { reductant: 'Sn^2+/Sn', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+', 'V^3+/V^2+'], taken: 2 },
  { reductant: 'Pb^2+/Pb', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+', 'V^3+/V^2+'], taken: 2 },
  { reductant: 'Sn^4+/Sn^2+', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+', 'V^3+/V^2+'], taken: 2 },
  { reductant: 'SO4^2-/SO2', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+', 'V^3+/V^2+'], taken: 2 },
  { reductant: 'TiO^2+/Ti^3+', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+', 'V^3+/V^2+'], taken: 2 },
  { reductant: 'Fe^3+/Fe^2+', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+'], taken: 1 },
  { reductant: 'I2/I^-', rungs: ['VO2^+/VO^2+', 'VO^2+/V^3+'], taken: 1 },
  { reductant: 'Zn^2+/Zn', rungs: ['Cr2O7^2-/Cr^3+', 'Cr^3+/Cr^2+', 'Cr^2+/Cr'], taken: 2 },
  { reductant: 'Sn^2+/Sn', rungs: ['Cr2O7^2-/Cr^3+', 'Cr^3+/Cr^2+'], taken: 1 },
  { reductant: 'Sn^4+/Sn^2+', rungs: ['Cr2O7^2-/Cr^3+', 'Cr^3+/Cr^2+'], taken: 1 },
  { reductant: 'Fe^3+/Fe^2+', rungs: ['Cr2O7^2-/Cr^3+', 'Cr^3+/Cr^2+'], taken: 1 },
  { reductant: 'I2/I^-', rungs: ['Fe^3+/Fe^2+', 'Fe^2+/Fe'], taken: 1 },
  { reductant: 'Sn^4+/Sn^2+', rungs: ['Fe^3+/Fe^2+', 'Fe^2+/Fe'], taken: 1 },
  { reductant: 'Cu^2+/Cu', rungs: ['Fe^3+/Fe^2+', 'Fe^2+/Fe'], taken: 1 },
];

/** Chemistry that is known to be too close to call. */
const BORDERLINE: readonly (readonly [string, string])[] = [
  ['Cu^2+/Cu', 'VO^2+/V^3+'],
  ['Co^2+/Co', 'V^3+/V^2+'],
  ['Ni^2+/Ni', 'V^3+/V^2+'],
  ['Fe^2+/Fe', 'Cr^3+/Cr^2+'],
  ['Zn^2+/Zn', 'Cr^3+/Cr'],
  ['MnO4^-/MnO4^2-', 'MnO4^2-/MnO2@alkali'],
  ['Zn^2+/Zn', 'Ti^3+/Ti^2+'],
];

const emf = (oxidant: string, reductant: string): Rational =>
  TABLES.couple(oxidant).printed.value.minus(TABLES.couple(reductant).printed.value);
const THRESHOLD = Rational.parse('0.10');

describe('the default table of couples', () => {
  it('holds every couple the course needs', () => {
    const ids = TABLES.couples.map((couple) => couple.id);
    expect(NEEDED.filter((id) => !ids.includes(id))).toEqual([]);
    expect(ids.length).toBeGreaterThanOrEqual(100);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('stands in order of potential, most negative first', () => {
    const values = TABLES.couples.map((couple) => couple.stored.value);
    expect(values.every((value, at) => at === 0 || values[at - 1]!.compare(value) <= 0)).toBe(true);
  });

  it('balances every half-equation in atoms and charge', () => {
    expect(TABLES.couples.filter((couple) => !isBalanced(couple.half)).map((couple) => couple.id)).toEqual([]);
  });

  it('prints every potential to two decimals and stores it as published', () => {
    expect(decimalText(TABLES.couple('Ag^+/Ag').stored)).toBe('0.7996');
    expect(decimalText(TABLES.couple('Ag^+/Ag').printed)).toBe('0.80');
    expect(decimalText(TABLES.couple('Cl2/Cl^-').printed)).toBe('1.36');
    expect(TABLES.couples.every((couple) => couple.printed.places === 2)).toBe(true);
  });

  it('names a source for every couple, and marks what comes from memory', () => {
    expect(TABLES.couples.every((couple) => couple.source.length > 5)).toBe(true);
    expect(TABLES.couples.filter((couple) => couple.source === 'from memory').length).toBeLessThan(16);
  });

  it('adds up round every cycle within 0.03 V per electron', () => {
    expect(TABLES.warnings).toEqual([]);
  });

  it('never takes a metal out of the ions that only calculations reduce', () => {
    for (const id of [
      'V^2+/V',
      'Cr^2+/Cr',
      'Cr^3+/Cr',
      'Mn^2+/Mn',
      'Ti^2+/Ti',
      'Ti^3+/Ti^2+',
      'CO2/CH3OH',
      'CO2/C2H5OH',
      'Na^+/Na',
    ]) {
      expect(TABLES.couple(id).calculationOnly, id).toBe(true);
    }
    expect(TABLES.couple('Al^3+/Al').usualOxidant).toEqual([]);
  });

  it.each([
    ['MnO4^-', 'acid', 'MnO4^-/Mn^2+'],
    ['MnO4^-', 'neutral', 'MnO4^-/MnO2@alkali'],
    ['MnO4^-', 'alkali', 'MnO4^-/MnO2@alkali'],
    ['MnO4^-', 'strong-alkali', 'MnO4^-/MnO4^2-'],
    ['HOCl', 'acid', 'HOCl/Cl^-'],
    ['MnO2', 'acid', 'MnO2/Mn^2+'],
    ['Fe^3+', 'acid', 'Fe^3+/Fe^2+'],
    ['Cr^3+', 'acid', 'Cr^3+/Cr^2+'],
  ] as const)('sends %s in %s to its usual product', (key, medium, id) => {
    const restricted = TABLES.facts.restrictions.filter((entry) => entry.as === 'oxidant').map((entry) => entry.couple);
    const usual = TABLES.couples.filter((couple) => couple.oxidisedKey === key && couple.usualOxidant.includes(medium));
    expect(usual.map((couple) => couple.id).filter((found) => !restricted.includes(found))).toEqual([id]);
  });

  it.each(LADDERS)('clears the threshold on the ladder of $rungs.0 with $reductant', ({ reductant, rungs, taken }) => {
    for (const [at, rung] of rungs.entries()) {
      const value = emf(rung, reductant);
      if (at < taken) expect(value.compare(THRESHOLD), `${rung} is taken`).toBeGreaterThanOrEqual(0);
      else expect(value.compare(THRESHOLD.negate()), `${rung} is not taken`).toBeLessThanOrEqual(0);
    }
  });

  it.each(BORDERLINE)('leaves %s with %s too close to call', (one, other) => {
    expect(emf(one, other).abs().compare(THRESHOLD)).toBeLessThan(0);
  });

  it('finds a couple by its id and says what is near when there is none', () => {
    expect(TABLES.couple('Zn^2+/Zn').reducedKey).toBe('Zn');
    expect(() => TABLES.couple('Zn2+/Zn')).toThrow(/no couple of the table is called `Zn2\+\/Zn` \(did you mean `Zn\^2\+\/Zn`/);
    expect(() => TABLES.couple('MnO4^-/MnO2')).toThrow(/in which medium, `MnO4\^-\/MnO2@alkali` or `MnO4\^-\/MnO2@acid`/);
    expect(() => TABLES.speciesOf('MnO4-')).toThrow(/did you mean `MnO4\^-`/);
  });

  it('cannot be changed once read', () => {
    expect(() => Object.assign(TABLES.couples[0]!, { source: 'changed' })).toThrow();
    expect(() => (TABLES.couples as unknown[]).push(1)).toThrow();
    expect(() => Object.assign(TABLES.speciesOf('MnO4^-').colour!, { word: 'green' })).toThrow();
  });
});
