import type { Table } from '../../../document/block.ts';
import type { Item } from '../item.ts';
import { inner, type Room } from '../room.ts';
import { LARGE } from '../settings.ts';
import { type Slab, slab, stack } from '../slab.ts';
import { addTag } from '../tag.ts';
import { columnWidths } from './column-widths.ts';
import { layRow } from './table-row.ts';
import { withRules } from './table-rules.ts';

/** Rows from which a list of little is worth folding. */
const LONG = 12;
const STYLE = { grid: false, rowHeight: 0 } as const;

/**
 * A long list of little with its second half beside the first, small. It is one table to a reader: the heading over the second half is
 * there for the eye alone.
 * @returns nothing when the table does not fold, or print is too large for two columns
 */
export function layFolded(table: Table, room: Room): Slab[] | undefined {
  const { measures } = room.pen;
  if (!table.folds || table.rows.length < LONG || measures.size.text > LARGE) return undefined;
  const gutter = measures.size.text * 1.5;
  const width = (room.width - gutter) / 2;
  const left = inner(room, { width, pen: { size: measures.size.small } });
  const pad = left.pen.size * 0.5;
  const widths = columnWidths(table, left, pad, true);
  if (!widths) return undefined;
  const right = inner(left, { dx: width + gutter, width });
  const tag = addTag(room.tag, 'Table', { summary: table.summary });
  const plan = { table, widths, pad, style: STYLE };
  const headRow = addTag(addTag(tag, 'THead'), 'TR');
  const head = layRow(table.header, { ...plan, room: left, row: headRow, header: true });
  const echo = unmarked(layRow(table.header, { ...plan, room: right, row: { type: 'TR', kids: [] }, header: true }));
  const body = addTag(tag, 'TBody');
  const half = Math.ceil(table.rows.length / 2);
  const rows = table.rows.map((cells, at) => {
    return layRow(cells, { ...plan, room: at < half ? left : right, row: addTag(body, 'TR'), header: false });
  });
  const first = withRules([head, ...rows.slice(0, half)], left, widths, STYLE);
  const second = withRules([echo, ...rows.slice(half)], right, widths, STYLE);
  const [one, other] = [stack(first), stack(second)];
  return [slab(Math.max(one.height, other.height), [...one.items, ...other.items], { above: one.above })];
}

/** The same items without their place in the structure. */
function unmarked({ height, items }: Slab): Slab {
  return slab(
    height,
    items.map(({ mark: _mark, ...item }) => item as Item),
  );
}
