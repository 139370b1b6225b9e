import { describe, expect, it } from 'vitest';
import { inProcess, jsonOf, textOf } from './in-process.ts';
import { couplet } from './run-couplet.ts';

const IRON = ['titrant=MnO4^-', 'analyte=Fe^2+', 'titrant-concentration=0.0200'];

describe('couplet titration', () => {
  it('prints the answer and the working, exact, as one object', async () => {
    const { status, stdout, stderr } = await couplet(['titration', ...IRON, 'titre=23.40', 'aliquot=25.0', '--json']);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toEqual({
      answer: { quantity: 'analyte-concentration', value: '0.0936', unit: 'mol dm^-3' },
      working: [
        { quantity: 'moles-titrant', value: '0.000468', unit: 'mol' },
        { quantity: 'moles-analyte', value: '0.00234', unit: 'mol' },
        { quantity: 'analyte-concentration', value: '0.0936', unit: 'mol dm^-3' },
      ],
    });
  });

  it('writes the working line by line, from the equation to the figures of the least precise quantity', async () => {
    expect(await textOf('titration', ...IRON, 'titres=23.90,23.40,23.45', 'aliquot=25.0')).toBe(
      [
        'Equation: MnO4^- + 8H^+ + 5Fe^2+ -> Mn^2+ + 4H2O + 5Fe^3+',
        '  (E°cell = E°(MnO4^-/Mn^2+) − E°(Fe^3+/Fe^2+) = +1.507 − +0.771 = +0.736 V)',
        '  1 mol of MnO4^- goes with 5 mol of Fe^2+',
        'Concordant titres: 23.40 and 23.45 cm^3 (within 0.10 cm^3); mean 23.43 cm^3',
        'n(MnO4^-) = 0.0200 × 23.425 ÷ 1000 = 4.685 × 10^-4 mol',
        'n(Fe^2+) = 4.685 × 10^-4 × 5 = 0.002343 mol',
        'c(Fe^2+) = 0.002343 × 1000 ÷ 25.0 = 0.09370 mol dm^-3',
        '',
        'Answer: c(Fe^2+) = 0.0937 mol dm^-3 (3 significant figures, as the least precise quantity)',
        'The ratio follows from the couples of the table in force (default).',
        '',
      ].join('\n'),
    );
  });

  it('goes on to a mass and a percentage of what is sought', async () => {
    const found = await jsonOf('titration', ...IRON, 'titre=23.40', 'aliquot=25.0', 'flask=250', 'sample=10.00', 'sought=Fe2O3');
    expect(found.working.map(({ quantity }: { quantity: string }) => quantity)).toEqual([
      'moles-titrant',
      'moles-analyte',
      'moles-in-flask',
      'moles-sought',
      'mass',
      'percentage',
    ]);
    // 0.0234 mol of iron is 0.0117 mol of Fe2O3, 159.687 g mol^-1
    expect(found.working[4].value).toBe('1.8683379');
    expect(found.answer).toEqual({ quantity: 'percentage', value: '18.683379', unit: '%' });
  });

  it('goes back to the titre, and to the titrant', async () => {
    const back = await jsonOf('titration', ...IRON, 'analyte-concentration=0.0936', 'aliquot=25.0');
    expect(back.answer).toEqual({ quantity: 'titre', value: '23.4', unit: 'cm^3' });
    const standardised = await jsonOf(
      'titration',
      ...IRON.slice(0, 2),
      'analyte-concentration=0.0936',
      'aliquot=25.0',
      'titre=23.4',
    );
    expect(standardised.answer).toMatchObject({ quantity: 'titrant-concentration', value: '0.02' });
  });

  it('takes the ratio as given when there is no redox in it', async () => {
    const found = await jsonOf('titration', 'ratio=1/2', 'titrant-concentration=0.1', 'titre=20', 'aliquot=10');
    expect(found.answer.value).toBe('0.1');
  });

  it('knows that thiosulfate goes to tetrathionate with iodine', async () => {
    const found = await jsonOf('titration', 'titrant=Na2S2O3', 'analyte=I2', 'titrant-concentration=0.1', 'titre=20');
    expect(found.answer).toEqual({ quantity: 'moles-analyte', value: '0.001', unit: 'mol' });
  });

  it('says when the sample cannot hold so much', async () => {
    const text = await textOf('titration', ...IRON, 'titre=23.40', 'sample=0.10', 'sought=Fe');
    expect(text).toContain('This is more than the sample');
  });

  it.each([
    [['titre=x', 'ratio=1'], 'expected a number above zero after `titre=`, found `x`'],
    [['titrre=3'], 'no quantity is called `titrre`; did you mean `titre`'],
    [['titre'], 'expected a name, `=` and a value'],
    [['titre=1', 'titre=2'], 'expected `titre` once'],
    [['titre=1', 'titrant-concentration=1'], 'expected `titrant=…` and `analyte=…`'],
    [['ratio=1', 'titre=1'], 'expected a titre with the titrant’s concentration'],
    [['titrant=MnO4^-', 'analyte=Zn^2+', 'titre=1', 'titrant-concentration=1'], 'no reaction of `MnO4^-` with `Zn^2+` follows'],
    [[...IRON, 'titre=1', 'sought=NaCl'], 'expected one element beside O and H in both `NaCl` and `Fe^2+`'],
    [[...IRON, 'titres=20.0,25.0'], 'no two titres agree'],
    [[...IRON, 'titres=20.0,x'], 'expected titres in cm^3'],
    [[...IRON, 'titre=1', 'sought=Fe2+'], 'for the iron(II) ion write `Fe^2+`'],
  ])('tells what is wrong with %j', async (args, said) => {
    const { status, stdout, stderr } = await inProcess(['titration', ...args]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(said);
  });
});
