import { describe, expect, it } from 'vitest';
import type { Hazard } from '../../src/chemistry/species.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import { TABLES } from './default-tables.ts';

const rowsFor = (key: string, form: Hazard['form'], concentration?: number) =>
  TABLES.hazards.filter(
    (row) =>
      row.keys.includes(key) &&
      row.form === form &&
      (concentration === undefined ||
        (concentration >= (row.from ?? 0) && concentration < (row.below ?? Number.POSITIVE_INFINITY))),
  );

describe('the hazards', () => {
  it('have one row, and not two, for every dissolved species of a couple at every concentration a question uses', () => {
    const keys = new Set(
      TABLES.couples.filter((couple) => !couple.calculationOnly).flatMap((couple) => [couple.oxidisedKey, couple.reducedKey]),
    );
    const dissolved = [...keys].filter((key) => TABLES.speciesOf(key).role === 'solution');
    for (const key of dissolved.filter((name) => !/^(Co|Mn)\^3\+$/.test(name))) {
      for (const concentration of [0.005, 0.02, 0.1, 0.2, 0.5, 1, 2]) {
        expect(
          rowsFor(key, 'solution', concentration).map((row) => row.substance),
          `${key} at ${concentration}`,
        ).toHaveLength(1);
      }
    }
  });

  it('leave out only the dissolved ions that are never in a bottle', () => {
    expect(rowsFor('Co^3+', 'solution')).toEqual([]);
    expect(rowsFor('Mn^3+', 'solution')).toEqual([]);
  });

  it('have one row for every salt as it is weighed, and every solid, liquid or gas of a couple', () => {
    for (const { formula, gives } of TABLES.salts) {
      const key = keyOf(formula);
      const species = TABLES.species.get(key);
      const form = { metal: 'solid', solid: 'solid', liquid: 'liquid', gas: 'gas', solution: undefined }[
        species?.role ?? 'solid'
      ] as Hazard['form'] | undefined;
      const found = form ? rowsFor(key, form) : rowsFor(gives, 'solution');
      const bottled = ['H2SO4', 'HCl', 'HNO3', 'NaClO', 'H2O2'].includes(key) ? rowsFor(key, 'solution') : found;
      expect(bottled.length, key).toBeGreaterThan(0);
      if (form && !['H2SO4', 'HCl', 'HNO3', 'NaClO'].includes(key)) expect(found.length, key).toBe(1);
    }
    for (const { key, role } of TABLES.species.values()) {
      const couple = TABLES.couples.some(
        (each) => !each.calculationOnly && (each.oxidisedKey === key || each.reducedKey === key),
      );
      if (couple && role === 'gas') expect(rowsFor(key, 'gas').length, key).toBe(1);
      if (couple && (role === 'metal' || role === 'solid')) expect(rowsFor(key, 'solid').length, key).toBeLessThanOrEqual(1);
    }
  });

  it('say for manganate(VII), dichromate(VI) and peroxide what the usual cautions say', () => {
    expect(rowsFor('KMnO4', 'solid')[0]).toMatchObject({
      signal: 'Danger',
      statements: ['H272', 'H302', 'H361d', 'H410'],
      fromMemory: true,
    });
    expect(rowsFor('MnO4^-', 'solution', 0.02)[0]).toMatchObject({ signal: 'none', statements: [] });
    expect(rowsFor('Cr2O7^2-', 'solution', 0.0167)[0]!.statements).toContain('H350');
    expect(rowsFor('H2O2', 'solution', 1.79)[0]!.statements).toEqual(['H319']);
    expect(rowsFor('H2O2', 'solution', 0.1)[0]!.signal).toBe('none');
  });

  it('put words first: a caution names the substance, then what to mind, in one line', () => {
    for (const { caution, substance } of TABLES.hazards) {
      expect(caution, substance).toMatch(/^[A-Z][^:]*: .*\.$|^Copper\(I\) in solution does not last/);
      expect(caution).not.toMatch(/\n|H\d{3}/);
    }
  });

  it('mark every row that comes from memory', () => {
    for (const { source, fromMemory, substance } of TABLES.hazards) {
      expect(/from memory/.test(source), substance).toBe(fromMemory);
    }
  });
});
