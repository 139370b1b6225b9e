import type { Table } from '../../../document/block.ts';
import type { Inline } from '../../../document/inline.ts';
import { speakInlines } from '../../../document/spoken.ts';
import { fieldIn } from '../fields.ts';
import { INK, type Item, rule, shift } from '../item.ts';
import { inner, type Room } from '../room.ts';
import { KEEP, type Slab, slab } from '../slab.ts';
import { addTag, type Tag } from '../tag.ts';
import { columnWidths } from './column-widths.ts';
import { layStackedTable } from './stacked-table.ts';
import { layCell } from './table-cell.ts';

/** How a table is ruled: `data` has hairlines under rows only, `answer` is a grid with room to write in. */
export interface TableStyle {
  readonly grid: boolean;
  readonly rowHeight: number;
  /** spreads the columns over the room and leaves out the outer rules: something else frames the table */
  readonly framed?: boolean;
}

/** A table, laid out by us: a header row, then rows. Short tables stay whole. */
export function layTable(table: Table, room: Room, style: TableStyle = { grid: false, rowHeight: 0 }): Slab[] {
  const pad = room.pen.size * 0.5;
  const widths = columnWidths(table, room, pad, style.framed ?? false);
  if (!widths) return layStackedTable(table, room);
  const tag = addTag(room.tag, 'Table', table.summary ? { summary: table.summary } : {});
  const slabs: Slab[] = [];
  if (table.header.length > 0) {
    const head = addTag(addTag(tag, 'THead'), 'TR');
    slabs.push(layRow(table.header, { table, room, widths, pad, style, row: head, header: true }));
  }
  const body = addTag(tag, 'TBody');
  for (const cells of table.rows) {
    slabs.push(layRow(cells, { table, room, widths, pad, style, row: addTag(body, 'TR'), header: false }));
  }
  return finish(slabs, room, widths, style);
}

interface RowPlan {
  readonly table: Table;
  readonly room: Room;
  readonly widths: readonly number[];
  readonly pad: number;
  readonly style: TableStyle;
  readonly row: Tag;
  readonly header: boolean;
}

function layRow(cells: Table['header'], plan: RowPlan): Slab {
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

/** Adds the rules, and says where a page may turn. */
function finish(slabs: readonly Slab[], room: Room, widths: readonly number[], style: TableStyle): Slab[] {
  const total = widths.reduce((sum, width) => sum + width, 0);
  const { hairline, step } = room.pen.measures;
  return slabs.map((part, i) => {
    const last = i === slabs.length - 1;
    const firm = i === 0 || last || style.grid;
    const under = last && style.framed ? [] : [rule(room.x, part.height, total, 0, hairline, firm ? INK.rule : INK.faint)];
    const over = i === 0 && !style.framed ? [rule(room.x, 0, total, 0, hairline, INK.rule)] : [];
    const sides = style.grid ? verticals(room.x, widths, part.height, hairline) : [];
    const after = last ? 0 : slabs.length <= 8 || i === 0 || i >= slabs.length - 2 ? KEEP : 20;
    return { ...part, items: [...over, ...sides, ...part.items, ...under], above: i === 0 ? step * 1.2 : 0, after };
  });
}

function verticals(x: number, widths: readonly number[], height: number, hairline: number): Item[] {
  const edges = [0];
  for (const width of widths) edges.push(edges.at(-1)! + width);
  return edges.map((edge) => rule(x + edge, 0, 0, height, hairline, INK.rule));
}
