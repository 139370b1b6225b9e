import type { Table } from '../../../document/block.ts';
import type { Inline } from '../../../document/inline.ts';
import { speakInlines } from '../../../document/spoken.ts';
import { breakLines } from '../break-lines.ts';
import { fieldIn, overDots } from '../fields.ts';
import { inlinePieces } from '../inline-pieces.ts';
import { dots, INK, rule } from '../item.ts';
import { inner, type Room } from '../room.ts';
import { setLines } from '../set-lines.ts';
import { KEEP, type Slab, slab } from '../slab.ts';
import { addTag } from '../tag.ts';

/** A table too wide for its room, as in the largest print: each row a group of lines, every cell led by the heading of its column. */
export function layStackedTable(table: Table, room: Room): Slab[] {
  const { step, hairline } = room.pen.measures;
  const list = addTag(room.tag, 'L', { numbering: 'None' });
  return table.rows.flatMap((row) => {
    const tag = addTag(addTag(list, 'LI'), 'LBody');
    const slabs = row.flatMap((cell, i) =>
      stackedCell(table.header[i] ?? [], cell, inner(room, { tag }), speakInlines(row[0] ?? [])),
    );
    const line = rule(room.x, 0, room.width, 0, hairline, INK.faint);
    return slabs.map((part, i): Slab => {
      const first = i === 0 ? { above: step * 0.8, items: [line, ...part.items] } : {};
      return { ...part, ...first, after: i < slabs.length - 1 ? KEEP : 20 };
    });
  });
}

function stackedCell(heading: readonly Inline[], cell: readonly Inline[], room: Room, row: string): Slab[] {
  const { pen, x, width } = room;
  const named = speakInlines(heading) !== '';
  const lead: Inline[] = named ? [...heading, { kind: 'text', text: ': ' }] : [];
  const pieces = [...inlinePieces(lead, { ...pen, face: 'strong' }), ...inlinePieces(cell, pen)];
  const lines = setLines(breakLines(pieces, width, pen.size), pen, { x, width, indent: pen.size }, addTag(room.tag, 'P'));
  const { ruled } = pen.measures;
  if (cell.length > 0) return lines;
  const field = fieldIn(room, [row, speakInlines(heading)].filter(Boolean).join(', '), overDots(x, ruled - 1, width, pen.size));
  return [...lines, slab(ruled, [dots(x, ruled - 1, width, pen.size), ...field])];
}
