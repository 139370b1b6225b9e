import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cell, spontaneousCell, standardEmf } from '../../src/chemistry/cell.ts';
import { cellNotation } from '../../src/chemistry/cell-notation.ts';
import { confirm } from '../../src/chemistry/confirm.ts';
import type { Couple } from '../../src/chemistry/couple.ts';
import { lowestTerms, reverseEquation, sameEquation } from '../../src/chemistry/terms.ts';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { decimalText, parseDecimal } from '../../src/exact/decimal.ts';
import { Rational } from '../../src/exact/rational.ts';
import { tables } from './tables.ts';

const couple = (id: string, stored?: string): Couple => {
  const found = tables.couple(id);
  return stored ? { ...found, stored: parseDecimal(stored) } : found;
};

describe('a cell', () => {
  it('has the difference of two potentials as its e.m.f., with the decimals of the less precise', () => {
    const found = cell(couple('Zn^2+/Zn', '-0.7618'), couple('Ag^+/Ag', '0.80'), 'stored');
    expect(decimalText(found.emf)).toBe('1.56');
    expect(found.emf.value.toString()).toBe('7809/5000');
    expect(found.feasible).toBe(true);
    expect(writeEquation(found.combined.equation)).toBe('2Ag^+ + Zn -> 2Ag + Zn^2+');
    expect(found.combined.electrons.toString()).toBe('2');
  });
  it('counts by what is printed when asked', () => {
    const found = cell(couple('Zn^2+/Zn'), couple('Ag^+/Ag'), 'printed');
    expect(found.emf.value.toString()).toBe('39/25');
  });
  it('takes the zero of hydrogen as exact', () => {
    expect(decimalText(cell(couple('Zn^2+/Zn', '-0.7618'), couple('H^+/H2'), 'stored').emf)).toBe('0.7618');
  });
  it('can be written the wrong way round, and is then not feasible', () => {
    const found = cell(couple('Ag^+/Ag', '0.80'), couple('Zn^2+/Zn', '-0.76'), 'stored');
    expect(decimalText(found.emf)).toBe('-1.56');
    expect(found.feasible).toBe(false);
    expect(spontaneousCell(found.negative, found.positive, 'stored').negative.id).toBe('Zn^2+/Zn');
  });
  it('needs two couples', () => {
    expect(() => cell(couple('Ag^+/Ag'), couple('Ag^+/Ag'), 'stored')).toThrow(expect.objectContaining({ code: 'same-couple' }));
  });

  const any = fc.constantFrom(...tables.couples);
  it('and its reverse have opposite e.m.f. and reversed equations, and are never both feasible', () => {
    fc.assert(
      fc.property(any, any, fc.constantFrom('stored' as const, 'printed' as const), (one, other, values) => {
        fc.pre(one.id !== other.id);
        const [there, back] = [cell(one, other, values), cell(other, one, values)];
        expect(back.emf.value.equals(there.emf.value.negate())).toBe(true);
        expect(there.feasible && back.feasible).toBe(false);
        expect(sameEquation(lowestTerms(reverseEquation(there.combined.equation)), back.combined.equation)).toBe(true);
        expect(confirm(there.combined.equation, other.half, one.half).agrees).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
  it('keeps its e.m.f. when a half-equation is multiplied, and around a triangle of couples', () => {
    fc.assert(
      fc.property(any, any, any, (a, b, c) => {
        const doubled = { ...b, half: { ...b.half, electrons: b.half.electrons.times(Rational.of(2)) } };
        expect(standardEmf(a, doubled, 'stored').value.equals(standardEmf(a, b, 'stored').value)).toBe(true);
        const around = standardEmf(a, b, 'stored').value.plus(standardEmf(b, c, 'stored').value);
        expect(around.equals(standardEmf(a, c, 'stored').value)).toBe(true);
      }),
    );
  });
});

describe('a cell representation', () => {
  it.each([
    ['Zn^2+/Zn', 'Cu^2+/Cu', 'Zn(s) | Zn^2+(aq) ‖ Cu^2+(aq) | Cu(s)'],
    ['Zn^2+/Zn', 'Fe^3+/Fe^2+', 'Zn(s) | Zn^2+(aq) ‖ Fe^3+(aq), Fe^2+(aq) | Pt(s)'],
    ['H^+/H2', 'Ag^+/Ag', 'Pt(s) | H2(g) | H^+(aq) ‖ Ag^+(aq) | Ag(s)'],
    ['Fe^3+/Fe^2+', 'MnO4^-/Mn^2+', 'Pt(s) | Fe^2+(aq), Fe^3+(aq) ‖ MnO4^-(aq), H^+(aq), Mn^2+(aq) | Pt(s)'],
    ['AgCl/Ag', 'Cl2/Cl^-', 'Ag(s) | AgCl(s) | Cl^-(aq) ‖ Cl2(g) | Cl^-(aq) | Pt(s)'],
    ['V^3+/V^2+', 'O2/H2O', 'Pt(s) | V^2+(aq), V^3+(aq) ‖ O2(g) | H^+(aq) | Pt(s)'],
    ['[Zn(OH)4]^2-/Zn', 'Hg^2+/Hg', 'Zn(s) | OH^-(aq), [Zn(OH)4]^2-(aq) ‖ Hg^2+(aq) | Hg(l)'],
  ])('of %s and %s is %s', (negative, positive, text) => {
    const found = cellNotation(tables.couple(negative), tables.couple(positive), tables.speciesOf);
    expect(found.text).toBe(text);
  });
  it('has another order that is as right where the oxidised form is a gas or a solid', () => {
    const found = cellNotation(tables.couple('Zn^2+/Zn'), tables.couple('Cl2/Cl^-'));
    expect(found.alternatives).toEqual(['Zn(s) | Zn^2+(aq) ‖ Cl^-(aq) | Cl2(g) | Pt(s)']);
  });
  it('shows platinum exactly where no metal of the couple carries the current', () => {
    for (const each of tables.couples.filter((one) => one.id !== 'H^+/H2')) {
      const { right } = cellNotation(tables.couple('H^+/H2'), each, tables.speciesOf);
      const metal = each.half.left
        .concat(each.half.right)
        .some(
          ({ formula }) =>
            /^[A-Z][a-z]?$/.test(each.reducedKey) && formula.state !== 'g' && each.reducedKey !== 'S' && formula === each.reduced,
        );
      expect([each.id, right.inert]).toEqual([each.id, !metal]);
    }
  });
});
