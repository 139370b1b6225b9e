import { readFileSync } from 'node:fs';
import { MF } from 'mf-parser';
import { describe, expect, it } from 'vitest';
import { decimalText } from '../../src/exact/decimal.ts';
import { readCsv } from '../../src/potentials/csv.ts';
import { TABLES } from '../potentials/default-tables.ts';

/** Source: CIAAW Standard Atomic Weights 2021, abridged (Prohaska et al. 2022, doi 10.1515/pac-2019-0603), via MilanSkocic/ciaaw (MIT). */
const CIAAW = new Map(
  readCsv(readFileSync(new URL('data/atomic-weights-ciaaw2021.csv', import.meta.url), 'utf8'))
    .slice(1)
    .map(({ cells }) => [cells[0]!, cells[1]!]),
);

describe('relative atomic masses', () => {
  it('are the abridged standard atomic weights of 2021, all of them', () => {
    expect([...TABLES.atomicMasses].map(([symbol, { published }]) => [symbol, Number(decimalText(published))])).toEqual(
      [...CIAAW].map(([symbol, weight]) => [symbol, Number(weight)]),
    );
  });

  it('agree with a reference library (mf-parser, MIT) within 0.02', () => {
    // Pb, Ar and Li vary with the sample; the library still has earlier single values there.
    const far = [...TABLES.atomicMasses].filter(
      ([symbol, { published }]) => Math.abs(new MF(symbol).getInfo().mass - published.value.toNumber()) > 0.02,
    );
    expect(far.map(([symbol]) => symbol)).toEqual([]);
  });

  it.each([
    ['H', '1.0'],
    ['C', '12.0'],
    ['O', '16.0'],
    ['Cl', '35.5'],
    ['Cu', '63.5'],
    ['Fe', '55.8'],
    ['Mn', '54.9'],
    ['Cr', '52.0'],
    ['Mg', '24.3'],
    ['I', '126.9'],
    ['S', '32.1'],
    ['K', '39.1'],
  ])('print %s as %s', (symbol, printed) => {
    expect(decimalText(TABLES.atomicMasses.get(symbol)!.printed)).toBe(printed);
  });
});
