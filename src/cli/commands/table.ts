import { join } from 'node:path';
import { Fault, Faults } from '../../exact/fault.ts';
import { command } from '../command.ts';
import type { Desk } from '../desk.ts';
import type { Given } from '../options.ts';

type Typed = Given<'table' | 'json'>;

export const table = command({
  name: 'table',
  summary: 'print the table of potentials in force, check one of your own, or compare two',
  operand: {
    name: 'check FILE | compare A B',
    help: 'FILE, A and B are tables of your own (CSV: half-equation, E° / V, note), or `default` for the one that comes with couplet',
    count: 'at most three',
  },
  options: ['table', 'json'],
  example: { line: 'couplet table compare default own.csv', does: 'values that differ, and the answers that flip' },
  run: (given, [word, ...files], desk) => {
    if (word === undefined) return show(given, desk);
    const expected = word === 'check' ? 1 : word === 'compare' ? 2 : undefined;
    if (expected === undefined)
      throw new Fault('bad-operand', `expected \`check FILE\` or \`compare A B\` after \`couplet table\`, found \`${word}\``);
    if (files.length !== expected || given.table !== undefined) {
      const wanted = word === 'check' ? 'one file' : 'two tables';
      const found = given.table === undefined ? `found ${files.length}` : 'found --table as well';
      throw new Fault('bad-operand', `expected ${wanted} after \`couplet table ${word}\`, ${found}`);
    }
    return word === 'check' ? check(files[0]!, given, desk) : compare([files[0]!, files[1]!], given, desk);
  },
});

async function show(given: Typed, desk: Desk): Promise<void> {
  const { readCouplesOnly } = await import('../../potentials/read-couples-only.ts');
  const { couples, name } = readCouplesOnly(join(desk.root, 'potentials'), given.table);
  if (given.json) {
    const { tableRow } = await import('../calculators/table.ts');
    return desk.print(JSON.stringify(couples.map(tableRow), undefined, 2));
  }
  const { tellTable } = await import('../tell-table.ts');
  desk.print(tellTable(couples, name));
}

/** @throws Faults with every fault of the file; with `--json` they are printed as well */
async function check(file: string, given: Typed, desk: Desk): Promise<void> {
  const [{ checkTable }, { readText }] = await Promise.all([
    import('../../potentials/check-table.ts'),
    import('../../potentials/read-text.ts'),
  ]);
  const ours = new Map([['couples.csv', readText(join(desk.root, 'potentials', 'couples.csv'))]]);
  const found = checkTable({ name: file, text: readText(file) }, ours);
  if (given.json) {
    const { checkAnswer } = await import('../calculators/table.ts');
    desk.print(JSON.stringify(checkAnswer(file, found), undefined, 2));
  }
  if (found.faults.length > 0) throw new Faults(found.faults);
  if (given.json) return;
  const { tellCheck } = await import('../tell-table.ts');
  desk.print(tellCheck(file, found));
}

async function compare(names: readonly [string, string], given: Typed, desk: Desk): Promise<void> {
  const [{ compareTables }, { readTables }] = await Promise.all([
    import('../../potentials/compare-tables.ts'),
    import('../../potentials/read-tables.ts'),
  ]);
  const read = (name: string) => readTables(join(desk.root, 'potentials'), name === 'default' ? undefined : name);
  const found = compareTables(read(names[0]), read(names[1]));
  if (given.json) {
    const { comparisonAnswer } = await import('../calculators/table.ts');
    return desk.print(JSON.stringify(comparisonAnswer(found), undefined, 2));
  }
  const { tellComparison } = await import('../tell-table.ts');
  desk.print(tellComparison(found, names));
}
