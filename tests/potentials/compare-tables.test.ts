import { describe, expect, it } from 'vitest';
import { decimalText } from '../../src/exact/decimal.ts';
import { compareTables } from '../../src/potentials/compare-tables.ts';
import { laddersOf, pathOf } from '../../src/potentials/ladder-paths.ts';
import { parseTables } from '../../src/potentials/parse-tables.ts';
import { FILES, TABLES } from './default-tables.ts';

const withTable = (rows: string) => parseTables(FILES, { name: 'ours.csv', text: `half-equation,E°\n${rows}\n` });

describe('comparing two tables', () => {
  it('finds no difference between a table and itself', () => {
    expect(compareTables(TABLES, TABLES)).toEqual({ values: [], onlyFirst: [], onlySecond: [], pairs: [], ladders: [] });
  });

  it('lists values that differ and couples that only one of them has', () => {
    const { values, onlyFirst, onlySecond } = compareTables(
      TABLES,
      withTable('Zn^2+ + 2e^- <=> Zn,-0.77\nPd^2+ + 2e^- <=> Pd,0.92'),
    );
    expect(values.map(({ id, first, second }) => [id, decimalText(first), decimalText(second)])).toEqual([
      ['Zn^2+/Zn', '-0.7618', '-0.77'],
    ]);
    expect([onlyFirst, onlySecond]).toEqual([[], ['Pd^2+/Pd']]);
  });

  it('lists pairs whose feasibility changes, and no others', () => {
    const { pairs } = compareTables(TABLES, withTable('VO^2+ + 2H^+ + e^- <=> V^3+ + H2O,0.24'));
    const flips = pairs.map(({ oxidant, reductant, first, second }) => [
      oxidant,
      reductant,
      first.outcome,
      second.outcome,
      decimalText(second.emf),
    ]);
    expect(flips).toContainEqual(['VO^2+/V^3+', 'Sn^4+/Sn^2+', 'reacts', 'borderline', '0.09']);
    expect(flips).toContainEqual(['Cu^2+/Cu', 'VO^2+/V^3+', 'borderline', 'reacts', '0.10']);
    expect(flips.every(([one, other]) => one === 'VO^2+/V^3+' || other === 'VO^2+/V^3+')).toBe(true);
  });

  it('lists ladders that stop at another rung', () => {
    const { ladders } = compareTables(TABLES, withTable('Sn^2+ + 2e^- <=> Sn,-0.40'));
    expect(ladders).toContainEqual({
      start: 'VO2^+',
      reagent: 'Sn',
      first: ['VO2^+', 'VO^2+', 'V^3+'],
      second: ['VO2^+', 'VO^2+', 'V^3+', 'V^2+'],
    });
    expect(ladders.every(({ start, reagent }) => [start, reagent].some((key) => key.startsWith('Sn')))).toBe(true);
  });

  it('finds none of this when values differ only beyond what is printed', () => {
    const same = compareTables(TABLES, withTable('Zn^2+ + 2e^- <=> Zn,-0.7623\nAg^+ + e^- <=> Ag,0.7991'));
    expect(same.values).toHaveLength(2);
    expect([same.pairs, same.ladders]).toEqual([[], []]);
  });
});

describe('the ladders of the table', () => {
  it.each([
    ['VO2^+', 'Zn', 'VO2^+ VO^2+ V^3+ V^2+'],
    ['VO2^+', 'Sn', 'VO2^+ VO^2+ V^3+'],
    ['VO2^+', 'Sn^2+', 'VO2^+ VO^2+ V^3+'],
    ['VO2^+', 'Fe^2+', 'VO2^+ VO^2+'],
    ['VO2^+', 'I^-', 'VO2^+ VO^2+'],
    ['VO2^+', 'C2O4^2-', 'VO2^+ VO^2+'],
    ['Cr2O7^2-', 'Zn', 'Cr2O7^2- Cr^3+ Cr^2+'],
    ['Cr2O7^2-', 'Fe^2+', 'Cr2O7^2- Cr^3+'],
    ['V^2+', 'MnO4^-', 'V^2+ V^3+ VO^2+ VO2^+'],
    ['Fe^3+', 'Zn', 'Fe^3+ Fe^2+'],
  ])('take %s with %s to %s', (start, reagent, path) => {
    expect(laddersOf(TABLES)).toContainEqual({ start, reagent });
    expect(pathOf({ start, reagent }, TABLES).join(' ')).toBe(path);
  });
});
