import type { Table } from '../../../document/block.ts';
import type { Inline } from '../../../document/inline.ts';
import { speakInlines } from '../../../document/spoken.ts';
import { fieldIn } from '../fields.ts';
import { type Item, shift } from '../item.ts';
import { inner, type Room } from '../room.ts';
import { type Slab, slab } from '../slab.ts';
import { addTag, type Tag } from '../tag.ts';
import { layCell } from './table-cell.ts';

/** How a table is ruled: `data` has hairlines under rows only, `answer` is a grid with room to write in. */
export interface TableStyle {
  readonly grid: boolean;
  readonly rowHeight: number;
  /** spreads the columns over the room and leaves out the outer rules: something else frames the table */
  readonly framed?: boolean;
}

/** What the rows of a table share, and the tag of one. */
export interface RowPlan {
  readonly table: Table;
  readonly room: Room;
  readonly widths: readonly number[];
  readonly pad: number;
  readonly style: TableStyle;
  readonly row: Tag;
  readonly header: boolean;
}

/** One row as a single slab, its cells side by side. */
export function layRow(cells: Table['header'], plan: RowPlan): Slab {
  const { room, widths, pad, table } = plan;
  const items: Item[] = [];
  let x = room.x;
  let height = plan.header ? 0 : plan.style.rowHeight;
  const cellSlabs: Slab[] = [];
  const open: { room: Room; what: string }[] = [];
  for (const [i, width] of widths.entries()) {
    const heading = plan.header ? 'Column' : i === 0 && table.rowHeaders ? 'Row' : undefined;
    const tag = heading ? addTag(plan.row, 'TH', { scope: heading }) : addTag(plan.row, 'TD');
    const pen = plan.header ? { face: 'strong' as const } : {};
    const cell = inner({ ...room, x: x + pad }, { width: width - 2 * pad, tag, pen });
    const content = layCell(cells[i] ?? [], cell, table.align[i] ?? 'start');
    height = Math.max(height, content.height + pad * 0.55);
    cellSlabs.push(content);
    if (isOpen(cells[i], plan)) open.push({ room: { ...cell, x, width }, what: cellWords(table, cells, i) });
    x += width;
  }
  for (const content of cellSlabs) {
    const dy = plan.style.grid ? (height - content.height) / 2 : pad * 0.275;
    items.push(...content.items.map((item) => shift(item, 0, dy)));
  }
  for (const { room: cell, what } of open) items.push(...fieldIn(cell, what, [cell.x + 1, 1, cell.width - 2, height - 2]));
  return slab(height, items);
}

/** An empty cell of a grid is there to be filled in. */
function isOpen(cell: readonly Inline[] | undefined, { style, header }: RowPlan): boolean {
  return style.grid && !header && speakInlines(cell ?? []) === '';
}

/** `first, colour of the solution` */
function cellWords(table: Table, cells: Table['header'], column: number): string {
  return [cells[0], table.header[column]].flatMap((each) => speakInlines(each ?? []) || []).join(', ');
}
