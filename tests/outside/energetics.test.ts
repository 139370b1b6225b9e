import { describe, expect, it } from 'vitest';
import { CODATA, STANDARD_TEMPERATURE } from '../../src/chemistry/constants.ts';
import {
  emfFromGibbs,
  equilibriumConstant,
  gibbsEnergy,
  gibbsFromConstant,
  lnEquilibrium,
  lnFromGibbs,
  nernstEmf,
  reactionQuotient,
} from '../../src/chemistry/energetics.ts';
import { frequencyOf, molarPhotonEnergy, photonEnergy, wavelengthOf } from '../../src/chemistry/light.ts';
import type { Scientific } from '../../src/chemistry/logarithm.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import { parseDecimal } from '../../src/exact/decimal.ts';
import { Rational } from '../../src/exact/rational.ts';
import { roundToPlaces } from '../../src/exact/rounding.ts';
import { expectPrinted, printedOf, r, type WorkedCase } from './cases.ts';
import { checkedCases } from './left-out.ts';

interface Conditions {
  readonly T_K?: number;
  readonly n?: number;
  readonly E_V?: number;
  readonly E_cell_V?: number;
  readonly E0_V?: number;
  readonly E?: Readonly<Record<string, number>>;
  readonly K?: number;
  readonly deltaG_kJ?: number;
  readonly deltaGf_kJ?: Readonly<Record<string, number>>;
  readonly reaction?: string;
  readonly conc_M?: Readonly<Record<string, number>>;
  readonly ion?: string;
  readonly z?: number;
  readonly c_in_mM?: number;
  readonly c_out_mM?: number;
  readonly half_cell?: string;
}
interface Results {
  readonly K?: number;
  readonly deltaG_kJ?: number;
  readonly deltaG_kJ_per_mol?: number;
  readonly Q?: number;
  readonly E_V: number;
  readonly spontaneous?: boolean;
}
type Cell = WorkedCase<Conditions, Results>;
const gibbsCases = checkedCases<Conditions, Results>('gibbs-K');
const nernstCases = checkedCases<Conditions, Results>('nernst');

/** Sources that round E° to two decimals before they go on; the case's note says so. */
const ROUNDED_FIRST = new Set(['os-17-q31b', 'os-17.7-ex']);
/** ln K was rounded to log K = 9.83 before K was found: 10^9.83 = 6.8 × 10⁹, exactly it is 6.9 × 10⁹. */
const K_UNITS: Readonly<Record<string, number>> = { 'os-17.6-cyl': 1 };
const number = ({ mantissa, exponent }: Scientific) => mantissa * Number(`1e${exponent}`);
const temperature = ({ given }: Cell) => (given.T_K === undefined ? STANDARD_TEMPERATURE : r(given.T_K));

/** E°cell in V of a case: given, or from the first potential less the second. */
function standardEmf(each: Cell): Rational {
  const { given } = each;
  if (given.E_cell_V !== undefined || given.E_V !== undefined) return r((given.E_cell_V ?? given.E_V)!);
  const [high, low] = Object.values(given.E!).map(r) as [Rational, Rational];
  const emf = high.minus(low);
  return ROUNDED_FIRST.has(each.id) ? roundToPlaces(emf, 2) : emf;
}

describe('published Gibbs energies and equilibrium constants', () => {
  it.each(gibbsCases)('are ours: $id, $source', (each) => {
    const { given, answer } = each;
    const printed = answer.deltaG_kJ_per_mol ?? answer.deltaG_kJ;
    if (given.deltaG_kJ !== undefined || given.deltaGf_kJ !== undefined) {
      const gibbs = given.deltaGf_kJ ? fromFormation(given.reaction!, given.deltaGf_kJ) : r(given.deltaG_kJ!).times(r(1000));
      if (printed !== undefined) expectPrinted(gibbs.over(r(1000)), printed);
      expectPrinted(number(equilibriumConstant(lnFromGibbs(gibbs, temperature(each), CODATA))), answer.K!);
    } else if (given.K !== undefined) {
      expectPrinted(gibbsFromConstant(r(given.K), temperature(each), CODATA) / 1000, printed!);
    } else {
      const [electrons, emf] = [r(given.n!), standardEmf(each)];
      const gibbs = gibbsEnergy(electrons, emf, CODATA);
      if (printed !== undefined)
        expectPrinted(gibbs.over(r(1000)), ...printedOf(each, 'deltaG_kJ' in answer ? 'deltaG_kJ' : 'deltaG_kJ_per_mol'));
      expect(emfFromGibbs(electrons, gibbs, CODATA).equals(emf)).toBe(true);
      if (answer.K !== undefined)
        expectPrinted(
          number(equilibriumConstant(lnEquilibrium(electrons, emf, temperature(each), CODATA))),
          answer.K,
          K_UNITS[each.id],
        );
    }
  });

  function fromFormation(text: string, formation: Readonly<Record<string, number>>): Rational {
    const { left, right } = parseEquation(text);
    const sum = (terms: typeof left) =>
      terms.reduce((total, term) => total.plus(term.coefficient.times(r(formation[keyOf(term.formula)]!))), Rational.zero);
    return sum(right).minus(sum(left)).times(r(1000));
  }
});

describe('published cells away from standard conditions', () => {
  const cells = nernstCases.filter((each) => each.given.conc_M !== undefined);
  it.each(cells)('are ours: $id, $source', (each) => {
    const { given, answer } = each;
    const quotient = reactionQuotient(parseEquation(given.reaction!), concentrations(given.conc_M!));
    if (answer.Q !== undefined) expectPrinted(quotient, answer.Q);
    const emf = nernstEmf(standardEmf(each), r(given.n!), quotient, temperature(each), CODATA);
    expectPrinted(emf, answer.E_V);
    expect(emf > 0).toBe(answer.spontaneous);
  });
  const concentrations = (given: Readonly<Record<string, number>>) =>
    new Map(Object.entries(given).map(([key, value]) => [key, r(value)]));

  it('in notation with concentrations, $id', () => {
    const [aluminium, zinc] = ['os-17.7-cyl', 'os-17.8-ex'].map((id) => nernstCases.find((each) => each.id === id)!);
    const reaction = parseEquation('3Cu^2+ + 2Al -> 3Cu + 2Al^3+');
    const quotient = reactionQuotient(reaction, concentrations({ 'Al^3+': 0.15, 'Cu^2+': 0.025 }));
    expectPrinted(quotient, aluminium!.answer.Q!);
    expectPrinted(nernstEmf(standardEmf(aluminium!), r(6), quotient, r(298.15), CODATA), aluminium!.answer.E_V);
    expectPrinted(nernstEmf(r(0), r(2), r('0.10').over(r('0.50')), r(298.15), CODATA), zinc!.answer.E_V);
  });

  const ions = nernstCases.filter((each) => each.given.ion !== undefined);
  it.each(ions)('for one ion on two sides are ours: $id, $source', (each) => {
    const { given } = each;
    const quotient = r(given.c_in_mM!).over(r(given.c_out_mM!));
    const emf = nernstEmf(r(0), r(given.z!), quotient, r(given.T_K!), CODATA) * 1000;
    expectPrinted(emf, ...printedOf(each, 'E_mV'));
  });

  const halves = nernstCases.filter((each) => each.given.half_cell !== undefined);
  const activities: Readonly<Record<string, Readonly<Record<string, string>>>> = {
    'der-n-cu-01': { 'Cu^2+': '0.10' },
    'der-n-fe-10': { 'Fe^3+': '10' },
    'der-n-h-ph7': { 'H^+': '1e-7' },
    'der-n-mno4-ph5': { 'H^+': '1e-5' },
  };
  it.each(halves)('for a half-cell are ours: $id, $source', (each) => {
    const { given, answer } = each;
    const given_ = new Map(Object.entries(activities[each.id]!).map(([key, value]) => [key, r(value)]));
    const quotient = reactionQuotient(parseEquation(given.half_cell!), given_);
    expectPrinted(nernstEmf(r(given.E0_V!), r(given.n!), quotient, r(given.T_K!), CODATA), answer.E_V);
  });

  it('are all looked at', () => {
    expect(cells.length + ions.length + halves.length + 2).toBe(nernstCases.length);
  });
});

describe('published energies and wavelengths of light', () => {
  const charge = parseDecimal('1.602176634').value.times(r('1e-19'));
  /** Not every case gives every quantity; the work of a case uses what it has. */
  interface Light {
    readonly lambda_nm: number;
    readonly nu_Hz: number;
    readonly k_J: number;
    readonly wavenumber_per_cm: number;
  }
  type LightCase = WorkedCase<Light>;
  const joules = (each: LightCase): Rational => photonEnergy(r(each.given.lambda_nm), CODATA);
  const ends = ({ given }: LightCase) => given.lambda_nm as unknown as readonly [number, number];
  const fromFrequency = (hertz: number) => CODATA.light.over(r(hertz)).times(r('1e9'));
  const work: Readonly<Record<string, (each: LightCase) => Readonly<Record<string, Rational>>>> = {
    'cp-100nm': (each) => ({ E_eV: joules(each).over(charge) }),
    'cp-vis': (each) => ({
      E_eV_red: photonEnergy(r(ends(each)[0]), CODATA).over(charge),
      E_eV_violet: photonEnergy(r(ends(each)[1]), CODATA).over(charge),
    }),
    'os-6-al': ({ given }) => ({ E_kJ_per_mol: molarPhotonEnergy(fromFrequency(given.nu_Hz), CODATA) }),
    'os-6-bohr46': ({ given }) => {
      const energy = r(given.k_J).times(Rational.of(1, 16).minus(Rational.of(1, 36)));
      return { E_J: energy, lambda_m: wavelengthOf(energy, CODATA).times(r('1e-9')) };
    },
    'os-6-cs-b': ({ given }) => {
      const wavelength = fromFrequency(given.nu_Hz);
      return { lambda_m: wavelength.times(r('1e-9')), E_J: photonEnergy(wavelength, CODATA) };
    },
    'os-6-na': ({ given }) => ({ nu_Hz: frequencyOf(r(given.lambda_nm), CODATA) }),
    'os-6-neon': (each) => ({ E_J: joules(each) }),
    'os-6-rgb-blue': (each) => ({ nu_Hz: frequencyOf(r(each.given.lambda_nm), CODATA), E_J: joules(each) }),
    'shef-ti': ({ given }) => {
      const wavelength = r('1e7').over(r(given.wavenumber_per_cm));
      return { lambda_nm: wavelength, E_kJ_per_mol: molarPhotonEnergy(wavelength, CODATA) };
    },
  };
  it.each(checkedCases<Light, unknown>('energy-wavelength'))('are ours: $id, $source', (each) => {
    for (const [name, value] of Object.entries(work[each.id]!(each))) expectPrinted(value, ...printedOf(each, name));
  });
});

describe('CODATA constants', () => {
  // CODATA 2022 (NIST), printed truncated after ten figures.
  it.each([
    ['faraday', '96485.33212'],
    ['gas', '8.314462618'],
  ] as const)('%s is the published one', (name, printed) => {
    const places = printed.split('.')[1]!.length;
    const truncated = CODATA[name].times(r(`1e${places}`));
    expect((truncated.n / truncated.d).toString()).toBe(printed.replace('.', ''));
  });
});
