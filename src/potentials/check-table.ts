import type { Fault } from '../exact/fault.ts';
import { cycleText, openCycles } from './closure.ts';
import { nameCouples } from './couple-ids.ts';
import { FaultList } from './fault-list.ts';
import { type Overlay, overlaid, readOverlay } from './overlay.ts';
import { readCouples } from './read-couples.ts';

/** What is found in a department's table before it is used. */
export interface TableCheck {
  /** rows that were read without a fault */
  readonly rows: number;
  /** each with the line of its row; a table with faults is refused */
  readonly faults: readonly Fault[];
  /** cycles that do not add up with these values on top of ours, each with the line of a row in it; the table can be used */
  readonly warnings: readonly { readonly line: number; readonly message: string }[];
}

/**
 * Checks a department's table on top of the default one: every fault with its line and reason (unbalanced, unknown element,
 * doubled couple,
 * not a number, charge missing …), and nE° round every cycle that one of its rows is in.
 * @param files text of the data files by name; only `couples.csv` is looked at
 * @throws Faults when the default table itself is broken
 */
export function checkTable(table: Overlay, files: ReadonlyMap<string, string>): TableCheck {
  const own = new FaultList();
  const ours = readCouples('couples.csv', files.get('couples.csv') ?? '', own);
  own.throwIfAny();
  const faults = new FaultList();
  const theirs = readOverlay(table, faults);
  if (theirs.length === 0 && faults.isEmpty())
    faults.add('empty-table', 'expected at least one row under the header', { file: table.name });
  const rows = overlaid(ours, theirs);
  const couples = nameCouples(rows, faults);
  const lineOf = new Map(
    couples.map(({ id }, at) => [id, rows[at]!.row.place.file === table.name ? rows[at]!.row.place.line : undefined]),
  );
  const warnings = openCycles(couples).flatMap((cycle) => {
    const line = cycle.couples.map(({ id }) => lineOf.get(id)).find((found) => found !== undefined);
    return line === undefined ? [] : { line, message: cycleText(cycle) };
  });
  return { rows: theirs.length, faults: faults.all(), warnings };
}
