import type { Table } from '../../../document/block.ts';
import type { Inline } from '../../../document/inline.ts';
import { inlinePieces } from '../inline-pieces.ts';
import type { Piece } from '../piece.ts';
import type { Room } from '../room.ts';

/**
 * Column widths in points, padding included: the relative widths asked for, else natural widths, else (too wide) widths between the
 * longest word and the natural width of each column, filling the room. `fill` spreads narrow columns over the room too.
 */
export function columnWidths(table: Table, room: Room, pad: number, fill: boolean): readonly number[] {
  if (table.widths) {
    const sum = table.widths.reduce((total, width) => total + width, 0);
    return table.widths.map((width) => (width / sum) * room.width);
  }
  const columns = Math.max(table.header.length, ...table.rows.map((row) => row.length));
  const needs = Array.from({ length: columns }, (_, i) => columnNeeds(table, i, room, pad));
  return share(needs, room.width, fill);
}

interface Needs {
  readonly least: number;
  readonly natural: number;
}

function share(needs: readonly Needs[], width: number, fill: boolean): readonly number[] {
  const natural = needs.reduce((sum, need) => sum + need.natural, 0);
  const spare = fill ? (width - natural) / needs.length : 0;
  if (natural <= width) return needs.map((need) => need.natural + spare);
  const least = needs.reduce((sum, need) => sum + need.least, 0);
  const ratio = Math.max(0, (width - least) / Math.max(natural - least, 0.01));
  return needs.map((need) => need.least + (need.natural - need.least) * ratio);
}

function columnNeeds(table: Table, column: number, room: Room, pad: number): Needs {
  const strong = { ...room.pen, face: 'strong' as const };
  const cells = [
    inlinePieces(table.header[column] ?? [], strong),
    ...table.rows.map((row) => inlinePieces(row[column] ?? ([] as readonly Inline[]), room.pen)),
  ];
  return {
    least: Math.max(...cells.map(longestBox)) + 2 * pad,
    natural: Math.max(...cells.map((pieces) => pieces.reduce((sum, piece) => sum + piece.width, 0))) + 2 * pad + 1,
  };
}

/** Widest stretch without a line end. */
function longestBox(pieces: readonly Piece[]): number {
  let longest = 0;
  let run = 0;
  for (const piece of pieces) {
    run = piece.kind === 'space' ? 0 : run + piece.width;
    longest = Math.max(longest, run);
  }
  return longest;
}
