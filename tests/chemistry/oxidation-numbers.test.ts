import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composition, totalAtoms } from '../../src/chemistry/composition.ts';
import { oxidationNumbers } from '../../src/chemistry/oxidation-numbers.ts';
import { oxidationText } from '../../src/chemistry/oxidation-rules.ts';
import { sumOfSites } from '../../src/chemistry/oxidation-sites.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { oxidisedIn, reducedIn } from '../../src/chemistry/redox-changes.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import { Fault } from '../../src/exact/fault.ts';

const numbers = (text: string) =>
  oxidationNumbers(parseFormula(text))
    .sites.map(({ element, number, atoms }) => `${element}${atoms}:${oxidationText(number).replace('−', '-')}`)
    .join(' ');

describe('oxidation numbers', () => {
  it.each([
    // elements and single ions
    ['Fe', 'Fe1:0'],
    ['S8', 'S8:0'],
    ['O3', 'O3:0'],
    ['Fe^3+', 'Fe1:+3'],
    ['I3^-', 'I3:-1/3'],
    ['Hg2^2+', 'Hg2:+1'],
    // oxygen
    ['H2O2', 'H2:+1 O2:-1'],
    ['HO2^-', 'H1:+1 O2:-1'],
    ['BaO2', 'Ba1:+2 O2:-1'],
    ['KO2', 'K1:+1 O2:-1/2'],
    ['O2^2-', 'O2:-1'],
    ['O2^-', 'O2:-1/2'],
    ['OF2', 'O1:+2 F2:-1'],
    ['O2F2', 'O2:+1 F2:-1'],
    ['CrO5', 'Cr1:+6 O1:-2 O4:-1'],
    ['S2O8^2-', 'S2:+6 O6:-2 O2:-1'],
    ['K2S2O8', 'K2:+1 S2:+6 O6:-2 O2:-1'],
    // hydrogen
    ['NaH', 'Na1:+1 H1:-1'],
    ['CaH2', 'Ca1:+2 H2:-1'],
    ['LiAlH4', 'Li1:+1 Al1:+3 H4:-1'],
    ['NaBH4', 'Na1:+1 B1:+3 H4:-1'],
    ['NH3', 'N1:-3 H3:+1'],
    ['N2H4', 'N2:-2 H4:+1'],
    // oxoanions, averages
    ['MnO4^-', 'Mn1:+7 O4:-2'],
    ['MnO4^2-', 'Mn1:+6 O4:-2'],
    ['Cr2O7^2-', 'Cr2:+6 O7:-2'],
    ['VO2^+', 'V1:+5 O2:-2'],
    ['VO^2+', 'V1:+4 O1:-2'],
    ['S2O3^2-', 'S2:+2 O3:-2'],
    ['S4O6^2-', 'S4:+5/2 O6:-2'],
    ['Fe3O4', 'Fe3:+8/3 O4:-2'],
    ['ClO^-', 'Cl1:+1 O1:-2'],
    ['HOCl', 'H1:+1 O1:-2 Cl1:+1'],
    ['IO3^-', 'I1:+5 O3:-2'],
    ['C2O4^2-', 'C2:+3 O4:-2'],
    ['CH3COOH', 'C2:0 H4:+1 O2:-2'],
    ['C2H5OH', 'C2:-2 H6:+1 O1:-2'],
    // halogens with each other and with oxygen and metals
    ['ICl3', 'I1:+3 Cl3:-1'],
    ['BrCl', 'Br1:+1 Cl1:-1'],
    ['CrO2Cl2', 'Cr1:+6 O2:-2 Cl2:-1'],
    ['SO2Cl2', 'S1:+6 O2:-2 Cl2:-1'],
    ['BiOCl', 'Bi1:+3 O1:-2 Cl1:-1'],
    // salts, ion by ion
    ['NH4NO3', 'N1:-3 N1:+5 H4:+1 O3:-2'],
    ['(NH4)2Cr2O7', 'N2:-3 H8:+1 Cr2:+6 O7:-2'],
    ['(NH4)2Fe(SO4)2·6H2O', 'N2:-3 H20:+1 Fe1:+2 S2:+6 O14:-2'],
    ['NH4VO3', 'N1:-3 H4:+1 V1:+5 O3:-2'],
    ['CuSO4·5H2O', 'Cu1:+2 S1:+6 O9:-2 H10:+1'],
    ['ZnSO4', 'Zn1:+2 S1:+6 O4:-2'],
    ['FeC2O4', 'Fe1:+2 C2:+3 O4:-2'],
    ['Fe2(SO4)3', 'Fe2:+3 S3:+6 O12:-2'],
    ['KCr(SO4)2·12H2O', 'K1:+1 Cr1:+3 S2:+6 O20:-2 H24:+1'],
    ['PbCrO4', 'Pb1:+2 Cr1:+6 O4:-2'],
    ['AgClO4', 'Ag1:+1 Cl1:+7 O4:-2'],
    ['Cu(NO3)2', 'Cu1:+2 N2:+5 O6:-2'],
    ['VOSO4', 'V1:+4 O5:-2 S1:+6'],
    ['LiFePO4', 'Li1:+1 Fe1:+2 P1:+5 O4:-2'],
    ['KSCN', 'K1:+1 S1:-2 C1:+4 N1:-3'],
    ['CN^-', 'C1:+2 N1:-3'],
    ['HCN', 'H1:+1 C1:+2 N1:-3'],
    ['(CN)2', 'C2:+3 N2:-3'],
    ['Hg2Cl2', 'Hg2:+1 Cl2:-1'],
    ['FeS2', 'Fe1:+2 S2:-1'],
    // complexes
    ['[Fe(CN)6]^3-', 'Fe1:+3 C6:+2 N6:-3'],
    ['K4[Fe(CN)6]', 'K4:+1 Fe1:+2 C6:+2 N6:-3'],
    ['[Co(NH3)6]Cl3', 'Co1:+3 N6:-3 H18:+1 Cl3:-1'],
    ['[CoCl(NH3)5]Cl2', 'Co1:+3 Cl3:-1 N5:-3 H15:+1'],
    ['[Cu(NH3)4(H2O)2]^2+', 'Cu1:+2 N4:-3 H16:+1 O2:-2'],
    ['Cu(NH3)4^2+', 'Cu1:+2 N4:-3 H12:+1'],
    ['[Fe(SCN)(H2O)5]^2+', 'Fe1:+3 S1:-2 C1:+4 N1:-3 H10:+1 O5:-2'],
    ['[Co(en)3]^3+', 'Co1:+3 N6:-3 H24:+1 C6:-1'],
    ['K3[Fe(C2O4)3]', 'K3:+1 Fe1:+3 C6:+3 O12:-2'],
    ['[Pt(NH3)4][PtCl4]', 'Pt2:+2 N4:-3 H12:+1 Cl4:-1'],
    ['[Ag(S2O3)2]^3-', 'Ag1:+1 S4:+2 O6:-2'],
    ['[Zn(OH)4]^2-', 'Zn1:+2 O4:-2 H4:+1'],
    ['[VO(H2O)5]^2+', 'V1:+4 O6:-2 H10:+1'],
    ['Ni(CO)4', 'Ni1:0 C4:+2 O4:-2'],
    ['[Co(edta)]^-', 'Co1:+3 C10:+3/5 H12:+1 N2:-3 O8:-2'],
  ])('of %s are %s', (text, expected) => {
    expect(numbers(text)).toBe(expected);
  });

  it.each(['CuFeS2', 'FeCr2O4', 'Fe4[Fe(CN)6]3', 'e^-', '[Co(NH3)6][Cr(CN)6]'])('of %s are not decided by the rules', (text) => {
    expect(() => numbers(text)).toThrow(expect.objectContaining({ code: 'undecided' }));
  });

  it('are explained by the rules that were used', () => {
    expect(oxidationNumbers(parseFormula('K2Cr2O7')).rules).toEqual([
      'potassium, in group 1, is +1',
      'oxygen is −2, except in peroxides, superoxides and with fluorine',
      'the numbers add up to zero, so chromium is +6',
    ]);
    expect(oxidationNumbers(parseFormula('KO2')).rules.at(-1)).toBe('this is a superoxide');
    expect(oxidationNumbers(parseFormula('S4O6^2-')).rules.at(-1)).toContain('two sulfur atoms are +5, two are 0');
  });

  it('add up to the charge, and count every atom, whenever they are decided', () => {
    const symbols = fc.constantFrom(
      'K',
      'Fe',
      'O',
      'H',
      'S',
      'Cl',
      'N',
      'C',
      '(SO4)',
      '(NH3)',
      '(OH)',
      'F',
      'Cu',
      '[Fe(CN)6]',
      'NH4',
    );
    const count = fc.constantFrom('', '2', '3', '4');
    const text = fc.tuple(
      fc.array(
        fc.tuple(symbols, count).map((pair) => pair.join('')),
        { minLength: 1, maxLength: 4 },
      ),
      fc.constantFrom('', '^-', '^2+', '^3-'),
    );
    let decided = 0;
    fc.assert(
      fc.property(text, ([parts, charge]) => {
        const formula = parseFormula(
          parts
            .join('')
            .replace(/^NH4(\d)/, '(NH4)$1')
            .replace(/NH4(\d)/g, '(NH4)$1') + charge,
        );
        try {
          const { sites } = oxidationNumbers(formula);
          expect(sumOfSites(sites).toString()).toBe(String(composition(formula).get('charge') ?? 0));
          expect(sites.reduce((sum, site) => sum + site.atoms, 0)).toBe(totalAtoms(formula));
          decided += 1;
        } catch (error) {
          if (!(error instanceof Fault)) throw error;
        }
      }),
      { numRuns: 3000 },
    );
    expect(decided).toBeGreaterThan(300);
  });
});

describe('what is oxidised and reduced', () => {
  it.each([
    ['MnO2 + 4HCl -> MnCl2 + Cl2 + 2H2O', ['HCl'], ['MnO2']],
    ['2MnO4^- + 5H2O2 + 6H^+ -> 2Mn^2+ + 5O2 + 8H2O', ['H2O2'], ['MnO4^-']],
    ['3ClO^- -> 2Cl^- + ClO3^-', ['ClO^-'], ['ClO^-']],
    ['IO3^- + 5I^- + 6H^+ -> 3I2 + 3H2O', ['I^-'], ['IO3^-']],
    ['2CrO4^2- + 2H^+ -> Cr2O7^2- + H2O', [], []],
    ['Ag^+ + Cl^- -> AgCl', [], []],
    ['3Cu + 8HNO3 -> 3Cu(NO3)2 + 2NO + 4H2O', ['Cu'], ['HNO3']],
    ['(NH4)2Cr2O7 -> Cr2O3 + N2 + 4H2O', ['(NH4)2Cr2O7'], ['(NH4)2Cr2O7']],
  ])('in %s', (text, oxidised, reduced) => {
    const equation = parseEquation(text);
    expect(oxidisedIn(equation).map(keyOf)).toEqual(oxidised);
    expect(reducedIn(equation).map(keyOf)).toEqual(reduced);
  });
});
