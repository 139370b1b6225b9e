import type { Table } from '../../../document/block.ts';
import { inner, type Room } from '../room.ts';
import { LARGE } from '../settings.ts';
import { type Slab, slab, stack, unmarked } from '../slab.ts';
import { addTag, type Tag } from '../tag.ts';
import { columnWidths, naturalWidth } from './column-widths.ts';
import { layRow } from './table-row.ts';
import { withRules } from './table-rules.ts';

/** Rows from which a list of little is worth folding, and columns into which it is folded at the most. */
const LONG = 12;
const MOST = 4;
const STYLE = { grid: false, rowHeight: 0 } as const;

/**
 * A long list of little in columns beside one another: as many as hold every cell on one line, or two of small words. It is one table
 * to a reader; the headings over the further columns are there for the eye alone.
 * @returns nothing when the table does not fold, or print is too large for two columns
 */
export function layFolded(table: Table, room: Room): Slab[] | undefined {
  const { measures } = room.pen;
  if (!table.folds || table.rows.length < LONG || measures.size.text > LARGE) return undefined;
  const gutter = measures.size.text * 1.5;
  const fitting = Math.min(MOST, Math.floor((room.width + gutter) / (naturalWidth(table, room) + gutter)));
  const count = Math.max(fitting, 2);
  const width = (room.width - gutter * (count - 1)) / count;
  const first = inner(room, { width, pen: { size: fitting < 2 ? measures.size.small : room.pen.size } });
  const pad = first.pen.size * 0.5;
  const widths = columnWidths(table, first, pad, true);
  if (!widths) return undefined;
  const tag = addTag(room.tag, 'Table', { summary: table.summary });
  const head = addTag(addTag(tag, 'THead'), 'TR');
  const body = addTag(tag, 'TBody');
  const share = Math.ceil(table.rows.length / count);
  const columns = Array.from({ length: count }, (_, at) => {
    const column = { ...first, x: first.x + at * (width + gutter) };
    const plan = { table, widths, pad, style: STYLE, room: column };
    const heading = layRow(table.header, { ...plan, row: at === 0 ? head : unread(), header: true });
    const rows = table.rows.slice(at * share, (at + 1) * share);
    const laid = rows.map((cells) => layRow(cells, { ...plan, row: addTag(body, 'TR'), header: false }));
    return stack(withRules([at === 0 ? heading : unmarked(heading), ...laid], column, widths, STYLE));
  });
  const height = Math.max(...columns.map((column) => column.height));
  return [
    slab(
      height,
      columns.flatMap(({ items }) => items),
      { above: columns[0]!.above },
    ),
  ];
}

/** A row that the structure does not hold. */
function unread(): Tag {
  return { type: 'TR', kids: [] };
}
