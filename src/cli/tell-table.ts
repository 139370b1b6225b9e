import type { Couple } from '../chemistry/couple.ts';
import { writeEquation } from '../chemistry/write-equation.ts';
import { printDecimal } from '../exact/decimal.ts';
import type { TableCheck } from '../potentials/check-table.ts';
import type { FlippedPair, TableComparison } from '../potentials/compare-tables.ts';
import { columns, lines, volts } from './tell.ts';

/** The table in force, most negative first: E° as published, half-equation, medium, source and note. */
export function tellTable(couples: readonly Couple[], table: string): string {
  const rows = couples.map(({ half, stored, medium, source, note }) => [
    printDecimal(stored, true),
    writeEquation(half, '<=>', { state: true }),
    medium,
    note === undefined ? source : `${source}; ${note}`,
  ]);
  return lines(
    `Table in force (${table}): ${couples.length} couples, in order of potential. Values as published; sheets print and use two decimals.`,
    '',
    columns([['E° / V', 'half-equation', 'medium', 'source'], ...rows], ''),
  );
}

/** A table that can be used, and what its owner should know. */
export function tellCheck(file: string, { rows, warnings }: TableCheck): string {
  return lines(
    `${file}: ${rows} ${rows === 1 ? 'row' : 'rows'}, no faults; it can be used.`,
    warnings.map(({ line, message }) => `  line ${line}: ${message}`),
  );
}

/** How two tables differ, and which answers flip. */
export function tellComparison(
  { values, onlyFirst, onlySecond, pairs, ladders }: TableComparison,
  [one, other]: readonly [string, string],
): string {
  const nothing = [values, onlyFirst, onlySecond].every(({ length }) => length === 0);
  if (nothing) return `${one} and ${other} hold the same couples and potentials.`;
  return lines(
    section(
      `Potentials that differ (${one}, then ${other}):`,
      columns(values.map(({ id, first, second }) => [id, volts(first), volts(second)])),
    ),
    section(`Only in ${one}:`, columns(onlyFirst.map((id) => [id]))),
    section(`Only in ${other}:`, columns(onlySecond.map((id) => [id]))),
    pairs.length + ladders.length === 0 ? 'No answer flips.' : undefined,
    section('Pairs whose answer flips, by potentials to two decimals as sheets use them:', columns(pairs.map(pairRow))),
    section(
      'Ladders in acid that stop at another rung:',
      ladders.map(
        ({ start, reagent, first, second }) => `  ${start} with ${reagent}: ${first.join(' → ')}; then ${second.join(' → ')}`,
      ),
    ),
  ).trimEnd();
}

function section(title: string, rows: readonly string[]): string[] {
  return rows.length === 0 ? [] : [title, ...rows, ''];
}

function pairRow({ oxidant, reductant, first, second }: FlippedPair): string[] {
  const side = ({ emf, outcome }: FlippedPair['first']) => `${volts(emf)} ${outcome}`;
  return [`${oxidant} with ${reductant}`, side(first), side(second)];
}
