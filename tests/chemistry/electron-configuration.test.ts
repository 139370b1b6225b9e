import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dElectrons, unpairedInComplex } from '../../src/chemistry/complex.ts';
import { configurationOf, electronConfiguration } from '../../src/chemistry/electron-configuration.ts';
import { allElements } from '../../src/chemistry/elements.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { transitionElement } from '../../src/chemistry/transition-element.ts';

const of = (text: string) => electronConfiguration(parseFormula(text));

describe('electron configurations', () => {
  it.each([
    ['H', '1s1'],
    ['H^+', '1s0'],
    ['O^2-', '[Ne]'],
    ['Ar', '[Ne] 3s2 3p6'],
    ['Ti', '[Ar] 3d2 4s2'],
    ['Cr', '[Ar] 3d5 4s1'],
    ['Cu', '[Ar] 3d10 4s1'],
    ['Cr^3+', '[Ar] 3d3'],
    ['Fe^2+', '[Ar] 3d6'],
    ['Fe^3+', '[Ar] 3d5'],
    ['Cu^+', '[Ar] 3d10'],
    ['Sc^3+', '[Ar]'],
    ['Br^-', '[Kr]'],
    ['[Fe(CN)6]^4-', '[Ar] 3d6'],
    ['[Co(NH3)6]Cl3', '[Ar] 3d6'],
  ])('of %s is %s', (text, configuration) => {
    expect(of(text).text).toBe(configuration);
  });
  it('are written in full too, with their unpaired electrons', () => {
    expect(of('V^2+')).toMatchObject({ full: '1s2 2s2 2p6 3s2 3p6 3d3', unpaired: 3 });
    expect(of('Cr').unpaired).toBe(6);
    expect(of('Zn^2+').unpaired).toBe(0);
  });
  it('hold every electron, no subshell over-full', () => {
    fc.assert(
      fc.property(fc.constantFrom(...allElements()), fc.integer({ min: -3, max: 8 }), (element, charge) => {
        fc.pre(charge <= element.number);
        const { subshells } = configurationOf(element.symbol, charge);
        expect(subshells.reduce((sum, { electrons }) => sum + electrons, 0)).toBe(element.number - charge);
        for (const { n, l, electrons } of subshells) {
          expect(l).toBeLessThan(n);
          expect(electrons).toBeLessThanOrEqual(4 * l + 2);
        }
      }),
    );
  });
  it('lose 4s before 3d in every ion of the first row of the d block', () => {
    for (const symbol of ['Ti', 'V', 'Cr', 'Mn', 'Fe', 'Co', 'Ni', 'Cu', 'Zn']) {
      expect(configurationOf(symbol, 2).subshells.some(({ n, l }) => n === 4 && l === 0)).toBe(false);
    }
  });
  it.each([['MnO4^-'], ['O2'], ['NaCl']])('are not given for %s', (text) => {
    expect(() => of(text)).toThrow(expect.objectContaining({ code: 'not-an-atom' }));
  });
  it('are not given for a charge beyond the electrons', () => {
    expect(() => of('He^3+')).toThrow(expect.objectContaining({ code: 'too-few-electrons' }));
  });
});

describe('a transition element', () => {
  it.each([
    ['Sc', false, true],
    ['Ti', true, true],
    ['Cu', true, true],
    ['Zn', false, false],
    ['Ag', true, true],
    ['Ca', false, false],
    ['Ga', false, false],
    ['Ce', false, false],
  ])('%s: school %s, IUPAC %s', (symbol, school, iupac) => {
    expect(transitionElement(symbol)).toMatchObject({ school, iupac });
  });
});

describe('d electrons of a complex', () => {
  it('are counted from the group', () => {
    expect([dElectrons('Fe', 3), dElectrons('Cu', 2), dElectrons('V', 5)]).toEqual([5, 9, 0]);
    expect(() => dElectrons('Na', 1)).toThrow(expect.objectContaining({ code: 'not-d-block' }));
  });
  it('pair up in low spin', () => {
    expect([4, 5, 6, 7].map((d) => unpairedInComplex(d, 'octahedral', 'low'))).toEqual([2, 1, 0, 1]);
    expect([4, 5, 6, 7].map((d) => unpairedInComplex(d, 'octahedral', 'high'))).toEqual([4, 5, 4, 3]);
    expect(unpairedInComplex(8, 'square planar')).toBe(0);
    expect(unpairedInComplex(8, 'tetrahedral')).toBe(2);
  });
});
