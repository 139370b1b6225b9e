import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inProcess, jsonOf, textOf } from './in-process.ts';
import { couplet } from './run-couplet.ts';

describe('couplet balance', () => {
  it('prints equations in input order, as an array of this shape', async () => {
    const { status, stdout, stderr } = await couplet(['balance', 'MnO4^- + C2O4^2- -> Mn^2+ + CO2', 'Cr2O7^2-/Cr^3+', '--json']);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toEqual([
      {
        input: 'MnO4^- + C2O4^2- -> Mn^2+ + CO2',
        kind: 'redox',
        equation: '2MnO4^- + 5C2O4^2- + 16H^+ -> 2Mn^2+ + 10CO2 + 8H2O',
        reactants: { 'MnO4^-': '2', 'C2O4^2-': '5', 'H^+': '16' },
        products: { 'Mn^2+': '2', CO2: '10', H2O: '8' },
        electrons: '10',
        oxidised: 'C2O4^2-',
        reduced: 'MnO4^-',
      },
      {
        input: 'Cr2O7^2-/Cr^3+',
        kind: 'half',
        equation: 'Cr2O7^2- + 14H^+ + 6e^- -> 2Cr^3+ + 7H2O',
        reactants: { 'Cr2O7^2-': '1', 'H^+': '14', 'e^-': '6' },
        products: { 'Cr^3+': '2', H2O: '7' },
        electrons: '6',
        oxidised: null,
        reduced: 'Cr2O7^2-',
      },
    ]);
  });

  it('balances equations without redox and whole equations too', async () => {
    const [salts, rust] = await jsonOf('balance', 'AgNO3 + CaCl2 -> AgCl + Ca(NO3)2', 'Fe + O2 + H2O -> Fe(OH)3');
    expect(salts).toMatchObject({
      kind: 'no-redox',
      equation: '2AgNO3 + CaCl2 -> 2AgCl + Ca(NO3)2',
      electrons: '0',
      oxidised: null,
    });
    expect(rust).toMatchObject({ kind: 'redox', equation: '4Fe + 3O2 + 6H2O -> 4Fe(OH)3', oxidised: 'Fe', reduced: 'O2' });
  });

  it('completes with hydroxide in alkali', async () => {
    const [found] = await jsonOf('balance', 'MnO4^- -> MnO2', '--medium', 'alkali');
    expect(found.equation).toBe('MnO4^- + 2H2O + 3e^- -> MnO2 + 4OH^-');
  });

  it('takes hydroxide in the equation for alkali', async () => {
    const [found] = await jsonOf('balance', 'P4 + OH^- -> PH3 + H2PO2^-');
    expect(found.equation).toBe('P4 + 3OH^- + 3H2O -> PH3 + 3H2PO2^-');
  });

  it('explains what is oxidised and reduced, with both half-equations and what each side holds', async () => {
    expect(await textOf('balance', 'MnO4^- + Fe^2+ -> Mn^2+ + Fe^3+')).toBe(
      [
        'MnO4^- + 5Fe^2+ + 8H^+ -> Mn^2+ + 5Fe^3+ + 4H2O',
        '  5 electrons are passed: MnO4^- is reduced to Mn^2+ (Mn +7 to +2) and Fe^2+ is oxidised to Fe^3+ (Fe +2 to +3).',
        '  oxidation:  Fe^2+ -> Fe^3+ + e^-                  × 5',
        '  reduction:  MnO4^- + 8H^+ + 5e^- -> Mn^2+ + 4H2O',
        '  Each side holds Mn 1, O 4, Fe 5, H 8; charge 17+.',
        '',
      ].join('\n'),
    );
  });

  it('shows two answers where more than one balances, and asks for the couples', async () => {
    const { status, stderr } = await inProcess(['balance', 'MnO4^- + H2O2 -> Mn^2+ + O2']);
    expect(status).toBe(2);
    expect(stderr).toContain('more than one answer balances, such as `2MnO4^- + H2O2 + 6H^+ -> 2Mn^2+ + 3O2 + 4H2O` and `');
    expect(stderr).toContain('name the two couples that take part');
  });

  it('takes the couples, and then knows one answer', async () => {
    const couples = ['--couple', 'MnO4^-/Mn^2+', '--couple', 'O2/H2O2'];
    const [found] = await jsonOf('balance', 'MnO4^- + H2O2 -> Mn^2+ + O2', ...couples);
    expect(found.equation).toBe('2MnO4^- + 5H2O2 + 6H^+ -> 2Mn^2+ + 5O2 + 8H2O');
    const { stderr } = await inProcess(['balance', 'MnO4^- + H2O2 -> Mn^2+ + O2', ...couples.slice(0, 2)]);
    expect(stderr).toContain('expected two couples, one that the equation reduces and one that it oxidises');
  });

  it.each([
    ['Fe3+ + I^- -> Fe^2+ + I2', 'for the iron(III) ion write `Fe^3+`'],
    ['Fe + Cu^2+ -> Zn', 'nothing on the right holds the Fe'],
    ['MnO4^- + Fe^2+', 'expected an arrow `->`'],
    ['KMnO4 -> K2MnO5', 'cannot be balanced'],
  ])('refuses %s with the reason', async (text, said) => {
    const { status, stdout, stderr } = await inProcess(['balance', text]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(said);
    expect(stderr).toMatch(/\n {2}\S.*\n *\^+\n/);
  });

  it('tells the faults of all lines together, each with its line', async () => {
    const { status, stderr } = await inProcess(['balance'], 'Fe -> Fe2+\n\nCu -> Cu^2+\nFe -> Zn\n');
    expect(status).toBe(2);
    expect(stderr).toContain('standard input:1: for the iron(II) ion write `Fe^2+`');
    expect(stderr).toContain('standard input:4: ');
    expect(stderr).toContain('\n2 faults\n');
  });

  it('reads what it prints', async () => {
    const metals = fc.constantFrom('Zn', 'Fe', 'Mg', 'Cu', 'Ni');
    const ions = fc.constantFrom('Ag^+', 'Cu^2+', 'Fe^3+', 'Cr2O7^2-', 'VO2^+', 'MnO4^-');
    const after: Readonly<Record<string, string>> = {
      'Ag^+': 'Ag',
      'Cu^2+': 'Cu^+',
      'Fe^3+': 'Fe^2+',
      'Cr2O7^2-': 'Cr^3+',
      'VO2^+': 'V^3+',
      'MnO4^-': 'MnO2',
    };
    await fc.assert(
      fc.asyncProperty(metals, ions, async (metal, ion) => {
        fc.pre(!ion.startsWith(metal));
        const [first] = await jsonOf('balance', `${metal} + ${ion} -> ${metal}^2+ + ${after[ion]}`);
        const [again] = await jsonOf('balance', first.equation);
        expect({ ...again, input: '' }).toEqual({ ...first, input: '' });
      }),
      { numRuns: 30 },
    );
  });
});
