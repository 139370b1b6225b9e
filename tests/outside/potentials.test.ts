import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { lowestTerms, sameEquation } from '../../src/chemistry/terms.ts';
import { decimalText } from '../../src/exact/decimal.ts';
import { readCsv } from '../../src/potentials/csv.ts';
import { TABLES } from '../potentials/default-tables.ts';

/** A published value. `lineage` tells which files go back to one critical compilation: they are one witness. */
interface Published {
  readonly couple: string;
  readonly half: string;
  readonly volts: number;
  readonly use: string;
  readonly lineage: string;
  readonly source: string;
}

const sheet = (name: string) => {
  const [header, ...rows] = readCsv(readFileSync(new URL(`data/${name}`, import.meta.url), 'utf8'));
  return rows.map(({ cells }) => Object.fromEntries(header!.cells.map((column, at) => [column, cells[at] ?? ''])));
};

const PUBLISHED: readonly Published[] = sheet('potentials-by-source.csv').map((row) => ({
  couple: row.couple!,
  half: row['half-equation']!,
  volts: Number(row['E / V']),
  use: row.use!,
  lineage: row.lineage!,
  source: row.source!,
}));

/** Beside a value that is known to be wrong (`no`), everything that was published counts. */
const usable = (id: string) => PUBLISHED.filter((row) => row.couple === id && row.use !== 'no');
const IDS = [...new Set(PUBLISHED.map((row) => row.couple))];
const ours = (id: string) => TABLES.couple(id).stored.value.toNumber();

/** Values that differ from everything published for the standard state, and why. */
const FORMAL: Readonly<Record<string, string>> = {
  'Ce^4+/Ce^3+': 'a formal potential in 1 mol dm⁻³ sulfuric acid, in which cerium(IV) is used; the row says so',
};

/** Couples on which all sources agree closely. */
const STRICT = [
  'Zn^2+/Zn',
  'Ag^+/Ag',
  'Pb^2+/Pb',
  'Cd^2+/Cd',
  'Cu^2+/Cu',
  'Fe^3+/Fe^2+',
  'MnO4^-/Mn^2+',
  'Cl2/Cl^-',
  'O2/H2O',
  'VO2^+/VO^2+',
  'V^3+/V^2+',
];

describe('every tabulated couple against published values of independent lineages', () => {
  it('covers the table: what no source could be read for says where it comes from', () => {
    const without = TABLES.couples.filter(({ id }) => !IDS.includes(id) && !inAppendixL(id));
    expect(without.filter(({ source }) => !/from memory|by closure|Modern Aspects of Electrochemistry/.test(source))).toEqual([]);
  });

  it('has two lineages or more for most, and prints the spread', () => {
    const lines = IDS.map((id) => {
      const values = usable(id).map((row) => row.volts);
      const lineages = new Set(usable(id).map((row) => row.lineage)).size;
      const spread = Math.max(...values) - Math.min(...values);
      return {
        id,
        lineages,
        spread,
        text: `${id.padEnd(28)} ours ${ours(id).toFixed(3)}  ${values.length} sources, ${lineages} lineages, spread ${spread.toFixed(3)} V`,
      };
    });
    process.stdout.write(`${lines.map(({ text }) => text).join('\n')}\n`);
    expect(lines.filter(({ lineages }) => lineages >= 2).length).toBeGreaterThanOrEqual(60);
  });

  it.each(IDS.filter((id) => !(id in FORMAL)))('holds for %s a value within the range of what is published', (id) => {
    const values = usable(id).map((row) => row.volts);
    expect(ours(id)).toBeGreaterThanOrEqual(Math.min(...values) - 0.0051);
    expect(ours(id)).toBeLessThanOrEqual(Math.max(...values) + 0.0051);
  });

  it.each(IDS)('names in a note every value that differs from ours by more than 0.02 V: %s', (id) => {
    const told = [...(TABLES.couple(id).note ?? '').matchAll(/-?\d+\.\d+(?= V)/g)].map(([text]) => Number(text));
    const untold = usable(id).filter(
      ({ volts }) => Math.abs(volts - ours(id)) > 0.0201 && !told.some((value) => Math.abs(value - volts) <= 0.0201),
    );
    expect(untold.map(({ volts, source }) => `${volts} V, ${source}`)).toEqual([]);
  });

  it.each(STRICT)('agrees for %s with every source within 0.006 V', (id) => {
    for (const row of usable(id)) expect(Math.abs(row.volts - ours(id)), row.source).toBeLessThanOrEqual(0.0061);
  });

  it('writes the same half-equation as the sources do', () => {
    const wrong = PUBLISHED.filter(
      (row) => row.use === 'yes' && !sameEquation(lowestTerms(parseEquation(row.half)), TABLES.couple(row.couple).half),
    );
    expect(wrong.map((row) => `${row.couple}: ${row.half}`)).toEqual([]);
  });

  it('says of a formal value that it is one', () => {
    for (const id of Object.keys(FORMAL)) expect(TABLES.couple(id).note).toMatch(/formal value/);
  });
});

/** OpenStax Chemistry 2e, Appendix L (m68870), CC BY-NC-SA 4.0; hypochlorous acid is written HOCl with us. */
const APPENDIX_L = sheet('electrode-potentials-openstax.csv').map((row) => ({
  half: lowestTerms(parseEquation(row.half_reaction!.replaceAll('HClO ', 'HOCl '))),
  volts: row.E_volts!,
}));

const inAppendixL = (id: string) => APPENDIX_L.find(({ half }) => sameEquation(half, TABLES.couple(id).half));

/** Rows of Appendix L that we do not follow, and why. */
const NOT_FOLLOWED: Readonly<Record<string, string>> = {
  'Cr2O7^2-/Cr^3+': '1.232 V is a low outlier; the text of the book uses 1.33 V',
  'MnO4^-/MnO2@alkali': '0.558 V belongs to manganate(VII)/manganate(VI)',
  'Fe^2+/Fe': 'section 17.6 of the same book has -0.44 V, between the values of the other lineages',
  'Co^3+/Co^2+': '1.83 V is given for 2 mol dm⁻³ sulfuric acid',
  'Ce^4+/Ce^3+': 'our value is the formal one of 1 mol dm⁻³ sulfuric acid',
};

describe('every couple of OpenStax Chemistry 2e, Appendix L, that we have', () => {
  const shared = TABLES.couples.filter(({ id }) => inAppendixL(id) !== undefined);

  it('is more than half of our table', () => {
    expect(shared.length).toBeGreaterThanOrEqual(50);
  });

  it.each(shared.map(({ id }) => id))('has its value as printed there, digit for digit: %s', (id) => {
    const printed = Number(inAppendixL(id)!.volts);
    if (id in NOT_FOLLOWED) expect(ours(id)).not.toBe(printed);
    else expect(Number(decimalText(TABLES.couple(id).stored))).toBe(printed);
  });
});
