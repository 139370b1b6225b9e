import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isBalanced } from '../../src/chemistry/balanced.ts';
import { cellNotation } from '../../src/chemistry/cell-notation.ts';
import { halfOf, parseCellNotation } from '../../src/chemistry/parse-cell-notation.ts';
import { ownCouple, parseHalfCell } from '../../src/chemistry/parse-half-cell.ts';
import { solveEquation } from '../../src/chemistry/solve-equation.ts';
import { sameEquation } from '../../src/chemistry/terms.ts';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import { decimalText } from '../../src/exact/decimal.ts';
import { Fault } from '../../src/exact/fault.ts';
import { tables } from './tables.ts';

const code = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    return error instanceof Fault ? error.code : String(error);
  }
  return 'none';
};

describe('an equation as typed', () => {
  it.each([
    [
      'MnO4^- + C2O4^2- -> Mn^2+ + CO2',
      'acid',
      'redox',
      '2MnO4^- + 5C2O4^2- + 16H^+ -> 2Mn^2+ + 10CO2 + 8H2O',
      '10',
      'C2O4^2-',
      'MnO4^-',
    ],
    ['MnO4^-/Mn^2+', 'acid', 'half', 'MnO4^- + 8H^+ + 5e^- -> Mn^2+ + 4H2O', '5', '', 'MnO4^-'],
    ['MnO4^- -> MnO2', 'alkali', 'half', 'MnO4^- + 2H2O + 3e^- -> MnO2 + 4OH^-', '3', '', 'MnO4^-'],
    ['Fe^2+ -> Fe^3+', 'acid', 'half', 'Fe^2+ -> Fe^3+ + e^-', '1', 'Fe^2+', ''],
    ['PbO2 + SO4^2- -> PbSO4', 'acid', 'half', 'PbO2 + SO4^2- + 4H^+ + 2e^- -> PbSO4 + 2H2O', '2', '', 'PbO2'],
    ['Cl2 -> Cl^- + ClO3^-', 'alkali', 'redox', '3Cl2 + 6OH^- -> 5Cl^- + ClO3^- + 3H2O', '5', 'Cl2', 'Cl2'],
    ['IO3^- + I^- -> I2', 'acid', 'redox', 'IO3^- + 5I^- + 6H^+ -> 3I2 + 3H2O', '5', 'I^-', 'IO3^-'],
    ['Cu + HNO3 -> Cu(NO3)2 + NO + H2O', 'acid', 'redox', '3Cu + 8HNO3 -> 3Cu(NO3)2 + 2NO + 4H2O', '6', 'Cu', 'HNO3'],
    ['H2O2 -> H2O + O2', 'acid', 'redox', '2H2O2 -> 2H2O + O2', '2', 'H2O2', 'H2O2'],
    ['Ag^+ + Cl^- -> AgCl', 'acid', 'no-redox', 'Ag^+ + Cl^- -> AgCl', '0', '', ''],
    ['CrO4^2- -> Cr2O7^2-', 'acid', 'no-redox', '2CrO4^2- + 2H^+ -> Cr2O7^2- + H2O', '0', '', ''],
  ] as const)('%s in %s', (text, medium, kind, equation, electrons, oxidised, reduced) => {
    const found = solveEquation(text, medium);
    if (found.kind === 'many') throw new Error('expected one solution');
    expect([found.kind, writeEquation(found.equation), String(found.electrons)]).toEqual([kind, equation, electrons]);
    expect([found.oxidised.map(keyOf).join(), found.reduced.map(keyOf).join()]).toEqual([oxidised, reduced]);
    expect(isBalanced(found.equation)).toBe(true);
  });

  it('with two independent reactions in it shows two solutions, and is decided by its couples', () => {
    const text = 'MnO4^- + H2O2 -> Mn^2+ + O2';
    const found = solveEquation(text);
    expect(found).toMatchObject({ kind: 'many', dimension: 2 });
    expect(found.kind === 'many' && found.solutions.every(isBalanced)).toBe(true);
    const decided = solveEquation(text, 'acid', [tables.couple('MnO4^-/Mn^2+').half, tables.couple('O2/H2O2').half]);
    expect(decided.kind === 'redox' && writeEquation(decided.equation)).toBe('2MnO4^- + 6H^+ + 5H2O2 -> 2Mn^2+ + 8H2O + 5O2');
  });

  it('that is impossible is refused with the reason', () => {
    expect(() => solveEquation('Cu + Zn -> Fe')).toThrow('nothing on the right holds the Cu of `Cu`');
    expect(() => solveEquation('Fe^2+ + Cu^2+ -> Fe + Cu')).toThrow('cannot be balanced');
  });

  it('may be any text: nothing but a fault comes of it', () => {
    const pieces = fc.constantFrom(
      'Fe^3+',
      'O2',
      '2',
      ' + ',
      ' -> ',
      '/',
      'e^-',
      'Cl2',
      'Cl^-',
      'MnO4^-',
      'CuFeS2',
      'H2O',
      'Mn^2+',
      '=0.80',
      '@acid',
      '||',
      '|',
      ',',
    );
    const text = fc.oneof(
      fc.string({ maxLength: 40 }),
      fc.array(pieces, { maxLength: 12 }).map((run) => run.join('')),
    );
    fc.assert(
      fc.property(text, (typed) => {
        for (const run of [
          () => solveEquation(typed),
          () => solveEquation(typed, 'alkali'),
          () => ownCouple(parseHalfCell(typed)),
          () => Object.values(parseCellNotation(typed)).map(halfOf),
        ]) {
          const thrown = code(run);
          expect(thrown).not.toContain('Error');
          expect(thrown).not.toContain('undefined');
        }
      }),
      { numRuns: 3000 },
    );
  });
});

describe('a half-cell as typed', () => {
  it.each([
    ['Ag^+/Ag=0.7996', 'Ag^+/Ag', 'Ag^+ + e^- <=> Ag', '0.7996', 'neutral'],
    ['MnO4^-/MnO2@alkali=0.60', 'MnO4^-/MnO2@alkali', 'MnO4^- + 2H2O + 3e^- <=> MnO2 + 4OH^-', '0.60', 'alkali'],
    ['Cu^2+ + I^- + e^- <=> CuI = 0.86', 'Cu^2+/CuI', 'Cu^2+ + I^- + e^- <=> CuI', '0.86', 'neutral'],
    ['Zn²⁺/Zn=−0.76', 'Zn^2+/Zn', 'Zn^2+ + 2e^- <=> Zn', '-0.76', 'neutral'],
  ])('%s', (text, id, half, potential, medium) => {
    const couple = ownCouple(parseHalfCell(text));
    expect([couple.id, writeEquation(couple.half, '<=>'), decimalText(couple.stored), couple.medium]).toEqual([
      id,
      half,
      potential,
      medium,
    ]);
  });
  it.each([
    ['Cu', 'bad-half-cell'],
    ['', 'bad-half-cell'],
    ['Cu^2+/Cu', 'no-potential'],
    ['Cu2+/Cu=0.34', 'bad-formula'],
    ['Fe^2+/Fe^3+=0.77', 'not-a-reduction'],
    ['Fe^3+ -> Fe^2+ = 0.77', 'not-a-reduction'],
  ])('%s is refused', (text, expected) => {
    expect(code(() => ownCouple(parseHalfCell(text)))).toBe(expected);
  });
});

describe('a cell representation', () => {
  it('is read back to its half-equations, for any two couples of the table', () => {
    const odd = new Set<string>();
    for (const couple of tables.couples.filter((each) => each.id !== 'H^+/H2')) {
      const { text } = cellNotation(tables.couple('H^+/H2'), couple, tables.speciesOf);
      const { right } = parseCellNotation(text);
      try {
        if (!sameEquation(halfOf(right), couple.half)) odd.add(couple.id);
      } catch (error) {
        if (!(error instanceof Fault)) throw error;
        odd.add(couple.id);
      }
    }
    // Water is not shown, so what is reduced to water cannot be told from its representation.
    expect([...odd].sort()).toEqual(['H2O2/H2O', 'O2/H2O']);
  });
  it.each([
    ['Zn(s) | Zn^2+(aq)', 'bad-cell'],
    ['Zn(s) | Zn^2+(aq) || Cu^2+(aq) | Cu(s) || Fe', 'bad-cell'],
    ['Zn(s) | Zn2+(aq) || Cu^2+(aq) | Cu(s)', 'bad-formula'],
  ])('%s is refused', (text, expected) => {
    expect(code(() => parseCellNotation(text))).toBe(expected);
  });
});
