import type { Couple } from '../chemistry/couple.ts';
import type { Table } from '../document/block.ts';
import type { Inline } from '../document/inline.ts';
import { equation, quantity, text } from '../document/inlines.ts';
import { symbol } from '../document/symbols.ts';
import { printDecimal } from '../exact/decimal.ts';

/** A row of a table of potentials: the couple, what is written before its half-equation, and the datum its value prints. */
export interface PotentialRow {
  readonly couple: Couple;
  readonly before: readonly (readonly Inline[])[];
  readonly datum: string;
}

/** Half-equations with ⇌ and their E° in volts, as printed (two decimals, always with a sign). */
export function potentialTable(rows: readonly PotentialRow[], before: readonly string[] = []): Table {
  return {
    kind: 'table',
    summary: 'Half-equations with their standard electrode potentials',
    header: [...before.map((words) => [text(words)]), [text('Half-equation')], [symbol('E°'), text(' / V')]],
    rows: rows.map(({ couple, before: cells, datum }) => [
      ...cells,
      [equation(couple.half, 'reversible')],
      [quantity(printDecimal(couple.printed, true), '', datum)],
    ]),
    rowHeaders: before.length > 0,
    align: [...before.map(() => 'start' as const), 'start', 'end'],
  };
}
