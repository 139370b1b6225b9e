import { describe, expect, it } from 'vitest';
import { acidStands } from '../../src/questions/acid-stands.ts';
import { reactingPairs } from '../../src/questions/families/reacting-pairs.ts';
import { honestPairs } from '../../src/questions/honest-pairs.ts';
import { mayMeet } from '../../src/questions/may-meet.ts';
import { reactsCleanly } from '../../src/questions/meeting.ts';
import { tables } from '../support/data.ts';

const cleanly = (oxidant: string, reductant: string) => reactsCleanly(tables.couple(oxidant), tables.couple(reductant), tables);
const pairIn = (medium: 'acid' | 'neutral', oxidant: string, reductant: string) =>
  honestPairs(tables, medium).find((pair) => pair.oxidant.id === oxidant && pair.reductant.id === reductant);

// Figures by hand from the printed values: Fe³⁺/Fe²⁺ +0.77 V, Sn⁴⁺/Sn²⁺ +0.15 V, VO₂⁺/VO²⁺ +1.00 V, Br₂/Br⁻ +1.09 V, Cl₂/Cl⁻ +1.36 V.
describe('a reaction with one equation', () => {
  it.each([
    ['Cl2/Cl^-', 'Fe^2+/Fe', 'chlorine takes iron(II) on to iron(III), 1.36 − 0.77 = 0.59 V'],
    ['Br2/Br^-', 'Fe^2+/Fe', 'bromine takes iron(II) on to iron(III), 1.09 − 0.77 = 0.32 V'],
    ['Br2/Br^-', 'Sn^2+/Sn', 'bromine takes tin(II) on to tin(IV), 1.09 − 0.15 = 0.94 V'],
    ['Fe^3+/Fe^2+', 'Sn^2+/Sn', 'iron(III) takes tin(II) on to tin(IV), 0.77 − 0.15 = 0.62 V'],
    ['Br2/Br^-', 'VO^2+/V^3+', 'bromine may take vanadium(IV) on to vanadium(V), 1.09 − 1.00 = 0.09 V'],
    ['Fe^3+/Fe^2+', 'Zn^2+/Zn', 'zinc takes iron(II) on to iron, −0.44 + 0.76 = 0.32 V'],
    ['S2O8^2-/SO4^2-', 'Br2/Br^-', 'peroxodisulfate is too slow with bromide'],
    ['S2O8^2-/SO4^2-', 'Cl2/Cl^-', 'peroxodisulfate is too slow with chloride'],
    ['ClO3^-/Cl^-', 'I2/I^-', 'chlorate(V) is too slow with iodide in the cold'],
    ['Ni^2+/Ni', 'Cr^3+/Cr^2+', 'a dissolved reducing agent hardly gives the metal'],
  ])('is not that of %s with %s: %s', (oxidant, reductant) => {
    expect(cleanly(oxidant, reductant)).toBe(false);
  });

  it.each([
    ['I2/I^-', 'Fe^2+/Fe'],
    ['Cu^2+/Cu', 'Fe^2+/Fe'],
    ['Cu^2+/Cu', 'Sn^2+/Sn'],
    ['Ag^+/Ag', 'Cu^2+/Cu'],
    ['Cl2/Cl^-', 'Fe^3+/Fe^2+'],
    ['MnO4^-/Mn^2+', 'Fe^3+/Fe^2+'],
  ])('is that of %s with %s, where no product goes on', (oxidant, reductant) => {
    expect(cleanly(oxidant, reductant)).toBe(true);
  });
});

describe('pairs that are asked about', () => {
  it('leave out what goes on past the product that is printed, a borderline step included', () => {
    expect(pairIn('acid', 'Br2/Br^-', 'VO^2+/V^3+')).toBeUndefined();
    expect(pairIn('acid', 'S2O8^2-/SO4^2-', 'Br2/Br^-')).toBeUndefined();
  });

  it('say that chlorate(V) with iodide is warmed', () => {
    expect(pairIn('acid', 'ClO3^-/Cl^-', 'I2/I^-')?.needs).toBe('warm');
  });

  it('bring no tin(II) together with silver ions, which its hydrochloric acid precipitates', () => {
    expect(mayMeet('Ag^+', 'Sn^2+', tables, 'neutral')).toBe(false);
  });

  it('need an acid that can be added: none stands with silver or lead ions', () => {
    expect(acidStands(['Ag^+'], tables)).toBe(false);
    expect(acidStands(['PbO2', 'Pb^2+'], tables)).toBe(false);
    // sulfuric acid, since chloride is oxidised
    expect(acidStands(['MnO4^-', 'Fe^2+'], tables)).toBe(true);
    // hydrochloric acid, since barium sulfate falls out
    expect(acidStands(['Ba^2+'], tables)).toBe(true);
    const species = reactingPairs(tables, 'stretch')
      .filter(({ medium }) => medium === 'acid')
      .flatMap(({ oxidant, reductant }) =>
        [oxidant, reductant].flatMap(({ oxidisedKey, reducedKey }) => [oxidisedKey, reducedKey]),
      );
    expect(species.filter((key) => key === 'Ag^+' || key === 'Pb^2+')).toEqual([]);
  });

  it('hold manganate(VI) to strong alkali', () => {
    for (const medium of ['acid', 'neutral'] as const) expect(mayMeet('MnO4^2-', 'I^-', tables, medium)).toBe(false);
  });
});
