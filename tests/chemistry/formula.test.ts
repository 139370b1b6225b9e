import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atomsOf, composition, totalAtoms } from '../../src/chemistry/composition.ts';
import type { Formula, FormulaNode, State } from '../../src/chemistry/formula.ts';
import { molarMass } from '../../src/chemistry/molar-mass.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { keyOf, sameSpecies, writeFormula } from '../../src/chemistry/write-formula.ts';
import { decimalText, parseDecimal } from '../../src/exact/decimal.ts';
import { Fault } from '../../src/exact/fault.ts';

const faultOf = (text: string): Fault => {
  try {
    parseFormula(text);
  } catch (error) {
    if (error instanceof Fault) return error;
    throw error;
  }
  throw new Error(`\`${text}\` was read without a fault`);
};
const underlined = (fault: Fault): string => fault.place.text!.slice(fault.place.at, fault.place.at! + fault.place.length!);

describe('a formula', () => {
  it.each([
    'MnO4^-',
    'Fe^3+',
    '[Fe(CN)6]^3-',
    'CuSO4·5H2O',
    'e^-',
    'I2(aq)',
    'Cr2O7^2-(aq)',
    'Ca(OH)2(s)',
    'KAl(SO4)2·12H2O',
    '[Co(NH3)6]Cl3',
    'Hg2^2+',
    '[Pt(NH3)4][PtCl4]',
    'NiO(OH)',
    'H^+',
  ])('is written as it was read: %s', (text) => {
    expect(writeFormula(parseFormula(text))).toBe(text);
  });

  it.each([
    ['Cr₂O₇²⁻', 'Cr2O7^2-'],
    ['VO₂⁺', 'VO2^+'],
    ['Fe³⁺(aq)', 'Fe^3+(aq)'],
    ['e⁻', 'e^-'],
    ['[Fe(CN)₆]³⁻', '[Fe(CN)6]^3-'],
    ['CuSO4*5H2O', 'CuSO4·5H2O'],
    ['CuSO4.5H2O', 'CuSO4·5H2O'],
    ['CuSO₄ · 5H₂O', 'CuSO4·5H2O'],
    ['SO4^2−', 'SO4^2-'],
    [' MnO4^- (aq) ', 'MnO4^-(aq)'],
    ['Na1Cl1', 'NaCl'],
    ['[Co(en)3]^3+', '[Co(NH2CH2CH2NH2)3]^3+'],
  ])('is read from other spellings: %s as %s', (typed, plain) => {
    expect(writeFormula(parseFormula(typed))).toBe(plain);
  });

  it('reads carbon monoxide and cobalt apart', () => {
    expect([...composition(parseFormula('CO'))]).toEqual([
      ['C', 1],
      ['O', 1],
    ]);
    expect([...composition(parseFormula('Co'))]).toEqual([['Co', 1]]);
  });

  it('counts charge beside the elements', () => {
    expect(Object.fromEntries(composition(parseFormula('[Fe(CN)6]^3-')))).toEqual({ Fe: 1, C: 6, N: 6, charge: -3 });
    expect(Object.fromEntries(composition(parseFormula('e^-')))).toEqual({ charge: -1 });
    expect(atomsOf(parseFormula('CuSO4·5H2O'), 'O')).toBe(9);
    expect(totalAtoms(parseFormula('CuSO4·5H2O'))).toBe(21);
  });

  it('is the same species in any state', () => {
    expect(sameSpecies(parseFormula('I2(s)'), parseFormula('I2(aq)'))).toBe(true);
    expect(keyOf(parseFormula('I2(s)'))).toBe('I2');
    expect(sameSpecies(parseFormula('Fe^2+'), parseFormula('Fe^3+'))).toBe(false);
  });
});

describe('a fault in a formula', () => {
  it.each([
    ['Fe3+', 'Fe3+', 'for the iron(III) ion write `Fe^3+`'],
    ['Na+', 'Na+', 'for the sodium(I) ion write `Na^+`'],
    ['Cl-', 'Cl-', 'for an ion of charge 1- write `Cl^-`'],
    ['MnO4-', 'MnO4-', 'for an ion of charge 1- write `MnO4^-`'],
    ['SO42-', 'SO42-', 'for an ion of charge 2- write `SO4^2-`'],
    ['SO4 2-', 'SO4 2-', 'for an ion of charge 2- write `SO4^2-`'],
    ['Fe 3+', 'Fe 3+', 'for the iron(III) ion write `Fe^3+`'],
    ['Cr2O72-', 'Cr2O72-', 'for an ion of charge 2- write `Cr2O7^2-`'],
    ['KXx2', 'Xx', 'no element has the symbol `Xx`'],
    ['CL2', 'L', 'no element has the symbol `L`'],
    ['fe2O3', 'fe', 'a symbol begins with a capital letter: `Fe`'],
    ['Ca(OH2', '(', 'the bracket `(` is not closed'],
    ['[Fe(CN)6)', ')', 'expected `]` to close the bracket, found `)`'],
    ['CaOH)2', ')', 'the bracket `)` closes nothing'],
    ['2H2O', '2', 'a number in front of it belongs to an equation'],
    ['H02', '02', 'expected a number from 1 to 9999'],
    ['Fe^3', '^3', 'a number and then a sign'],
    ['Fe^+3', '^+3', 'the number first and one sign'],
    ['Fe^++', '^++', 'the number first and one sign'],
    ['e-', 'e-', 'for the electron write `e^-`'],
    ['CuSO4·', 'CuSO4·', 'expected an element or a bracket, found the end'],
    ['Cu?', '?', 'expected the end of the formula, found `?`'],
    ['', '', 'expected a formula'],
    ['Cr₂O₇₂⁻X', 'X', 'expected the end of the formula'],
  ])('underlines what is wrong in `%s`', (text, place, message) => {
    const fault = faultOf(text);
    expect(fault.message).toContain(message);
    if (text !== '' && !text.endsWith('·')) expect(underlined(fault)).toBe(place);
  });

  it('is all that any text can bring about', () => {
    const pieces = fc.constantFrom(
      'Fe',
      'O',
      '2',
      '(',
      ')',
      '[',
      ']',
      '^',
      '+',
      '-',
      '·',
      '₂',
      '²',
      '⁺',
      'e',
      'aq',
      '(s)',
      ' ',
      'x',
      '0',
      '\n',
      '💧',
    );
    const text = fc.oneof(
      fc.string({ maxLength: 40 }),
      fc.string({ unit: 'binary', maxLength: 20 }),
      fc.array(pieces).map((run) => run.join('')),
    );
    fc.assert(
      fc.property(text, (typed) => {
        try {
          const formula = parseFormula(typed);
          expect(parseFormula(writeFormula(formula))).toEqual(formula);
        } catch (error) {
          if (!(error instanceof Fault)) throw error;
          expect(error.place.at).toBeGreaterThanOrEqual(0);
          expect(error.message).not.toContain('undefined');
        }
      }),
      { numRuns: 5000 },
    );
  });
});

describe('print and parse', () => {
  const count = fc.oneof(fc.constant(1), fc.integer({ min: 1, max: 10 }));
  const element = fc.record({
    kind: fc.constant('element' as const),
    symbol: fc.constantFrom('H', 'C', 'Co', 'O', 'Cl', 'Fe', 'S', 'I', 'Og'),
    count,
  });
  const nodes: fc.Arbitrary<readonly FormulaNode[]> = fc.letrec<{ nodes: readonly FormulaNode[]; node: FormulaNode }>((tie) => ({
    nodes: fc.array(tie('node'), { minLength: 1, maxLength: 3 }),
    node: fc.oneof(
      { maxDepth: 2 },
      element,
      fc.record({
        kind: fc.constant('group' as const),
        bracket: fc.constantFrom('(' as const, '[' as const),
        nodes: tie('nodes'),
        count,
      }),
    ),
  })).nodes;
  const formulas: fc.Arbitrary<Formula> = fc
    .record({
      first: nodes,
      rest: fc.array(fc.record({ count, nodes }), { maxLength: 2 }),
      charge: fc.integer({ min: -9, max: 9 }),
      state: fc.constantFrom<State | undefined>('s', 'l', 'g', 'aq', undefined),
    })
    .map(({ first, rest, charge, state }) => {
      const units = [{ count: 1, nodes: first }, ...rest];
      return state ? { units, charge, state } : { units, charge };
    });

  it('undo one another', () => {
    fc.assert(
      fc.property(formulas, (formula) => {
        expect(parseFormula(writeFormula(formula))).toEqual(formula);
      }),
    );
  });
});

describe('a molar mass', () => {
  const masses = new Map(
    Object.entries({ H: '1.0', O: '16.0', S: '32.1', Cu: '63.5', Fe: '55.8', C: '12.011' }).map(([symbol, text]) => [
      symbol,
      parseDecimal(text),
    ]),
  );
  it('is the exact sum of the printed masses', () => {
    expect(decimalText(molarMass(parseFormula('CuSO4·5H2O'), masses))).toBe('249.6');
  });
  it('has the decimals of the least precise mass', () => {
    expect(molarMass(parseFormula('CO2'), masses).places).toBe(1);
    expect(molarMass(parseFormula('CO2'), masses).value.toString()).toBe('44011/1000');
  });
  it('asks for a mass that is not given', () => {
    expect(() => molarMass(parseFormula('XeF2'), masses)).toThrow('no relative atomic mass is given for Xe');
  });
});
