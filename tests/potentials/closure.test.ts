import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { HalfEquation } from '../../src/chemistry/equation.ts';
import { netAmounts } from '../../src/chemistry/terms.ts';
import { Rational } from '../../src/exact/rational.ts';
import { cyclesOf } from '../../src/potentials/closure.ts';
import { parseTables } from '../../src/potentials/parse-tables.ts';
import { filesWith, TABLES } from './default-tables.ts';

const names = (ids: readonly string[]) => [...ids].sort().join(' ');
/** E° = −ΔG°/n, in units in which F is 1. */
function potentialFrom(half: HalfEquation, energyOf: ReadonlyMap<string, Rational>): Rational {
  const nets = [...netAmounts(half)].map(([key, { net }]) => net.times(energyOf.get(key)!));
  return nets.reduce((sum, part) => sum.minus(part), Rational.zero).over(half.electrons);
}

const CYCLES = cyclesOf(TABLES.couples).map(({ couples, misfit }) => ({ name: names(couples.map(({ id }) => id)), misfit }));

describe('closure of nE° round cycles of couples', () => {
  it.each([
    [['Cr^3+/Cr^2+', 'Cr^2+/Cr', 'Cr^3+/Cr']],
    [['Fe^3+/Fe^2+', 'Fe^2+/Fe', 'Fe^3+/Fe']],
    [['Cu^2+/Cu^+', 'Cu^+/Cu', 'Cu^2+/Cu']],
    [['MnO4^-/MnO2@acid', 'MnO2/Mn^2+', 'MnO4^-/Mn^2+']],
    [['MnO4^-/MnO4^2-', 'MnO4^2-/MnO2@alkali', 'MnO4^-/MnO2@alkali']],
    [['MnO4^-/MnO4^2-', 'MnO4^2-/MnO2@acid', 'MnO4^-/MnO2@acid']],
    [['MnO2/Mn^3+', 'Mn^3+/Mn^2+', 'MnO2/Mn^2+']],
    [['HOCl/Cl2', 'Cl2/Cl^-', 'HOCl/Cl^-']],
    [['ClO^-/Cl2', 'Cl2/Cl^-', 'ClO^-/Cl^-']],
    [['BrO3^-/Br2', 'Br2/Br^-', 'BrO3^-/Br^-']],
    [['IO3^-/I2', 'I2/I^-', 'IO3^-/I^-']],
    [['O2/H2O2', 'H2O2/H2O', 'O2/H2O']],
    [['PbO2/PbSO4', 'PbSO4/Pb', 'PbO2/Pb^2+', 'Pb^2+/Pb']],
  ])('is checked round %s', (ids) => {
    expect(CYCLES.map(({ name }) => name)).toContain(names(ids));
  });

  it('finds no misfit at all in potentials that come from free energies of formation, whatever they are', () => {
    const keys = [...TABLES.species.keys()];
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -900, max: 900 }), { minLength: keys.length, maxLength: keys.length }),
        (energies) => {
          const energyOf = new Map(keys.map((key, at) => [key, Rational.of(key === 'e^-' ? 0 : energies[at]!)]));
          const couples = TABLES.couples.map((couple) => ({
            ...couple,
            stored: { value: potentialFrom(couple.half, energyOf), places: 2 },
          }));
          expect(cyclesOf(couples).filter(({ misfit }) => !misfit.isZero())).toEqual([]);
        },
      ),
      { numRuns: 5 },
    );
  });

  it('is a warning that names the cycle and the misfit when a value is off', () => {
    const { warnings } = parseTables(filesWith('couples.csv', '0.521', '0.401'));
    expect(warnings).toHaveLength(1);
    // (0.153 + 0.401 − 2 × 0.337) V over two electrons
    expect(warnings[0]).toMatch(/Cu\^2\+\/Cu\^\+ \(\+0.153 V\).*Cu\^\+\/Cu \(\+0.401 V\).*miss by 0.060 V per electron/);
  });

  it('lets a misfit within 0.03 V per electron pass', () => {
    expect(parseTables(filesWith('couples.csv', '0.521', '0.463')).warnings).toEqual([]);
    expect(parseTables(filesWith('couples.csv', '0.521', '0.459')).warnings).toHaveLength(1);
  });
});
