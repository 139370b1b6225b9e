import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { sameEquation } from '../../src/chemistry/terms.ts';
import { TABLES } from '../potentials/default-tables.ts';
import { inProcess, jsonOf, textOf } from './in-process.ts';
import { couplet, emptyFolder } from './run-couplet.ts';

let own: string;
let bad: string;
let open: string;
beforeAll(() => {
  const folder = emptyFolder();
  [own, bad, open] = ['own.csv', 'bad.csv', 'open.csv'].map((name) => join(folder, name)) as [string, string, string];
  writeFileSync(open, 'half-equation,E° / V\n\nMnO4^- + 8H^+ + 5e^- -> Mn^2+ + 4H2O,1.40\n');
  const rows = ['Fe^3+ + e^- -> Fe^2+,0.68,hall data sheet', 'V^3+ + e^- -> V^2+,-0.01', 'Tl^3+ + 2e^- -> Tl^+,1.25,'];
  writeFileSync(own, `half-equation,E° / V,note\n${rows.join('\n')}\n`);
  const faults = ['Fe^3+ -> Fe^2+,0.77', 'Tl^3+ + 2e^- -> Tl+,1.25', 'Xy^2+ + 2e^- -> Xy,1', 'Cu^2+ + 2e^- -> Cu,0.3x'];
  writeFileSync(bad, `half-equation,E° / V\n${faults.join('\n')}\nAg^+ + e^- -> Ag,0.8\nAg^+ + e^- -> Ag,0.79\n`);
});

describe('couplet table', () => {
  it('prints the table in force, most negative first, with medium and source', async () => {
    const { status, stdout } = await couplet(['table', '--json']);
    expect(status).toBe(0);
    const rows = JSON.parse(stdout);
    expect(rows.map(({ couple }: { couple: string }) => couple)).toEqual(TABLES.couples.map(({ id }) => id));
    for (const [at, { half, stored, medium, source }] of TABLES.couples.entries()) {
      expect(Object.keys(rows[at])).toEqual(['couple', 'halfEquation', 'potential', 'medium', 'source']);
      expect(sameEquation(parseEquation(rows[at].halfEquation), half)).toBe(true);
      expect(Number(rows[at].potential)).toBe(stored.value.toNumber());
      expect(rows[at]).toMatchObject({ medium, source });
    }
    expect(await textOf('table')).toMatch(/\n−0\.7618 +Zn\^2\+\(aq\) \+ 2e\^- <=> Zn\(s\) +neutral +OpenStax/);
  });

  it('lays a department’s own table on top and names it', async () => {
    const text = await textOf('table', '--table', own);
    expect(text).toContain('Table in force (default + own.csv): 103 couples');
    expect(text).toMatch(/\+0\.68 +Fe\^3\+.*own\.csv; hall data sheet/);
  });
});

describe('couplet table check', () => {
  it('says that a table can be used, and which cycles do not add up', async () => {
    expect(await textOf('table', 'check', own)).toMatch(/own\.csv: 3 rows, no faults; it can be used\.\n$/);
    const text = await textOf('table', 'check', open);
    expect(text).toMatch(
      /open\.csv: 1 row, no faults; it can be used\.\n {2}line 3: the potentials of MnO4\^-\/Mn\^2\+ \(\+1\.40 V\), /,
    );
    expect(text).toContain('do not add up round their cycle: they miss by 0.112 V per electron');
  });

  it('reports every fault with its line, and ends with status 2', async () => {
    const { status, stdout, stderr } = await inProcess(['table', 'check', bad]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    for (const said of [
      'bad.csv:2: a half-equation has electrons on the left',
      'bad.csv:2: the half-equation does not balance (charge: left has 1 more)',
      'bad.csv:3: for the thallium(I) ion write `Tl^+`',
      'bad.csv:4: no element has the symbol `Xy`',
      'bad.csv:5: expected a decimal number such as -0.76, found `0.3x`',
      'bad.csv:7: this couple stands on line 6 already',
    ])
      expect(stderr).toContain(said);
  });

  it('prints the same as JSON', async () => {
    const { status, stdout } = await inProcess(['table', 'check', bad, '--json']);
    expect(status).toBe(2);
    const found = JSON.parse(stdout);
    expect(found.faults.map(({ line }: { line: number }) => line)).toEqual([2, 2, 3, 4, 5, 7]);
    expect(found.faults[0].code).toBe('not-a-reduction');
    expect(await jsonOf('table', 'check', own)).toEqual({ file: own, rows: 3, faults: [], warnings: [] });
    expect((await jsonOf('table', 'check', open)).warnings[0]).toEqual({
      line: 3,
      reason: expect.stringContaining('MnO4^-/Mn^2+'),
    });
  });
});

describe('couplet table compare', () => {
  it('lists differences, and the answers that flip', async () => {
    const found = await jsonOf('table', 'compare', 'default', own);
    expect(found.values).toEqual([
      { couple: 'V^3+/V^2+', first: '-0.26', second: '-0.01' },
      { couple: 'Fe^3+/Fe^2+', first: '0.771', second: '0.68' },
    ]);
    expect(found.onlySecond).toEqual(['Tl^3+/Tl^+']);
    expect(found.pairs).toContainEqual({
      oxidant: 'Ag^+/Ag',
      reductant: 'Fe^3+/Fe^2+',
      first: { emf: '0.03', outcome: 'borderline' },
      second: { emf: '0.12', outcome: 'reacts' },
    });
    expect(found.ladders).toContainEqual({
      start: 'VO2^+',
      reagent: 'Sn',
      first: ['VO2^+', 'VO^2+', 'V^3+'],
      second: ['VO2^+', 'VO^2+', 'V^3+', 'V^2+'],
    });
    const text = await textOf('table', 'compare', 'default', own);
    expect(text).toContain('VO2^+ with Sn: VO2^+ → VO^2+ → V^3+; then VO2^+ → VO^2+ → V^3+ → V^2+');
  });

  it('finds no difference between a table and itself', async () => {
    expect(await textOf('table', 'compare', own, own)).toContain('hold the same couples and potentials');
  });
});

describe('couplet table, mistyped', () => {
  it.each([
    [['chek', 'own.csv'], 'expected `check FILE` or `compare A B`'],
    [['check'], 'expected one file after `couplet table check`, found 0'],
    [['compare', 'default'], 'expected two tables after `couplet table compare`, found 1'],
    [['check', 'nowhere.csv'], 'expected to read `nowhere.csv`, but there is no such file'],
    [['--table', 'nowhere.csv'], 'expected to read `nowhere.csv`, but there is no such file'],
    [['check', 'default', '--table', 'x'], 'found --table as well'],
  ])('%j is told', async (args, said) => {
    const { status, stderr } = await inProcess(['table', ...args]);
    expect(status).toBe(2);
    expect(stderr).toContain(said);
  });
});
