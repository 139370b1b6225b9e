import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { lowestTerms, sameEquation } from '../../src/chemistry/terms.ts';
import { inProcess, jsonOf } from '../cli/in-process.ts';
import { expectPrinted, printedOf, type WorkedCase } from './cases.ts';
import { checkedCases } from './left-out.ts';

/**
 * Published answers got through the commands, as a teacher or a program gets them. That the engine agrees with every case is checked beside
 * this; here it is what is typed, what is printed, and that nothing is lost between.
 */
const number = (text: string): number => {
  const [over = '0', under = '1'] = text.split('/');
  return Number(over) / Number(under);
};

describe('couplet balance', () => {
  interface Whole {
    readonly reactants: readonly string[];
    readonly products: readonly string[];
    readonly medium: 'acid' | 'base' | 'none';
    readonly type: string;
  }
  interface Equated {
    readonly equation: string;
    readonly electrons?: number;
  }
  const cases = checkedCases<Whole, Equated>('balance');
  const lineOf = ({ given }: WorkedCase<Whole, Equated>) => `${given.reactants.join(' + ')} -> ${given.products.join(' + ')}`;

  it.each(cases.filter(({ answer }) => !answer.equation.includes('H3O^+')))(
    'prints the published equation: $id, $source',
    async (each) => {
      const medium = each.given.medium === 'base' ? 'alkali' : 'acid';
      const [found] = await jsonOf('balance', lineOf(each), '--medium', medium);
      expect(sameEquation(parseEquation(found.equation), parseEquation(each.answer.equation))).toBe(true);
      const left = Object.entries(found.reactants).map(([key, count]) => `${count}${key}`);
      const right = Object.entries(found.products).map(([key, count]) => `${count}${key}`);
      expect(
        sameEquation(parseEquation(`${left.join(' + ')} -> ${right.join(' + ')}`), parseEquation(each.answer.equation)),
      ).toBe(true);
      if (each.answer.electrons !== undefined) expect(found.electrons).toBe(String(each.answer.electrons));
      expect(found.kind === 'half').toBe(each.given.type === 'half');
    },
  );

  it('takes all of them as lines of standard input, in order', async () => {
    const acid = cases.filter(({ given, answer }) => given.medium !== 'base' && !answer.equation.includes('H3O^+'));
    const { stdout } = await inProcess(['balance', '--json'], acid.map(lineOf).join('\n'));
    expect(JSON.parse(stdout).map(({ input }: { input: string }) => input)).toEqual(acid.map(lineOf));
  });
});

describe('couplet oxidation, mass, name and electrons', () => {
  interface Numbers {
    readonly oxidation_number?: number;
    readonly oxidation_numbers?: Readonly<Record<string, number | readonly { readonly state: number; readonly atoms: number }[]>>;
  }
  const species = checkedCases<{ readonly species?: string; readonly element?: string }, Numbers>('oxidation-number').filter(
    ({ given }) => given.species !== undefined,
  );
  it.each(species)('prints the published oxidation numbers: $id, $source', async ({ given, answer }) => {
    const [{ numbers, sites }] = await jsonOf('oxidation', given.species!);
    for (const [symbol, printed] of Object.entries(answer.oxidation_numbers ?? { [given.element!]: answer.oxidation_number! })) {
      if (typeof printed === 'number') expect(number(numbers[symbol])).toBe(printed);
      const atoms = sites
        .filter((site: { element: string }) => site.element === symbol)
        .map((site: { atoms: string }) => site.atoms);
      if (typeof printed !== 'number')
        expect(atoms.reduce((sum: number, count: string) => sum + Number(count), 0)).toBe(
          printed.reduce((sum, site) => sum + site.atoms, 0),
        );
    }
  });

  const OLD_WEIGHTS = ['os-3-q13c', 'os-3-q33b', 'os-3.2-cyl'];
  const masses = checkedCases<{ readonly formula?: string }, { readonly molar_mass?: number }>('molar-mass').filter(
    ({ id, given, answer }) => given.formula && answer.molar_mass !== undefined && !OLD_WEIGHTS.includes(id),
  );
  it.each(masses)('prints the published molar mass: $id, $source', async (each) => {
    const [found] = await jsonOf('mass', each.given.formula!);
    expectPrinted(number(found.molarMass), ...printedOf(each, 'molar_mass'));
  });

  const names = checkedCases<
    { readonly formula: string },
    {
      readonly name: string;
      readonly name_iupac_2005_style?: string;
      readonly coordination_number?: number;
      readonly oxidation_state?: number;
    }
  >('complex-name');
  it.each(names)('prints the published name of $given.formula: $id, $source', async ({ given, answer }) => {
    const [found] = await jsonOf('name', given.formula);
    expect(found.name).toBe(answer.name_iupac_2005_style ?? answer.name);
    if (answer.coordination_number) expect(found.coordinationNumber).toBe(String(answer.coordination_number));
    if (answer.oxidation_state) expect(number(found.oxidationNumber)).toBe(answer.oxidation_state);
  });

  const atoms = checkedCases<{ readonly species?: string }, { readonly configuration?: string }>('electron-configuration').filter(
    ({ given, answer }) => given.species !== undefined && answer.configuration?.startsWith('[') === true,
  );
  // Sources differ in the order of subshells and in spaces.
  const parts = (text: string) => text.replace(']', '] ').split(/\s+/).filter(Boolean).toSorted();
  it.each(atoms)('prints the published configuration of $given.species: $id, $source', async ({ given, answer }) => {
    const [found] = await jsonOf('electrons', given.species!);
    expect(parts(found.configuration)).toEqual(parts(answer.configuration!));
  });

  it('number as many as there are', () => {
    expect([species.length, masses.length, names.length, atoms.length]).toEqual([20, 4, 15, 20]);
  });
});

describe('couplet colour', () => {
  const cases: readonly { readonly species: string; readonly colour: string; readonly source: string }[] = JSON.parse(
    readFileSync(new URL('data/colours.json', import.meta.url), 'utf8'),
  );
  it.each(cases)('accepts $colour for $species ($source)', async ({ species, colour }) => {
    const [found] = await jsonOf('colour', species);
    const words: readonly string[] = [found.colour, ...found.accepted];
    expect(words.some((word) => word === colour || word.startsWith(`${colour} `))).toBe(true);
    expect(found.source).not.toBe('');
  });
});

describe('couplet cell', () => {
  /** Half-cells as the sources abbreviate them: `Sn2+/Sn`. */
  const halfCell = (text: string): string =>
    ({
      'HgS/Hg,S2-': 'HgS + 2e^- <=> Hg + S^2-',
      'HgS/Hg': 'HgS + 2e^- <=> Hg + S^2-',
      'Br2(aq)/Br-': 'Br2/Br^-',
      'Cl2/Cl-': 'Cl2/Cl^-',
      'H2O/H2,OH-': 'H2O/H2@alkali',
    })[text] ?? text.replace(/(\d?)\+/g, '^$1+');
  interface Pair {
    readonly cathode: { readonly couple: string; readonly E: number };
    readonly anode: { readonly couple: string; readonly E: number };
    readonly reaction: string;
  }

  it.each(checkedCases<Pair, { readonly spontaneous: boolean }>('cell-emf'))(
    'prints the published e.m.f.: $id, $source',
    async (each) => {
      const { cathode, anode, reaction } = each.given;
      const typed = [anode, cathode].map(({ couple, E }) => `${halfCell(couple)}=${E}`);
      const found = await jsonOf('cell', ...typed, '--as-written');
      expectPrinted(number(found.emf), printedOf(each, 'E_cell_V')[0]);
      expect(found.feasible).toBe(each.answer.spontaneous);
      expect(sameEquation(parseEquation(found.equation), lowestTerms(parseEquation(reaction)))).toBe(true);
      // ΔG° in kJ mol⁻¹ is −nFE°, F from CODATA 2022
      expect(number(found.gibbs)).toBeCloseTo((-Number(found.electrons) * 96485.33212 * number(found.emf)) / 1000, 6);
    },
  );

  it('prints the published solubility products and the ionic product of water', async () => {
    const cases = checkedCases<{ readonly E?: Readonly<Record<string, number>> }, { readonly K: number }>('gibbs-K');
    const typed: Readonly<Record<string, readonly [string, string]>> = {
      'os-17-q31a': ['Ag^+/Ag', 'AgCl/Ag'],
      'os-17-q31d': ['H^+/H2', 'H2O/H2@alkali'],
    };
    for (const [id, [negative, positive]] of Object.entries(typed)) {
      const { given, answer } = cases.find((each) => each.id === id)!;
      const [high, low] = Object.values(given.E!);
      const found = await jsonOf('cell', `${negative}=${low}`, `${positive}=${high}`, '--as-written');
      expectPrinted(Math.exp(found.log10K * Math.LN10), answer.K);
    }
  });

  interface Away {
    readonly E: Readonly<Record<string, number>>;
    readonly conc_M: Readonly<Record<string, number>>;
  }
  const nernst = checkedCases<Away, { readonly E_V: number }>('nernst');
  const find = (id: string) => nernst.find((each) => each.id === id)!;
  const withEach = (concentrations: Readonly<Record<string, number>>) =>
    Object.entries(concentrations).flatMap(([key, value]) => ['--with', `${key}=${value}`]);

  it('prints published e.m.f.s away from standard conditions', async () => {
    const mercury = find('os-17-q29a');
    const [silver, sulfide] = Object.entries(mercury.given.E).map(([couple, E]) => `${halfCell(couple)}=${E}`);
    const found = await jsonOf('cell', sulfide!, silver!, '--as-written', ...withEach(mercury.given.conc_M));
    expectPrinted(found.nernst, mercury.answer.E_V);
    const aluminium = find('os-17.7-cyl');
    const [copper, metal] = Object.entries(aluminium.given.E).map(([couple, E]) => `${halfCell(couple)}=${E}`);
    const other = await jsonOf('cell', metal!, copper!, ...withEach({ 'Al^3+': 0.15, 'Cu^2+': 0.025 }));
    expect(other.electrons).toBe('6');
    expectPrinted(other.nernst, aluminium.answer.E_V);
  });

  it('prints the published potential of a half-cell against the standard hydrogen electrode', async () => {
    const copper = await jsonOf('cell', 'H^+/H2', 'Cu^2+/Cu=0.337', '--as-written', '--with', 'Cu^2+=0.10');
    expectPrinted(copper.nernst, find('der-n-cu-01').answer.E_V);
    const iron = await jsonOf('cell', 'H^+/H2', 'Fe^3+/Fe^2+=0.771', '--as-written', '--with', 'Fe^3+=10');
    expectPrinted(iron.nernst, find('der-n-fe-10').answer.E_V);
  });
});

describe('couplet titration', () => {
  interface Flask {
    readonly analyte: string;
    readonly titrant: string;
    readonly c_titrant_M: number;
    readonly c_analyte_M?: number;
    readonly V_titrant_mL?: number;
    readonly V_analyte_mL?: number;
    readonly ratio?: Readonly<Record<string, number>>;
    readonly sample_g?: number;
    readonly M_stated?: number;
  }
  type Found = Readonly<Record<string, number>>;
  const cases = [...checkedCases<Flask, Found>('titration'), ...checkedCases<Flask, Found>('percentage-by-mass')];
  const find = (id: string) => cases.find((each) => each.id === id)!;
  const given = (quantities: Readonly<Record<string, string | number | undefined>>) =>
    Object.entries(quantities).flatMap(([name, value]) => (value === undefined ? [] : [`${name}=${value}`]));
  const volumes = ({ c_titrant_M, V_titrant_mL, V_analyte_mL, c_analyte_M }: Flask) => ({
    'titrant-concentration': c_titrant_M,
    titre: V_titrant_mL,
    aliquot: V_analyte_mL,
    'analyte-concentration': c_analyte_M,
  });

  it.each(['os-4-q79', 'os-4-q81', 'os-4-q89', 'os-4-q91', 'os-4-q93', 'os-4.14-ex'])(
    'works out with a ratio given: %s',
    async (id) => {
      const each = find(id);
      const { ratio, analyte, titrant } = each.given;
      const found = await jsonOf(
        'titration',
        ...given({ ...volumes(each.given), ratio: `${ratio![analyte]}/${ratio![titrant]}` }),
      );
      expectPrinted(number(found.answer.value), Object.values(each.answer)[0]!);
    },
  );

  const REDOX: Readonly<Record<string, readonly [quantities: Readonly<Record<string, string | number>>, times: number]>> = {
    'os-4.15-cyl': [{ titrant: 'KMnO4', analyte: 'H2C2O4' }, 1],
    'os-19-iron-ore': [{ titrant: 'Cr2O7^2-', analyte: 'Fe^2+', sought: 'Fe', sample: 2.5 }, 1],
    'vscht-32': [{ titrant: 'KMnO4', analyte: 'H2C2O4', 'molar-mass': 126.04 }, 1],
    // mg for 1 cm³ of a titrant of the strength given
    'usp-feso4': [{ titrant: 'Ce^4+', analyte: 'Fe^2+', sought: 'FeSO4', titre: 1, 'titrant-concentration': 0.1 }, 1000],
    'usp-oxal': [{ titrant: 'MnO4^-', analyte: 'C2O4^2-', sought: 'Na2C2O4', titre: 1, 'titrant-concentration': 0.02 }, 1000],
  };
  it.each(Object.keys(REDOX))('finds the ratio by the table: %s', async (id) => {
    const each = find(id);
    const [quantities, times] = REDOX[id]!;
    const found = await jsonOf('titration', ...given({ ...volumes(each.given), ...quantities }));
    const [name] = Object.keys(each.answer);
    expectPrinted(number(found.answer.value) * times, ...printedOf(each, name!));
  });
});
