import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TABLES } from '../potentials/default-tables.ts';
import { inProcess, jsonOf, textOf } from './in-process.ts';
import { couplet } from './run-couplet.ts';

describe('couplet cell', () => {
  it('prints one object of this shape, the more positive half-cell right', async () => {
    const { status, stdout, stderr } = await couplet(['cell', 'Cu^2+/Cu', 'Zn^2+/Zn', '--json']);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const found = JSON.parse(stdout);
    expect(found).toEqual({
      negative: 'Zn^2+/Zn',
      positive: 'Cu^2+/Cu',
      emf: '1.0988',
      feasible: true,
      equation: 'Cu^2+ + Zn -> Cu + Zn^2+',
      electrons: '2',
      notation: 'Zn(s) | Zn^2+(aq) ‖ Cu^2+(aq) | Cu(s)',
      gibbs: expect.stringMatching(/^-212\.036165874\d+$/),
      log10K: expect.closeTo(37.147, 3),
      nernst: expect.closeTo(1.0988, 12),
    });
  });

  it('takes the half-cells as written when told to, even if the e.m.f. is negative', async () => {
    const found = await jsonOf('cell', 'Cu^2+/Cu', 'Zn^2+/Zn', '--as-written');
    expect(found).toMatchObject({ negative: 'Cu^2+/Cu', positive: 'Zn^2+/Zn', emf: '-1.0988', feasible: false });
    expect(await textOf('cell', 'Cu^2+/Cu', 'Zn^2+/Zn', '--as-written')).toContain('its reverse is');
  });

  it('takes values of the user, for couples in the table and others, and half-equations', async () => {
    const silver = await jsonOf('cell', 'Zn^2+/Zn', 'Ag^+/Ag=0.80');
    expect(silver).toMatchObject({ emf: '1.5618', positive: 'Ag^+/Ag' });
    const thallium = await jsonOf('cell', 'Tl^3+/Tl^+=1.25', 'Zn^2+/Zn');
    expect(thallium).toMatchObject({ positive: 'Tl^3+/Tl^+', notation: 'Zn(s) | Zn^2+(aq) ‖ Tl^3+(aq), Tl^+(aq) | Pt(s)' });
    const half = await jsonOf('cell', 'Fe^3+ + e^- <=> Fe^2+', 'MnO4^- + 8H^+ + 5e^- -> Mn^2+ + 4H2O');
    expect(half).toMatchObject({ negative: 'Fe^3+/Fe^2+', positive: 'MnO4^-/Mn^2+', electrons: '5' });
    const sulfide = await jsonOf('cell', 'HgS + 2e^- <=> Hg + S^2- = -0.70', 'Ag^+/Ag');
    expect(sulfide.notation).toBe('Hg(l) | HgS(s) | S^2-(aq) ‖ Ag^+(aq) | Ag(s)');
  });

  it('explains potentials, e.m.f., ΔG°, K and the Nernst equation, and says which values it used', async () => {
    const text = await textOf('cell', 'Zn^2+/Zn', 'Cu^2+/Cu', '--with', 'Cu^2+=0.025', '--temperature', '310');
    for (const line of [
      'negative, oxidation:  Zn -> Zn^2+ + 2e^-  E° = −0.7618 V',
      'E°cell = E°(positive) − E°(negative) = +0.337 − (−0.7618) = +1.0988 V, that is +1.099 V',
      'E°cell is positive: the reaction is feasible under standard conditions.',
      'Cell:      Zn(s) | Zn^2+(aq) ‖ Cu^2+(aq) | Cu(s)',
      'ΔG°      = −nFE°cell = −2 × 96485.33 × 1.0988 J mol^-1 = −212.0 kJ mol^-1 for the equation as written',
      ' at 310 K (K = ',
      'Q = [Zn^2+] / [Cu^2+] = 40.00',
      ' × ln(40.00) = +1.050 V',
      'Potentials are those stored in the table in force (default), not rounded to two decimals',
    ])
      expect(text).toContain(line);
  });

  it.each([
    ['PbSO4/Pb', 'PbO2/PbSO4', 'Pb(s) | PbSO4(s) | SO4^2-(aq) ‖ SO4^2-(aq), H^+(aq) | PbO2(s) | PbSO4(s) | Pt(s)'],
    ['H2O/H2', 'Cl2/Cl^-', 'Pt(s) | H2(g) | OH^-(aq) ‖ Cl2(g) | Cl^-(aq) | Pt(s)'],
    ['AgCl/Ag', 'H^+/H2', 'Pt(s) | H2(g) | H^+(aq) ‖ Cl^-(aq) | AgCl(s) | Ag(s)'],
  ])('writes the cell of %s and %s with solids and gases where they lie', async (one, other, notation) => {
    expect((await jsonOf('cell', one, other)).notation).toBe(notation);
  });

  it('says that below 0.10 V concentrations decide', async () => {
    expect(await textOf('cell', 'Fe^3+/Fe^2+', 'Ag^+/Ag')).toContain('below 0.10 V, so in practice concentrations decide');
  });

  it.each([
    [['Cu/Cu^2+', 'Zn^2+/Zn'], 'the oxidised form of a couple comes first: expected `Cu^2+/Cu`'],
    [['Cu^2+/Cu', 'Cu^2+/Cu'], 'a cell needs two couples'],
    [['Cu^2+/Cu'], 'expected two half-cells, found 1'],
    [['MnO4^-/MnO2', 'Zn^2+/Zn'], 'stands in two media: expected `MnO4^-/MnO2@alkali` or `MnO4^-/MnO2@acid`'],
    [['Tl^3+/Tl^+', 'Zn^2+/Zn'], 'no couple `Tl^3+/Tl^+` stands in the table'],
    [['Cu^2+/Cu', 'Zn^2+/Zn', '--with', 'Zn=2'], '`Zn` is a pure solid or liquid'],
    [['Cu^2+/Cu', 'Zn^2+/Zn', '--with', 'Fe^2+=2'], '`Fe^2+` does not stand in Cu^2+ + Zn'],
    [['Cu^2+/Cu', 'Zn^2+/Zn', '--with', 'Cu^2+=0'], 'expected a number above zero after the `=`'],
    [['Cu^2+/Cu', 'Zn^2+/Zn', '--with', 'Cu^2+'], 'expected a species, `=` and a number'],
    [['Cu^2+/Cu', 'Zn^2+/Zn', '--temperature', '-5'], 'expected a temperature in kelvin'],
    [['Cu2+/Cu', 'Zn^2+/Zn'], 'for the copper(II) ion write `Cu^2+`'],
  ])('tells what is wrong with %j', async (args, said) => {
    const { status, stdout, stderr } = await inProcess(['cell', ...args]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(said);
  });

  it('reverses to the negative, and is never feasible both ways', async () => {
    const ids = fc.constantFrom(...TABLES.couples.map(({ id }) => id));
    await fc.assert(
      fc.asyncProperty(ids, ids, async (one, other) => {
        fc.pre(one !== other);
        const [there, back] = [
          await jsonOf('cell', one, other, '--as-written'),
          await jsonOf('cell', other, one, '--as-written'),
        ];
        expect(Number(there.emf)).toBe(-Number(back.emf) + 0);
        expect(there.feasible && back.feasible).toBe(false);
        expect(there.log10K).toBeCloseTo(-back.log10K, 9);
        expect(there.electrons).toBe(back.electrons);
      }),
      { numRuns: 25 },
    );
  });
});
