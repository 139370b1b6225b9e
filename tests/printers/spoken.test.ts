import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allElements, isElement } from '../../src/chemistry/elements.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { readSpokenEquation, readSpokenFormula } from '../../src/document/read-spoken.ts';
import { speakEquation, speakFormula, speakInlines, speakQuantity } from '../../src/document/spoken.ts';
import { say } from '../pages/say.ts';
import { equations, formulas } from './arbitraries.ts';

describe('the spoken form of a formula', () => {
  it.each([
    ['MnO4^-', 'M small n O 4, charge 1 minus'],
    ['Co', 'C small o'],
    ['CO', 'C O'],
    ['Fe^3+', 'F small e, charge 3 plus'],
    ['[Fe(CN)6]^3-', 'open square bracket F small e open bracket C N close bracket 6 close square bracket, charge 3 minus'],
    ['CuSO4·5H2O', 'C small u S O 4 dot 5 H 2 O'],
    ['Zn(s)', 'Z small n, solid'],
    ['e^-', 'electron'],
  ])('of %s is "%s"', (formula, spoken) => {
    expect(speakFormula(parseFormula(formula))).toBe(spoken);
  });

  it('tells VO₂⁺ from VO²⁺', () => {
    expect(speakFormula(parseFormula('VO2^+'))).not.toBe(speakFormula(parseFormula('VO^2+')));
  });

  it('parses back to the same formula', () => {
    fc.assert(
      fc.property(formulas, (formula) => {
        expect(readSpokenFormula(speakFormula(formula))).toEqual(formula);
      }),
    );
  });

  it('sounds like no other formula: every two-letter symbol differs by ear from its letters as two elements', () => {
    const heard = (formula: string) => speakFormula(parseFormula(formula)).toLowerCase();
    const doubtful = allElements().filter(({ symbol }) => symbol.length === 2 && [...symbol.toUpperCase()].every(isElement));
    for (const { symbol } of allElements()) expect(heard(symbol).includes('small')).toBe(symbol.length === 2);
    expect(doubtful.map(({ symbol }) => symbol)).toContain('Co');
    for (const { symbol } of doubtful) expect(heard(symbol)).not.toBe(heard(symbol.toUpperCase()));
  });

  it('is refused when it is none', () => {
    expect(() => readSpokenFormula('manganate')).toThrow('expected a capital letter');
    expect(() => readSpokenFormula('M n O 4, charged')).toThrow('expected a charge or a state');
    expect(() => readSpokenFormula('open bracket C N')).toThrow('expected `close bracket`');
  });
});

describe('the spoken form of an equation', () => {
  it('names the arrow and keeps every charge with its species', () => {
    expect(speakEquation(parseEquation('Fe^3+ + e^- <=> Fe^2+'), 'reversible')).toBe(
      'F small e, charge 3 plus, plus 1 electron, in equilibrium with F small e, charge 2 plus',
    );
  });

  it('parses back to the same equation', () => {
    fc.assert(
      fc.property(equations, fc.constantFrom('forward' as const, 'reversible' as const), (equation, arrow) => {
        expect(readSpokenEquation(speakEquation(equation, arrow))).toEqual({ equation, arrow });
      }),
    );
  });
});

describe('other spoken inlines', () => {
  it('say powers and signs in words', () => {
    expect(speakQuantity('3.70×10^-4', 'mol dm^-3')).toBe('3.70 times 10 to the minus 4 mol dm to the minus 3');
    expect(speakQuantity('−0.76', 'V')).toBe('minus 0.76 V');
  });

  it('say a fraction with its end', () => {
    expect(speakInlines(say('{frac 1 | 2} of {E°cell}'))).toBe('fraction 1 over 2 end of fraction of E standard cell');
  });
});
