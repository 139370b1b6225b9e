import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isBalanced } from '../../src/chemistry/balanced.ts';
import { combine } from '../../src/chemistry/combine.ts';
import { confirm } from '../../src/chemistry/confirm.ts';
import { electronsByNumber } from '../../src/chemistry/electrons-by-number.ts';
import type { Equation, HalfEquation } from '../../src/chemistry/equation.ts';
import { halfEquation } from '../../src/chemistry/half-equation.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import { Rational } from '../../src/exact/rational.ts';

/** Couples that stand together in acid; pairs of species only. */
const couples =
  `MnO4^-/Mn^2+ MnO2/Mn^2+ MnO4^-/MnO2 Cr2O7^2-/Cr^3+ VO2^+/VO^2+ VO^2+/V^3+ V^3+/V^2+ Fe^3+/Fe^2+ O2/H2O2 O2/H2O H2O2/H2O
S4O6^2-/S2O3^2- S2O8^2-/SO4^2- SO4^2-/SO2 S/H2S I2/I^- IO3^-/I2 IO3^-/I^- BrO3^-/Br2 BrO3^-/Br^- HOCl/Cl2 HOCl/Cl^- ClO3^-/Cl^-
NO3^-/NO NO3^-/NO2 NO3^-/NH4^+ CO2/H2C2O4 CO2/C2O4^2- CO2/CH3OH CO2/C2H5OH H^+/H2 Cu^2+/Cu Sn^4+/Sn^2+ Au^3+/Au
[Fe(CN)6]^3-/[Fe(CN)6]^4- [Co(NH3)6]^3+/[Co(NH3)6]^2+ TiO^2+/Ti^3+ CoO2/LiCoO2+Li^+ PbO2/PbSO4+SO4^2- Cu^2+/CuI+I^- AgCl/Ag+Cl^-`
    .split(/\s+/)
    .map((id) => {
      const [pair, ...extras] = id.split(/\+(?=[A-Z])/);
      const [oxidised, reduced] = pair!.split('/').map(parseFormula);
      return halfEquation(oxidised!, reduced!, 'acid', extras.map(parseFormula));
    });
const couple = fc.constantFrom(...couples);

const bumped = (equation: Equation, at: number): Equation => {
  const bump = (offset: number) => (term: Equation['left'][number], index: number) =>
    index + offset === at ? { ...term, coefficient: term.coefficient.plus(Rational.one) } : term;
  return { left: equation.left.map(bump(0)), right: equation.right.map(bump(equation.left.length)) };
};

describe('the second method', () => {
  it('counts the electrons of every half-equation by oxidation number', () => {
    for (const half of couples) expect(electronsByNumber(half).toString()).toBe(half.electrons.toString());
  });

  it('agrees with adding half-equations for any two couples, and with no equation that is one coefficient off', () => {
    fc.assert(
      fc.property(couple, couple, fc.nat(12), (reduction: HalfEquation, oxidation: HalfEquation, place) => {
        fc.pre(reduction !== oxidation);
        const { equation } = combine(reduction, oxidation);
        expect(isBalanced(equation)).toBe(true);
        const all = [...equation.left, ...equation.right];
        expect(all.map((term) => keyOf(term.formula))).not.toContain('e^-');
        expect(new Set(all.map((term) => keyOf(term.formula))).size).toBe(all.length);
        expect(confirm(equation, reduction, oxidation)).toMatchObject({ agrees: true });
        expect(confirm(bumped(equation, place % all.length), reduction, oxidation)).toMatchObject({ agrees: false });
      }),
      { numRuns: 1500 },
    );
  });

  it('refuses an equation that mixes in the decomposition of peroxide', () => {
    const reduction = couples[0]!;
    const oxidation = couples.find((half) => half.left[0] && keyOf(half.left[0].formula) === 'O2' && half.electrons.n === 2n)!;
    const right = parseEquation('2MnO4^- + 5H2O2 + 6H^+ -> 2Mn^2+ + 5O2 + 8H2O');
    const mixed = parseEquation('2MnO4^- + 7H2O2 + 6H^+ -> 2Mn^2+ + 6O2 + 10H2O');
    expect(isBalanced(mixed)).toBe(true);
    expect(confirm(right, reduction, oxidation)).toEqual({ agrees: true, method: 'electron-count' });
    expect(confirm(mixed, reduction, oxidation)).toEqual({
      agrees: false,
      method: 'electron-count',
      because: 'the species of a couple do not stand in the ratio of its half-equation',
    });
  });
});
