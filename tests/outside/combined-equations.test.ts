import { describe, expect, it } from 'vitest';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { sameEquation } from '../../src/chemistry/terms.ts';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { buildCombination } from '../../src/questions/families/combine-halves-build.ts';
import { solve } from '../../src/questions/solve.ts';
import { wordsOf } from '../families/reading.ts';
import { tables } from '../support/data.ts';
import { casesOf } from './cases.ts';

interface Answer {
  readonly equation: string;
  readonly equation_h_plus?: string;
}
const cases = casesOf<unknown, Answer>('balance');

/**
 * Published equations whose two couples stand in our table: oxidant's couple, then reductant's. Sources: each case names its own
 * (OpenStax Chemistry 2e), and the test's name repeats it.
 */
const COUPLES: Readonly<Record<string, readonly [string, string]>> = {
  'os-17-q23-eq': ['Au^3+/Au', 'Cu^2+/Cu'],
  'os-17.2-ex': ['MnO4^-/MnO2@alkali', 'CrO4^2-/Cr(OH)3'],
  'os-17.2-mgfe': ['Fe^3+/Fe^2+', 'Mg^2+/Mg'],
  'os-17.3-ex-eq': ['Cu^2+/Cu', 'Cr^3+/Cr'],
  'os-18.11-mno2': ['MnO2/Mn^2+', 'Cl2/Cl^-'],
  'os-4-q39a': ['Cu^2+/Cu^+', 'Sn^4+/Sn^2+'],
  'os-4-q41b': ['MnO4^2-/MnO2@alkali', 'MnO4^-/MnO4^2-'],
  'os-4-q41c': ['Br2/Br^-', 'SO4^2-/SO2'],
};

describe('two half-equations joined by the steps of the mark scheme', () => {
  const published = Object.entries(COUPLES).map(([id, couples]) => ({ ...cases.find((each) => each.id === id)!, couples }));

  it.each(published)('give the published equation $id, $source', ({ answer, source, couples: [oxidant, reductant] }) => {
    expect(source).not.toBe('');
    const pair = { oxidant: tables.couple(oxidant), reductant: tables.couple(reductant), medium: 'acid' } as const;
    const ask = { level: 'core', answering: 'written', units: 'dm' } as const;
    const { item } = buildCombination(
      { pair, oxidantFirst: true, given: 'as reductions' },
      tables,
      ask,
      wordsOf('combine-halves'),
    );
    const found = solve(item).get('equation')!;
    const theirs = parseEquation(answer.equation_h_plus ?? answer.equation);
    expect(found.kind === 'equation' && sameEquation(found.equation, theirs), writeEquation(theirs)).toBe(true);
  });
});
