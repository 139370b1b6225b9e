import type { Table } from '../../../document/block.ts';
import { inlinePieces } from '../inline-pieces.ts';
import type { Piece } from '../piece.ts';
import type { Room } from '../room.ts';

/**
 * Column widths in points, padding included: the relative widths asked for where every word fits them, else natural widths, else
 * (too wide) widths between the longest word and the natural width of each column, filling the room, those of equations natural before all.
 * @param fill spreads narrow columns over the room too
 * @returns undefined when the longest words do not fit beside one another
 */
export function columnWidths(table: Table, room: Room, pad: number, fill: boolean): readonly number[] | undefined {
  const columns = Math.max(table.header.length, ...table.rows.map((row) => row.length));
  const needs = Array.from({ length: columns }, (_, i) => columnNeeds(table, i, room, pad));
  const sum = (table.widths ?? []).reduce((total, width) => total + width, 0);
  const asked = table.widths?.map((width) => (width / sum) * room.width);
  if (asked && needs.every((need, i) => need.least <= (asked[i] ?? 0))) return asked;
  return share(needs, room.width, fill || asked !== undefined);
}

/** Width that a table takes when no cell of its body is broken over lines; its headings may be. */
export function naturalWidth(table: Table, room: Room): number {
  const pad = room.pen.size * 0.5;
  const bare = { ...table, header: table.header.map(() => []) };
  const widths = table.header.map((_, i) =>
    Math.max(columnNeeds(bare, i, room, pad).natural, columnNeeds(table, i, room, pad).least),
  );
  return widths.reduce((sum, width) => sum + width, 0);
}

interface Needs {
  readonly least: number;
  readonly natural: number;
  /** holds equations, which should stand on one line where words beside them can give way */
  readonly firm: boolean;
}

function share(all: readonly Needs[], width: number, fill: boolean): readonly number[] | undefined {
  const firm = all.map((need) => (need.firm ? { ...need, least: need.natural } : need));
  const needs = firm.reduce((sum, need) => sum + need.least, 0) <= width ? firm : all;
  const natural = needs.reduce((sum, need) => sum + need.natural, 0);
  const spare = fill ? width / natural : 1;
  if (natural <= width) return needs.map((need) => need.natural * spare);
  const least = needs.reduce((sum, need) => sum + need.least, 0);
  if (least > width) return undefined;
  const ratio = (width - least) / Math.max(natural - least, 0.01);
  return needs.map((need) => need.least + (need.natural - need.least) * ratio);
}

function columnNeeds(table: Table, column: number, room: Room, pad: number): Needs {
  const strong = { ...room.pen, face: 'strong' as const };
  const header = table.header[column] ?? [];
  const cells = [inlinePieces(header, strong), ...table.rows.map((row) => inlinePieces(row[column] ?? [], room.pen))];
  return {
    firm: table.rows.some((row) => row[column]?.some(({ kind }) => kind === 'equation')),
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
