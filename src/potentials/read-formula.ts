import type { Formula, SpeciesKey } from '../chemistry/formula.ts';
import { parseFormula } from '../chemistry/parse-formula.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { SheetRow } from './sheet.ts';

/**
 * Formulas read before, by their text: the same few hundred species stand in all the files. Emptied when it grows past all
 * use.
 */
const READ = new Map<string, Formula>();
const MOST = 4000;

/** The formula that a text stands for, read once. @throws Fault `bad-formula` */
export function readFormula(text: string): Formula {
  let formula = READ.get(text);
  if (!formula) {
    formula = parseFormula(text);
    if (READ.size >= MOST) READ.clear();
    READ.set(text, formula);
  }
  return formula;
}

/** The formula in a cell; the fault is kept and undefined returned when it is none. */
export function formulaIn(row: SheetRow, text: string): Formula | undefined {
  return text === '' ? undefined : row.attempt(() => readFormula(text));
}

/** The species keys in a cell, written the one way keys are written; `*` stands for itself when `any` is allowed. */
export function keysIn(row: SheetRow, column: string, any = false): SpeciesKey[] {
  return row.list(column).flatMap((part) => {
    if (part === '*' && any) return '*';
    const formula = formulaIn(row, part);
    return formula ? keyOf(formula) : [];
  });
}

/** The one species key in a cell that must not be empty. */
export function keyIn(row: SheetRow, column: string, any = false): SpeciesKey | undefined {
  const text = row.required(column);
  if (text === '*' && any) return '*';
  const formula = formulaIn(row, text);
  return formula && keyOf(formula);
}
