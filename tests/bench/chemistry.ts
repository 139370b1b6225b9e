import { join } from 'node:path';
import type { Reactant } from '../../src/chemistry/mixture.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { react } from '../../src/chemistry/react.ts';
import { solveEquation } from '../../src/chemistry/solve-equation.ts';
import { Rational } from '../../src/exact/rational.ts';
import { readTables } from '../../src/potentials/read-tables.ts';
import { ms, row, warmTime } from './measure.ts';

/** Ionic, whole, half, disproportionation, without redox: as a user types them. */
const EQUATIONS = [
  'MnO4^- + C2O4^2- -> Mn^2+ + CO2',
  'Cr2O7^2- + Fe^2+ -> Cr^3+ + Fe^3+',
  'Cr2O7^2-/Cr^3+',
  'Cl2 -> Cl^- + ClO3^-',
  'CuFeS2 + O2 -> CuO + Fe2O3 + SO2',
  '(NH4)2Cr2O7 -> Cr2O3 + N2 + H2O',
  'AgNO3 + CaCl2 -> AgCl + Ca(NO3)2',
  'K4[Fe(CN)6] + KMnO4 + H2SO4 -> KHSO4 + Fe2(SO4)3 + MnSO4 + HNO3 + CO2 + H2O',
];

/** A species and an excess of another: one step, several, none. */
const MIXTURES: readonly (readonly [string, string])[] = [
  ['VO2^+', 'Zn'],
  ['VO2^+', 'Sn'],
  ['Cr2O7^2-', 'Zn'],
  ['MnO4^-', 'Fe^2+'],
  ['Fe^3+', 'I^-'],
  ['Cu^2+', 'Cl^-'],
];

const ROUNDS = 60;

/** The engine alone, in a process that has done it before; every text is read anew. */
export function chemistry(root: string): string[] {
  const { couples, facts } = readTables(join(root, 'potentials'));
  const balance = () => {
    for (const text of EQUATIONS) solveEquation(text);
  };
  const mix = () => {
    for (const [key, other] of MIXTURES) {
      const reactants: Reactant[] = [
        { formula: parseFormula(key), amount: Rational.one },
        { formula: parseFormula(other), amount: 'excess' },
      ];
      react({ reactants, medium: 'acid', values: 'stored' }, couples, facts);
    }
  };
  return [
    rate('an equation balanced', warmTime(balance, ROUNDS) / EQUATIONS.length),
    rate('a mixture', warmTime(mix, ROUNDS) / MIXTURES.length),
  ];
}

function rate(what: string, time: number): string {
  return row(what, ms(time), `${(1000 / time).toFixed(0)} a second`);
}
