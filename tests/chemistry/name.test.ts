import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { complexOf } from '../../src/chemistry/complex.ts';
import { nameOf } from '../../src/chemistry/name.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { roman } from '../../src/chemistry/roman.ts';
import { Fault } from '../../src/exact/fault.ts';
import { tables } from './tables.ts';

describe('names', () => {
  it.each([
    ['CuSO4·5H2O', 'copper(II) sulfate pentahydrate', undefined],
    ['[Co(NH3)6]Cl3', 'hexaamminecobalt(III) chloride', undefined],
    ['[Cu(NH3)4(H2O)2]^2+', 'tetraamminediaquacopper(II) ion', undefined],
    ['Fe^3+', 'iron(III) ion', undefined],
    ['Cl^-', 'chloride ion', undefined],
    ['MnO4^-', 'manganate(VII) ion', 'permanganate ion'],
    ['MnO4^2-', 'manganate(VI) ion', undefined],
    ['K2Cr2O7', 'potassium dichromate(VI)', 'potassium dichromate'],
    ['(NH4)2Fe(SO4)2·6H2O', 'ammonium iron(II) sulfate hexahydrate', undefined],
    ['KAl(SO4)2·12H2O', 'aluminium potassium sulfate dodecahydrate', undefined],
    ['K4[Fe(CN)6]·3H2O', 'potassium hexacyanidoferrate(II) trihydrate', 'potassium hexacyanoferrate(II) trihydrate'],
    ['[Fe(H2O)5(SCN)]^2+', 'pentaaqua(thiocyanato)iron(III) ion', undefined],
    ['[Fe(C2O4)3]^3-', 'tris(ethanedioato)ferrate(III) ion', 'tris(oxalato)ferrate(III) ion'],
    ['[Zn(OH)4]^2-', 'tetrahydroxidozincate(II) ion', 'tetrahydroxozincate(II) ion'],
    [
      '[Co(edta)]^-',
      '[(ethane-1,2-diyldinitrilo)tetraacetato]cobaltate(III) ion',
      '(ethylenediaminetetraacetato)cobaltate(III) ion',
    ],
    ['Ni(CO)4', 'tetracarbonylnickel(0)', undefined],
    ['VOSO4', 'oxidovanadium(IV) sulfate', 'oxovanadium(IV) sulfate'],
    ['Fe3O4', 'iron(II,III) oxide', 'magnetite'],
    ['Na2O2', 'sodium peroxide', undefined],
    ['KO2', 'potassium superoxide', undefined],
    ['NaN3', 'sodium azide', undefined],
    ['Hg2Cl2', 'mercury(I) chloride', undefined],
    ['CuCO3·Cu(OH)2', 'copper(II) carbonate–copper(II) hydroxide (1/1)', undefined],
    ['NaHCO3', 'sodium hydrogencarbonate', 'sodium bicarbonate'],
    ['FeO4^2-', 'ferrate(VI) ion', undefined],
    ['N2O4', 'dinitrogen tetroxide', undefined],
    ['SO2', 'sulfur dioxide', undefined],
    ['SF6', 'sulfur hexafluoride', undefined],
    ['CO', 'carbon monoxide', undefined],
    ['I2', 'iodine', undefined],
    ['e^-', 'electron', undefined],
  ])('%s is %s', (text, name, tradeName) => {
    const found = nameOf(parseFormula(text));
    expect([found.name, found.tradeName]).toEqual([name, tradeName]);
  });

  it('go with what the complex is like', () => {
    const found = nameOf(parseFormula('[Co(NH3)6]Cl3'));
    expect([found.oxidationNumber?.toString(), found.coordinationNumber, found.shape]).toEqual(['3', 6, 'octahedral']);
  });

  it.each(['CuFeS2', 'C6H12O6', 'XeOF4'])('are not invented for %s', (text) => {
    expect(() => nameOf(parseFormula(text))).toThrow(Fault);
  });

  it('agree with the names in the species table, or with another that is accepted there', () => {
    const differing: string[] = [];
    for (const species of tables.species.values()) {
      let names: string[];
      try {
        const found = nameOf(species.formula);
        names = [found.name, found.tradeName ?? found.name];
      } catch (error) {
        if (error instanceof Fault) continue;
        throw error;
      }
      // The word ion and the brackets around a ligand's name are a matter of style.
      const bare = (name: string) => name.replace(/ ions?$/, '').replace(/[()[\]]/g, '');
      const known = [species.name, ...species.otherNames].map(bare);
      if (!names.some((name) => known.includes(bare(name))))
        differing.push(`${species.key}: ${names.join(' / ')} | ${known.join(' / ')}`);
    }
    expect(differing).toEqual([]);
  });

  it('come from any formula, or a fault', () => {
    const part = fc.constantFrom(
      'K',
      'Fe',
      'O',
      'H',
      'S',
      'Cl',
      'N',
      '(SO4)',
      '(NH3)',
      '(OH)',
      '[Fe(CN)6]',
      '[Co(en)3]',
      'NH4',
      '2',
      '3',
      '4',
      '·5H2O',
      '·',
    );
    fc.assert(
      fc.property(fc.array(part, { maxLength: 6 }), fc.constantFrom('', '^-', '^2+'), (parts, charge) => {
        try {
          const { name } = nameOf(parseFormula(parts.join('') + charge));
          expect(name).not.toMatch(/undefined|NaN|\(\)/);
        } catch (error) {
          if (!(error instanceof Fault)) throw error;
        }
      }),
      { numRuns: 3000 },
    );
  });
});

describe('a complex', () => {
  it.each([
    ['[Ag(NH3)2]^+', 2, 'linear', 1],
    ['[CoCl4]^2-', 4, 'tetrahedral', -2],
    ['[PtCl2(NH3)2]', 4, 'square planar', 0],
    ['[Ni(CN)4]^2-', 4, 'square planar', -2],
    ['[Cr(C2O4)3]^3-', 6, 'octahedral', -3],
    ['[Co(en)2Cl2]Cl', 6, 'octahedral', 1],
    ['[Fe(CO)5]', 5, 'trigonal bipyramidal', 0],
    ['K2[CuCl4]', 4, 'tetrahedral', -2],
  ])('%s has coordination number %i and is %s', (text, coordinationNumber, shape, charge) => {
    expect(complexOf(parseFormula(text))).toMatchObject({ coordinationNumber, shape, charge });
  });
  it('is not a hydroxide or a salt', () => {
    for (const text of ['Ca(OH)2', 'Cu(NO3)2', 'Fe^3+']) {
      expect(() => complexOf(parseFormula(text))).toThrow(expect.objectContaining({ code: 'not-a-complex' }));
    }
  });
});

describe('Roman numerals', () => {
  it('tell oxidation numbers', () => {
    expect([7, 4, 9, 0, -1, 2].map(roman)).toEqual(['VII', 'IV', 'IX', '0', '−I', 'II']);
  });
});
