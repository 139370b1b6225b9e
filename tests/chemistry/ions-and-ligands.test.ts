import { describe, expect, it } from 'vitest';
import { BOND_ANGLES } from '../../src/chemistry/complex.ts';
import { allElements, isMetal } from '../../src/chemistry/elements.ts';
import { allIons } from '../../src/chemistry/ions.ts';
import { allLigands } from '../../src/chemistry/ligands.ts';
import { nameOf } from '../../src/chemistry/name.ts';
import { oxidationNumbers } from '../../src/chemistry/oxidation-numbers.ts';
import { sumOfSites } from '../../src/chemistry/oxidation-sites.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';

describe('the known ions', () => {
  it.each(allIons())('$text has oxidation numbers that add up to its charge, and its own name', ({ text, charge, name }) => {
    const formula = { ...parseFormula(text), charge };
    expect(sumOfSites(oxidationNumbers(formula).sites).toString()).toBe(String(charge));
    expect(nameOf(formula).name).toBe(`${name} ion`);
  });
});

describe('the known ligands', () => {
  it.each(allLigands())('$text has oxidation numbers that add up to its charge', ({ text, charge }) => {
    const formula = { ...parseFormula(text), charge };
    expect(sumOfSites(oxidationNumbers(formula).sites).toString()).toBe(String(charge));
  });
});

describe('the elements', () => {
  it('are 118, in order, with their places in the periodic table', () => {
    const elements = allElements();
    expect(elements).toHaveLength(118);
    expect(elements.map((element) => element.number)).toEqual(elements.map((_, index) => index + 1));
    const place = (symbol: string) => {
      const { group, period } = elements.find((element) => element.symbol === symbol)!;
      return [group, period];
    };
    expect([
      place('H'),
      place('He'),
      place('Al'),
      place('Sc'),
      place('Zn'),
      place('Ga'),
      place('La'),
      place('Lu'),
      place('Og'),
    ]).toEqual([
      [1, 1],
      [18, 1],
      [13, 3],
      [3, 4],
      [12, 4],
      [13, 4],
      [undefined, 6],
      [3, 6],
      [18, 7],
    ]);
  });
  it('are metals or not', () => {
    expect(['Fe', 'Na', 'Al', 'Sn', 'U'].every(isMetal)).toBe(true);
    expect(['H', 'C', 'Si', 'I', 'Ar', 'As'].some(isMetal)).toBe(false);
  });
});

describe('the bond angles', () => {
  it('are those of regular shapes', () => {
    expect(BOND_ANGLES).toMatchObject({ linear: [180], tetrahedral: [109.5], octahedral: [90], 'square planar': [90] });
  });
});
