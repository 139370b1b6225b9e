import { describe, expect, it } from 'vitest';
import { OF_FORMULAS } from '../../src/cli/commands/of-formulas.ts';
import { OF_POTENTIALS } from '../../src/cli/commands/of-potentials.ts';
import { exactText, signed } from '../../src/cli/tell.ts';
import { Rational } from '../../src/exact/rational.ts';
import { inProcess, jsonOf, textOf } from './in-process.ts';
import { couplet, root } from './run-couplet.ts';

const CALCULATORS = [...OF_FORMULAS, ...OF_POTENTIALS];

/** A command line as a shell would part it. */
const words = (line: string) => [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain!);

describe('calculators', () => {
  const samples = CALCULATORS.filter(({ name }) => name !== 'table');
  it.each(samples.map(({ name, example }) => [name, example]))('%s does what its help shows', async (_, { line, does }) => {
    const [program, ...args] = words(line);
    expect(program).toBe('couplet');
    const { status, stdout } = await inProcess(args);
    expect(status).toBe(0);
    // Figures and formulas of the sample stand in the answer.
    for (const figure of does.match(/(?<![\w^])[+−]?\d[\d.]*\b|\[Ar\] \w+|hexa\S+|[A-Z]\w*\^\d*[+-]/g) ?? [])
      expect(stdout).toContain(figure);
  });

  it.each(CALCULATORS.filter(({ operand }) => operand?.count === 'some').map(({ name }) => name))(
    '%s takes lines of standard input in place of operands',
    async (name) => {
      const input: Readonly<Record<string, string>> = {
        balance: 'Fe^3+ -> Fe^2+\nZn -> Zn^2+',
        react: 'Fe^3+\nI^-',
        titration: 'ratio=1\ntitre=20.0\ntitrant-concentration=0.1',
      };
      const text = input[name] ?? 'Fe^2+\nCu^2+';
      const typed = await inProcess([name, ...text.split('\n')]);
      expect(typed.status).toBe(0);
      expect(await inProcess([name], `\uFEFF${text.replaceAll('\n', '\r\n\r\n')}\r\n`)).toEqual(typed);
    },
  );

  it.each(CALCULATORS.filter(({ name }) => name !== 'table').map(({ name }) => name))(
    '%s asks for something to work on',
    async (name) => {
      for (const input of [undefined, '', ' \n\n']) {
        const { status, stderr } = await inProcess([name], input);
        expect(status).toBe(2);
        expect(stderr).toMatch(new RegExp(`^couplet: expected [A-Z= ]+ after \`couplet ${name}\``));
      }
    },
  );

  it('read real lines of standard input as a program', async () => {
    const { status, stdout, stderr } = await couplet(['mass', '--json'], root, {}, undefined, 'H2O\nNaCl\n');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout).map(({ molarMass }: { molarMass: string }) => molarMass)).toEqual(['18.015', '58.44']);
  });
});

describe('couplet oxidation', () => {
  it('prints numbers by element, sites and rules', async () => {
    expect(await jsonOf('oxidation', 'K2Cr2O7')).toEqual([
      {
        input: 'K2Cr2O7',
        numbers: { K: '+1', Cr: '+6', O: '-2' },
        sites: [
          { element: 'K', number: '+1', atoms: '2' },
          { element: 'Cr', number: '+6', atoms: '2' },
          { element: 'O', number: '-2', atoms: '7' },
        ],
        rules: [
          'potassium, in group 1, is +1',
          'oxygen is −2, except in peroxides, superoxides and with fluorine',
          'the numbers add up to zero, so chromium is +6',
        ],
      },
    ]);
  });

  it('holds averages as fractions, and tells atoms apart', async () => {
    const all = await jsonOf('oxidation', 'S4O6^2-', 'Fe3O4', 'NH4NO3', 'KO2', 'NaH');
    const [tetrathionate, magnetite, nitrate, superoxide, hydride] = all;
    expect(tetrathionate.numbers.S).toBe('+5/2');
    expect(magnetite.numbers.Fe).toBe('+8/3');
    expect(nitrate.sites.filter(({ element }: { element: string }) => element === 'N')).toEqual([
      { element: 'N', number: '-3', atoms: '1' },
      { element: 'N', number: '+5', atoms: '1' },
    ]);
    expect(superoxide.numbers.O).toBe('-1/2');
    expect(superoxide.rules.join(' ')).toContain('superoxide');
    expect(hydride.rules.join(' ')).toContain('hydride');
  });

  it('refuses what the rules leave open', async () => {
    const { status, stderr } = await inProcess(['oxidation', 'CuFeS2']);
    expect(status).toBe(2);
    expect(stderr).toContain('cannot be decided');
  });
});

describe('couplet mass', () => {
  it('adds published masses up, and shows the parts', async () => {
    expect(await jsonOf('mass', 'CuSO4·5H2O')).toEqual([
      {
        input: 'CuSO4·5H2O',
        molarMass: '249.677',
        parts: [
          { element: 'Cu', atoms: '1', each: '63.546', mass: '63.546' },
          { element: 'S', atoms: '1', each: '32.06', mass: '32.06' },
          { element: 'O', atoms: '9', each: '15.999', mass: '143.991' },
          { element: 'H', atoms: '10', each: '1.008', mass: '10.08' },
        ],
      },
    ]);
    expect(await textOf('mass', 'CuSO4·5H2O')).toContain('249.68 g mol^-1');
  });

  it('refuses elements without a published mass, and electrons', async () => {
    expect((await inProcess(['mass', 'TcO2'])).stderr).toContain('no relative atomic mass is given for Tc');
    expect((await inProcess(['mass', 'e^-'])).stderr).toContain('expected a formula with atoms in it');
  });
});

describe('couplet colour', () => {
  it('prints the word, what else is accepted, and the source', async () => {
    const [vanadium, manganese] = await jsonOf('colour', 'V^3+', 'Mn^2+(aq)');
    expect(vanadium).toMatchObject({ input: 'V^3+', colour: 'green', accepted: [] });
    expect(vanadium.source).not.toBe('');
    expect(manganese.accepted).toContain('colourless');
  });

  it('says what is near when it knows none', async () => {
    expect((await inProcess(['colour', 'Cr2O6^2-'])).stderr).toContain('did you mean `Cr2O7^2-`');
    expect((await inProcess(['colour', 'Ti^2+'])).stderr).toContain('no colour is recorded for `Ti^2+`');
  });
});

describe('couplet name', () => {
  it('names complexes, salts and ions, and leaves null what does not apply', async () => {
    expect(await jsonOf('name', '[Co(NH3)6]Cl3', 'MnO4^-', '[CuCl4]^2-')).toEqual([
      {
        input: '[Co(NH3)6]Cl3',
        name: 'hexaamminecobalt(III) chloride',
        tradeName: null,
        oxidationNumber: '+3',
        coordinationNumber: '6',
        shape: 'octahedral',
      },
      {
        input: 'MnO4^-',
        name: 'manganate(VII) ion',
        tradeName: 'permanganate ion',
        oxidationNumber: null,
        coordinationNumber: null,
        shape: null,
      },
      {
        input: '[CuCl4]^2-',
        name: 'tetrachloridocuprate(II) ion',
        tradeName: 'tetrachlorocuprate(II) ion',
        oxidationNumber: '+2',
        coordinationNumber: '4',
        shape: 'tetrahedral',
      },
    ]);
  });
});

describe('couplet electrons', () => {
  it('prints the configuration, unpaired electrons and the school definition', async () => {
    expect(await jsonOf('electrons', 'Cr^3+', 'Cu', 'Zn^2+')).toEqual([
      { input: 'Cr^3+', configuration: '[Ar] 3d3', unpaired: '3', transitionElement: true },
      { input: 'Cu', configuration: '[Ar] 3d10 4s1', unpaired: '1', transitionElement: true },
      { input: 'Zn^2+', configuration: '[Ar] 3d10', unpaired: '0', transitionElement: false },
    ]);
  });

  it('says where the two definitions part', async () => {
    expect(await textOf('electrons', 'Sc')).toContain(
      'no transition element in school terms, though one by the IUPAC definition',
    );
  });

  it('refuses molecules and impossible charges', async () => {
    expect((await inProcess(['electrons', 'H2O'])).status).toBe(2);
    expect((await inProcess(['electrons', 'H^2+'])).stderr).toContain('hydrogen has 1 electrons');
  });
});

describe('exact numbers', () => {
  it('are decimals where these end, else fractions', () => {
    expect(['1/8', '-3/40', '7', '1/3', '22/7'].map((text) => exactText(Rational.parse(text)))).toEqual([
      '0.125',
      '-0.075',
      '7',
      '1/3',
      '22/7',
    ]);
    expect(['6', '-1/2', '0'].map((text) => signed(Rational.parse(text)))).toEqual(['+6', '-1/2', '0']);
  });
});
