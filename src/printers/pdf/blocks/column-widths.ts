import type { Table } from '../../../document/block.ts';
import { breakLines } from '../break-lines.ts';
import { inlinePieces } from '../inline-pieces.ts';
import type { Piece } from '../piece.ts';
import type { Room } from '../room.ts';
import { LARGE } from '../settings.ts';

/**
 * Column widths in points, padding included: the relative widths asked for where every word fits them, else natural widths, else
 * (too wide) widths between the longest word and the natural width of each column, filling the room, those of equations natural before all.
 * In large print, where a column soon holds a word a line, a column passes on what it does not need, and rows are made as low as can be.
 * @param fill spreads narrow columns over the room too
 * @returns undefined when the longest words do not fit beside one another, or three columns of large print make rows too tall
 */
export function columnWidths(table: Table, room: Room, pad: number, fill: boolean): readonly number[] | undefined {
  const columns = Math.max(table.header.length, ...table.rows.map((row) => row.length));
  const needs = Array.from({ length: columns }, (_, i) => columnNeeds(table, i, room, pad));
  const isLarge = room.pen.measures.size.text > LARGE;
  const sum = (table.widths ?? []).reduce((total, width) => total + width, 0);
  const asked = table.widths?.map((width) => (width / sum) * room.width);
  if (asked && needs.every((need, i) => need.least <= (asked[i] ?? 0))) return isLarge ? passedOn(asked, needs) : asked;
  const spread = fill || asked !== undefined;
  if (!isLarge) return share(firmly(needs, room.width), room.width, spread);
  const choices = [firmly(needs, room.width), needs].flatMap((each) => {
    const widths = share(each, room.width, spread);
    return widths ? [{ widths, lines: rowLines(needs, widths, pad) }] : [];
  });
  choices.sort((one, other) => total(one.lines) - total(other.lines));
  const [best] = choices;
  return best && (columns < 3 || Math.max(...best.lines) < TOO_TALL) ? best.widths : undefined;
}

/** Lines in a row of large print from which its cells are better read one below the other. */
const TOO_TALL = 5;

/** Width that a table takes when no cell of its body is broken over lines; its headings may be. */
export function naturalWidth(table: Table, room: Room): number {
  const pad = room.pen.size * 0.5;
  const bare = { ...table, header: table.header.map(() => []) };
  const widths = table.header.map((_, i) =>
    Math.max(columnNeeds(bare, i, room, pad).natural, columnNeeds(table, i, room, pad).least),
  );
  return total(widths);
}

interface Needs {
  readonly least: number;
  readonly natural: number;
  /** holds equations, which should stand on one line where words beside them can give way */
  readonly firm: boolean;
  /** heading first */
  readonly cells: readonly (readonly Piece[])[];
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);

/** Equations stand on one line, if that leaves room for the longest words beside them. */
function firmly(needs: readonly Needs[], width: number): readonly Needs[] {
  const firm = needs.map((need) => (need.firm ? { ...need, least: need.natural } : need));
  return total(firm.map(({ least }) => least)) <= width ? firm : needs;
}

function share(needs: readonly Needs[], width: number, fill: boolean): readonly number[] | undefined {
  const natural = total(needs.map((need) => need.natural));
  const spare = fill ? width / natural : 1;
  if (natural <= width) return needs.map((need) => need.natural * spare);
  const least = total(needs.map((need) => need.least));
  if (least > width) return undefined;
  const ratio = (width - least) / Math.max(natural - least, 0.01);
  return needs.map((need) => need.least + (need.natural - need.least) * ratio);
}

/** What columns have beyond their natural widths goes to those that have less. */
function passedOn(widths: readonly number[], needs: readonly Needs[]): readonly number[] {
  const wants = needs.map(({ natural }, i) => natural - widths[i]!);
  const wanted = total(wants.filter((want) => want > 0));
  const spare = -total(wants.filter((want) => want < 0));
  const moved = Math.min(wanted, spare);
  if (moved === 0) return widths;
  return wants.map((want, i) => widths[i]! + (moved * want) / (want > 0 ? wanted : spare));
}

/** Lines that each row takes. */
function rowLines(needs: readonly Needs[], widths: readonly number[], pad: number): number[] {
  const rows = needs[0]?.cells.length ?? 0;
  return Array.from({ length: rows }, (_, row) =>
    Math.max(...needs.map(({ cells }, i) => breakLines(cells[row] ?? [], widths[i]! - 2 * pad).length)),
  );
}

function columnNeeds(table: Table, column: number, room: Room, pad: number): Needs {
  const strong = { ...room.pen, face: 'strong' as const };
  const header = table.header[column] ?? [];
  const cells = [inlinePieces(header, strong), ...table.rows.map((row) => inlinePieces(row[column] ?? [], room.pen))];
  return {
    firm: table.rows.some((row) => row[column]?.some(({ kind }) => kind === 'equation')),
    least: Math.max(...cells.map(longestBox)) + 2 * pad,
    natural: Math.max(...cells.map((pieces) => total(pieces.map(({ width }) => width)))) + 2 * pad + 1,
    cells,
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
