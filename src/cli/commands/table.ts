import { join } from 'node:path';
import { Fault, Faults } from '../../exact/fault.ts';
import { checkTable } from '../../potentials/check-table.ts';
import { compareTables } from '../../potentials/compare-tables.ts';
import { readCouplesOnly } from '../../potentials/read-couples-only.ts';
import { readTables } from '../../potentials/read-tables.ts';
import { readText } from '../../potentials/read-text.ts';
import { checkAnswer, comparisonAnswer, tableRow } from '../calculators/table.ts';
import { command } from '../command.ts';
import type { Desk } from '../desk.ts';
import type { Given } from '../options.ts';
import { tellCheck, tellComparison, tellTable } from '../tell-table.ts';

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
  run: async (given, [word, ...files], desk) => {
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

function show(given: Typed, desk: Desk): void {
  const { couples, name } = readCouplesOnly(join(desk.root, 'potentials'), given.table);
  desk.print(given.json ? JSON.stringify(couples.map(tableRow), undefined, 2) : tellTable(couples, name));
}

/** @throws Faults with every fault of the file; with `--json` they are printed as well */
function check(file: string, given: Typed, desk: Desk): void {
  const ours = new Map([['couples.csv', readText(join(desk.root, 'potentials', 'couples.csv'))]]);
  const found = checkTable({ name: file, text: readText(file) }, ours);
  if (given.json) desk.print(JSON.stringify(checkAnswer(file, found), undefined, 2));
  if (found.faults.length > 0) throw new Faults(found.faults);
  if (!given.json) desk.print(tellCheck(file, found));
}

function compare(names: readonly [string, string], given: Typed, desk: Desk): void {
  const read = (name: string) => readTables(join(desk.root, 'potentials'), name === 'default' ? undefined : name);
  const found = compareTables(read(names[0]), read(names[1]));
  desk.print(given.json ? JSON.stringify(comparisonAnswer(found), undefined, 2) : tellComparison(found, names));
}
