import type { Couple } from '../chemistry/couple.ts';
import type { Table } from '../document/block.ts';
import { equation, text } from '../document/inlines.ts';

/** Half-equations as reductions with ⇌, without their potentials: for questions that make no use of those. */
export function halfEquationTable(couples: readonly Couple[]): Table {
  return {
    kind: 'table',
    summary: 'Half-equations, written as reductions',
    header: [[text('Half-equation')]],
    rows: couples.map(({ half }) => [[equation(half, 'reversible')]]),
    rowHeaders: false,
    align: ['start'],
  };
}
