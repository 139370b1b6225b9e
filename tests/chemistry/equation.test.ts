import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balanceByNullSpace } from '../../src/chemistry/balance-by-null-space.ts';
import { isBalanced, misfit } from '../../src/chemistry/balanced.ts';
import { checkHalf } from '../../src/chemistry/check-half.ts';
import { combine } from '../../src/chemistry/combine.ts';
import { halfEquation } from '../../src/chemistry/half-equation.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { cancelEquation, lowestTerms, reverseEquation, sameEquation, scaleEquation } from '../../src/chemistry/terms.ts';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { Fault } from '../../src/exact/fault.ts';
import { Rational } from '../../src/exact/rational.ts';

const f = parseFormula;
const faultOf = (text: string): Fault => {
  try {
    parseEquation(text);
  } catch (error) {
    if (error instanceof Fault) return error;
    throw error;
  }
  throw new Error(`\`${text}\` was read without a fault`);
};

describe('an equation', () => {
  it.each(['MnO4^- + 8H^+ + 5e^- -> Mn^2+ + 4H2O', '2Fe^3+ + 2I^- -> 2Fe^2+ + I2', '1/2O2 + H2 -> H2O'])(
    'is written as it was read: %s',
    (text) => {
      expect(writeEquation(parseEquation(text))).toBe(text);
    },
  );

  it.each([
    ['2 Fe³⁺ + 2 I⁻ ⇌ 2 Fe²⁺ + I₂', '2Fe^3+ + 2I^- -> 2Fe^2+ + I2'],
    ['H2 + ½O2 = H2O', 'H2 + 1/2O2 -> H2O'],
    ['Cu^2+ + 2e^-->Cu', 'Cu^2+ + 2e^- -> Cu'],
    ['Cu^2+(aq) + Zn(s) <=> Cu(s) + Zn^2+(aq)', 'Cu^2+ + Zn -> Cu + Zn^2+'],
  ])('is read from other spellings: %s', (typed, plain) => {
    expect(writeEquation(parseEquation(typed))).toBe(plain);
  });

  it('keeps states when they are asked for', () => {
    const text = 'Cu^2+(aq) + Zn(s) <=> Cu(s) + Zn^2+(aq)';
    expect(writeEquation(parseEquation(text), '<=>', { state: true })).toBe(text);
  });

  it.each([
    ['Zn + Cu^2+', 'Zn + Cu^2+', 'expected an arrow'],
    ['Zn -> Cu -> Fe', '->', 'found another'],
    ['-> Cu', '-', 'both sides'],
    ['Zn+Cu^2+ -> Cu', '+', 'a space on both sides'],
    ['Zn + + Cu -> Cu', ' ', 'found nothing beside'],
    ['Zn + Cu2+ -> Cu', 'Cu2+', 'for the copper(II) ion write `Cu^2+`'],
    ['0Zn -> Zn', '0', 'expected a coefficient'],
    ['Zn -> 1/0Zn', '1/0', 'expected a coefficient'],
    ['Zn + Xx -> Zn', 'Xx', 'no element has the symbol `Xx`'],
  ])('that is wrong is underlined: %s', (text, place, message) => {
    const fault = faultOf(text);
    expect(fault.message).toContain(message);
    const { text: shown, at, length } = fault.place;
    expect(shown).toBe(text);
    expect(text.slice(at, at! + length!)).toBe(place);
  });

  it('is read from any text with nothing worse than a fault', () => {
    const pieces = fc.constantFrom(
      'Fe^3+',
      'O2',
      '2',
      '1/2',
      ' + ',
      '+',
      ' -> ',
      '=',
      '->',
      'e^-',
      '(aq)',
      '0',
      '^',
      '/',
      '⇌',
      '½',
      ' ',
      'x',
    );
    const text = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.array(pieces, { maxLength: 14 }).map((run) => run.join('')),
    );
    fc.assert(
      fc.property(text, (typed) => {
        try {
          const equation = parseEquation(typed);
          expect(parseEquation(writeEquation(equation, '->', { state: true }))).toEqual(equation);
        } catch (error) {
          if (!(error instanceof Fault)) throw error;
          expect(error.place.at! + error.place.length!).toBeLessThanOrEqual(Math.max(typed.length + 1, 1));
        }
      }),
      { numRuns: 5000 },
    );
  });
});

describe('terms', () => {
  it('cancel what stands on both sides and add what stands twice', () => {
    const sum = parseEquation('2H2O + 16H^+ + H^+ + Zn -> 10H^+ + 8H2O + Zn^2+');
    expect(writeEquation(cancelEquation(sum))).toBe('7H^+ + Zn -> 6H2O + Zn^2+');
  });
  it('reduce to whole numbers without a common divisor', () => {
    expect(writeEquation(lowestTerms(parseEquation('H2 + 1/2O2 -> H2O')))).toBe('2H2 + O2 -> 2H2O');
    expect(writeEquation(lowestTerms(parseEquation('4Zn + 2O2 -> 4ZnO')))).toBe('2Zn + O2 -> 2ZnO');
  });
  it('tell what is out of balance, charge included', () => {
    const off = misfit(parseEquation('Fe^2+ + MnO4^- -> Fe^3+ + Mn^2+'));
    expect(Object.fromEntries([...off].map(([component, by]) => [component, by.toString()]))).toEqual({ O: '-4', charge: '4' });
  });
});

describe('a half-equation', () => {
  it.each([
    ['MnO4^-', 'Mn^2+', 'acid', [], 'MnO4^- + 8H^+ + 5e^- <=> Mn^2+ + 4H2O'],
    ['MnO4^-', 'MnO2', 'alkali', [], 'MnO4^- + 2H2O + 3e^- <=> MnO2 + 4OH^-'],
    ['O2', 'OH^-', 'alkali', [], 'O2 + 2H2O + 4e^- <=> 4OH^-'],
    ['O2', 'HO2^-', 'alkali', [], 'O2 + H2O + 2e^- <=> HO2^- + OH^-'],
    ['HO2^-', 'OH^-', 'alkali', [], 'HO2^- + H2O + 2e^- <=> 3OH^-'],
    ['H2O', 'H2', 'alkali', [], '2H2O + 2e^- <=> H2 + 2OH^-'],
    ['H^+', 'H2', 'acid', [], '2H^+ + 2e^- <=> H2'],
    ['O2', 'H2O2', 'acid', [], 'O2 + 2H^+ + 2e^- <=> H2O2'],
    ['CO2', 'C2H5OH', 'acid', [], '2CO2 + 12H^+ + 12e^- <=> C2H5OH + 3H2O'],
    ['IO3^-', 'I2', 'acid', [], '2IO3^- + 12H^+ + 10e^- <=> I2 + 6H2O'],
    ['AgCl', 'Ag', 'neutral', ['Cl^-'], 'AgCl + e^- <=> Ag + Cl^-'],
    ['Cu^2+', 'CuI', 'neutral', ['I^-'], 'Cu^2+ + I^- + e^- <=> CuI'],
    ['PbO2', 'PbSO4', 'acid', ['SO4^2-'], 'PbO2 + SO4^2- + 4H^+ + 2e^- <=> PbSO4 + 2H2O'],
    ['[Ag(NH3)2]^+', 'Ag', 'alkali', ['NH3'], '[Ag(NH3)2]^+ + e^- <=> Ag + 2NH3'],
    ['NO3^-(aq)', 'NO(g)', 'acid', [], 'NO3^-(aq) + 4H^+(aq) + 3e^- <=> NO(g) + 2H2O(l)'],
  ] as const)('is built from %s and %s in %s', (oxidised, reduced, medium, extras, text) => {
    const half = halfEquation(f(oxidised), f(reduced), medium, extras.map(f));
    expect(writeEquation(half, '<=>', { state: true })).toBe(text);
    expect(checkHalf(half)).toEqual([]);
  });

  it.each([
    ['Fe^2+', 'Fe^3+', 'acid', [], 'not-a-reduction'],
    ['Cr2O7^2-', 'CrO4^2-', 'acid', [], 'not-a-reduction'],
    ['Fe^3+', 'Mn^2+', 'acid', [], 'cannot-balance'],
    ['AgCl', 'Ag', 'neutral', [], 'cannot-balance'],
    ['MnO4^-', 'Mn^2+', 'acid', ['H2O2'], 'not-unique'],
  ] as const)('is refused from %s and %s', (oxidised, reduced, medium, extras, code) => {
    expect(() => halfEquation(f(oxidised), f(reduced), medium, extras.map(f))).toThrow(expect.objectContaining({ code }));
  });

  it.each([
    ['Fe^2+ -> Fe^3+ + e^-', ['not-a-reduction']],
    ['Fe^3+ -> Fe^2+', ['not-a-reduction', 'unbalanced']],
    ['MnO4^- + 8H^+ + 4e^- -> Mn^2+ + 4H2O', ['unbalanced']],
    ['2Fe^3+ + 2e^- -> 2Fe^2+', ['not-lowest']],
    ['Fe^3+ + H^+ + e^- -> Fe^2+ + H^+', ['not-cancelled']],
  ])('that is wrong is told all its faults: %s', (text, codes) => {
    expect(checkHalf(parseEquation(text)).map((fault) => fault.code)).toEqual(codes);
  });
});

describe('two half-equations combine', () => {
  const half = (oxidised: string, reduced: string) => halfEquation(f(oxidised), f(reduced), 'acid');
  it.each([
    ['MnO4^-', 'Mn^2+', 'Fe^3+', 'Fe^2+', 'MnO4^- + 8H^+ + 5Fe^2+ -> Mn^2+ + 4H2O + 5Fe^3+', '5', '1', '5', '1'],
    ['MnO4^-', 'Mn^2+', 'O2', 'H2O2', '2MnO4^- + 6H^+ + 5H2O2 -> 2Mn^2+ + 8H2O + 5O2', '10', '2', '5', '1'],
    ['Cr2O7^2-', 'Cr^3+', 'SO4^2-', 'SO2', 'Cr2O7^2- + 2H^+ + 3SO2 -> 2Cr^3+ + H2O + 3SO4^2-', '6', '1', '3', '1'],
    ['IO3^-', 'I2', 'I2', 'I^-', 'IO3^- + 6H^+ + 5I^- -> 3I2 + 3H2O', '5', '1', '5', '2'],
  ])('%s/%s with %s/%s', (ox1, red1, ox2, red2, text, electrons, timesReduction, timesOxidation, divisor) => {
    const joined = combine(half(ox1, red1), half(ox2, red2));
    expect(writeEquation(joined.equation)).toBe(text);
    expect(isBalanced(joined.equation)).toBe(true);
    expect([joined.electrons, joined.timesReduction, joined.timesOxidation, joined.divisor].map(String)).toEqual([
      electrons,
      timesReduction,
      timesOxidation,
      divisor,
    ]);
  });
  it('but not a couple with itself', () => {
    expect(() => combine(half('Fe^3+', 'Fe^2+'), half('Fe^3+', 'Fe^2+'))).toThrow(
      expect.objectContaining({ code: 'same-couple' }),
    );
  });
  it('and reversing negates, scaling keeps the balance', () => {
    const equation = parseEquation('MnO4^- + 5Fe^2+ -> Mn^2+');
    const back = misfit(reverseEquation(equation));
    for (const [component, by] of misfit(equation)) expect(back.get(component)!.equals(by.negate())).toBe(true);
    const scaled = misfit(scaleEquation(equation, Rational.of(3, 2)));
    for (const [component, by] of misfit(equation)) expect(scaled.get(component)!.equals(by.times(Rational.of(3, 2)))).toBe(true);
  });
});

describe('balancing by the null space', () => {
  const balance = (text: string, extras: readonly string[] = []) => {
    const { left, right } = parseEquation(text);
    return balanceByNullSpace(
      left.map((term) => term.formula),
      right.map((term) => term.formula),
      extras.map(f),
    );
  };
  it('finds the only solution', () => {
    const found = balance('K4[Fe(CN)6] + KMnO4 + H2SO4 -> KHSO4 + Fe2(SO4)3 + MnSO4 + HNO3 + CO2 + H2O');
    expect(found.kind === 'unique' && writeEquation(found.equation)).toBe(
      '10K4[Fe(CN)6] + 122KMnO4 + 299H2SO4 -> 162KHSO4 + 5Fe2(SO4)3 + 122MnSO4 + 60HNO3 + 60CO2 + 188H2O',
    );
  });
  it('lets extra species choose their side or drop out', () => {
    const found = balance('MnO4^- + C2O4^2- -> Mn^2+ + CO2', ['H2O', 'H^+']);
    expect(found.kind === 'unique' && writeEquation(found.equation)).toBe('2MnO4^- + 5C2O4^2- + 16H^+ -> 2Mn^2+ + 10CO2 + 8H2O');
    const plain = balance('Zn + Cu^2+ -> Zn^2+ + Cu', ['H2O', 'H^+']);
    expect(plain.kind === 'unique' && writeEquation(plain.equation)).toBe('Zn + Cu^2+ -> Zn^2+ + Cu');
  });
  it('shows two independent solutions when conservation does not decide', () => {
    const found = balance('MnO4^- + H2O2 + H^+ -> Mn^2+ + O2 + H2O');
    if (found.kind !== 'many') throw new Error('expected many');
    expect(found.dimension).toBe(2);
    expect(found.solutions).toHaveLength(2);
    for (const solution of found.solutions) {
      expect(isBalanced(solution)).toBe(true);
      expect([solution.left.length, solution.right.length]).toEqual([3, 3]);
    }
    expect(sameEquation(found.solutions[0]!, found.solutions[1]!)).toBe(false);
  });
  it.each([
    ['Fe^2+ + Cl^- -> Fe^3+', 'nothing on the right holds the Cl of `Cl^-`'],
    ['Fe + Fe^2+ -> Fe^3+', 'on the other side'],
    ['Cu + Zn -> Zn^2+ + Cu^2+', 'on the other side'],
    ['H2O + O2 -> H2O2 + N2', 'nothing on the left holds the N of `N2`'],
    ['Fe + O2 -> O2', 'stands on both sides'],
    ['Fe + Fe^2+ -> Fe', 'stands on both sides'],
    ['H2O -> H2 + O2 + Fe', 'holds the Fe'],
    ['Fe^3+ + I^- -> Fe^2+ + I3^-', ''],
  ])('says why %s is impossible', (text, because) => {
    const found = balance(text);
    if (because === '') expect(found.kind).toBe('unique');
    else expect(found).toMatchObject({ kind: 'none', because: expect.stringContaining(because) });
  });
});
