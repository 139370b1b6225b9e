import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inProcess } from './in-process.ts';

/** Pieces that formulas, equations, couples and quantities are made of, and some that they are not. */
const PIECES =
  'Fe Cu Zn Mn Cr V O H Cl S N C K Na I Ag Co NH4 SO4 NO3 OH CN H2O Uuo Q e e^- ^ 2 3 7 10 0 1/2 ½ ⁻ ² ₂ ⁺ + - − -> <=> ⇌ → = / | ‖ · * . ( ) [ ] ' +
  '(aq) (s) en edta @acid @alkali 0.34 -0.76 1e-3 1e999 9999999999 , ; : \t \n " \' \\ # % & < > ☃ é 💧 \u0000 \u202e \ue000 __proto__ constructor default check compare ' +
  'titre= titrant= analyte= aliquot= ratio= sought= titres= sample= flask= titrant-concentration=';
const pieces = fc.constantFrom(...PIECES.split(' '), ' ', ' + ', ' -> ');
const made = fc.array(pieces, { minLength: 1, maxLength: 12 }).map((parts) => parts.join(''));

/** Right inputs, of which the fuzz changes a character. */
const RIGHT = [
  'MnO4^- + C2O4^2- -> Mn^2+ + CO2',
  'Cr2O7^2-/Cr^3+',
  'CuSO4·5H2O',
  '[Co(NH3)6]Cl3',
  'Ag^+/Ag=0.7996',
  'Fe^3+ + e^- <=> Fe^2+',
  'MnO4^-/MnO2@alkali',
  'Cr2O7^2-',
  'Zn',
  'VO2^+',
  'KMnO4',
  'titrant=MnO4^-',
  'titre=23.40',
  'sought=Fe2O3',
] as const;
const changed = fc
  .tuple(fc.constantFrom(...RIGHT), fc.nat(40), pieces, fc.nat(2))
  .map(([text, at, piece, cut]) => text.slice(0, at) + piece + text.slice(at + cut));
const text = fc.oneof(made, changed, fc.constantFrom(...RIGHT), fc.string({ unit: 'binary', maxLength: 60 }));

const pair = fc.tuple(
  fc.constantFrom('Zn', 'Cu^2+', 'H^+', 'Fe^2+', 'KMnO4', 'Q'),
  fc.constantFrom('1', '0.5', '1e-9', 'x', '-2', '1/3'),
);
const value = fc.oneof(
  text,
  pair.map(([key, number]) => `${key}=${number}`),
  fc.constantFrom('acid', 'alkali', 'neutral', 'warm', '310', '0'),
);
const option = (name: string) => value.map((each) => [`--${name}`, each]);

/** Commands, their options with a value, and how many operands they take. */
const COMMANDS: readonly (readonly [name: string, options: readonly string[], most: number])[] = [
  ['balance', ['medium', 'couple'], 3],
  ['oxidation', [], 3],
  ['mass', [], 3],
  ['colour', [], 3],
  ['cell', ['with', 'temperature'], 2],
  ['react', ['medium', 'amount', 'excess', 'given'], 3],
  ['name', [], 3],
  ['electrons', [], 3],
  ['titration', ['medium'], 8],
  ['table', [], 3],
];

const FULL = (process.env.COUPLET_FULL ?? '') !== '';
/** Few lines by default, many with COUPLET_FULL=1. */
const RUNS = FULL ? 10_000 : 400;

describe('whatever is typed', () => {
  it.each(COMMANDS)('%s answers, or tells a mistake', { timeout: 600_000 }, async (name, options, most) => {
    const operands = fc.array(text, { maxLength: most });
    const typed = options.length === 0 ? fc.constant([]) : fc.array(fc.oneof(...options.map(option)), { maxLength: 3 });
    const line = fc.tuple(operands, typed, fc.boolean(), fc.option(text, { nil: undefined }));
    await fc.assert(
      fc.asyncProperty(line, async ([words, given, json, input]) => {
        const { status, stdout, stderr } = await inProcess([name, ...words, ...given.flat(), ...(json ? ['--json'] : [])], input);
        expect(status, stderr).not.toBe(1);
        expect(status === 0 ? stderr : stdout).toBe('');
        if (status === 0 && json && stdout.startsWith('{')) expect(JSON.parse(stdout)).toBeTypeOf('object');
      }),
      { numRuns: RUNS },
    );
  });
});
