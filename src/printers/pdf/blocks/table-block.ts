import type { Table } from '../../../document/block.ts';
import { inner, type Room } from '../room.ts';
import { LARGE } from '../settings.ts';
import { keepTogether, type Slab, unmarked, withAgain } from '../slab.ts';
import { addTag } from '../tag.ts';
import { columnWidths } from './column-widths.ts';
import { layFolded } from './folded-table.ts';
import { layStackedTable } from './stacked-table.ts';
import { layRow, type TableStyle } from './table-row.ts';
import { withRules } from './table-rules.ts';

/** A table, laid out by us: a header row, then rows. Short tables stay whole. */
export function layTable(table: Table, given: Room, style: TableStyle = { grid: false, rowHeight: 0 }): Slab[] {
  const { size } = given.pen.measures;
  const room = table.small && size.text <= LARGE ? inner(given, { pen: { size: size.small } }) : given;
  const folded = layFolded(table, room);
  if (folded) return folded;
  const pad = room.pen.size * 0.5;
  const widths = columnWidths(table, room, pad, style.framed ?? false);
  if (!widths) return layStackedTable(table, room);
  const tag = addTag(room.tag, 'Table', table.summary ? { summary: table.summary } : {});
  const plan = { table, room, widths, pad, style };
  const head =
    table.header.length > 0 ? [layRow(table.header, { ...plan, row: addTag(addTag(tag, 'THead'), 'TR'), header: true })] : [];
  const body = addTag(tag, 'TBody');
  const rows = table.rows.map((cells) => layRow(cells, { ...plan, row: addTag(body, 'TR'), header: false }));
  const slabs = withRules([...head, ...rows], room, widths, style);
  const repeated = head.length > 0 ? withAgain(slabs, unmarked(slabs[0]!)) : slabs;
  return table.whole ? keepTogether(repeated, 0) : repeated;
}
