import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { median, ms, row, times, wallTime } from './measure.ts';

const ROUNDS = 15;

/** One line for each calculator. */
const LINES: readonly (readonly string[])[] = [
  ['balance', 'MnO4^- + C2O4^2- -> Mn^2+ + CO2'],
  ['oxidation', 'K2Cr2O7'],
  ['mass', 'CuSO4·5H2O'],
  ['colour', 'V^3+'],
  ['name', '[Co(NH3)6]Cl3'],
  ['electrons', 'Cr^3+'],
  ['cell', 'Zn^2+/Zn', 'Cu^2+/Cu'],
  ['react', 'Cr2O7^2-', 'Zn', '--excess', 'Zn'],
  ['titration', 'titrant=MnO4^-', 'analyte=Fe^2+', 'titrant-concentration=0.02', 'titre=23.4'],
  ['table'],
];

/** Calculators as whole processes beside a Node program that does nothing, in turns, so that a busy machine slows them all alike. */
export function startUp(root: string): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'couplet-bench-'));
  try {
    const empty = join(folder, 'empty.mjs');
    writeFileSync(empty, '');
    const programs = [[empty], ...LINES.map((line) => [join(root, 'src/cli/couplet.mjs'), ...line])];
    const rounds = Array.from({ length: ROUNDS }, () => programs.map((program) => wallTime(program, 1)));
    const medians = programs.map((_, at) => median(rounds.map((round) => round[at]!)));
    const names = ['empty Node program', ...LINES.map(([name]) => `couplet ${name}`)];
    return names.map((name, at) => row(name, ms(medians[at]!), at === 0 ? '' : times(medians[at]!, medians[0]!)));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
