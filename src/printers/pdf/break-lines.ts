import type { Piece } from './piece.ts';

/** One line: its pieces without the space at which it ended. */
export interface Line {
  readonly pieces: readonly Piece[];
  readonly width: number;
  /** the space at which the line ended, drawn unseen so that words stay apart for a reader; absent on the last */
  readonly end?: Piece;
}

const PER_LINE = 1000;
const OVERFULL = 1e6;
const SHORT_LAST = 6;

/**
 * Breaks pieces into lines so that the raggedness of the whole paragraph is least (sum of squared slack, the last line free), with as
 * few lines as any breaking gives. `indent` narrows every line but the first. A box wider than the measure stands alone.
 */
export function breakLines(pieces: readonly Piece[], width: number, indent = 0): readonly Line[] {
  if (pieces.length === 0) return [];
  const ends = pieces.flatMap((piece, i) => (piece.kind === 'space' ? [i] : []));
  const starts = [0, ...ends.map((end) => end + 1)];
  ends.push(pieces.length);
  const edge = [0];
  for (const piece of pieces) edge.push(edge.at(-1)! + piece.width);
  const from = cheapest(pieces, starts, ends, edge, width, indent);
  const lines: Line[] = [];
  for (let to = ends.length; to > 0; to = from[to]!) {
    const end = pieces[ends[to - 1]!];
    const line = {
      pieces: pieces.slice(starts[from[to]!]!, ends[to - 1]!),
      width: edge[ends[to - 1]!]! - edge[starts[from[to]!]!]!,
    };
    lines.unshift(end ? { ...line, end } : line);
  }
  return lines;
}

/** For each possible line end, the start of the cheapest last line (dynamic programming over line ends). */
function cheapest(
  pieces: readonly Piece[],
  starts: number[],
  ends: number[],
  edge: number[],
  width: number,
  indent: number,
): number[] {
  const best = [0];
  const from = [0];
  for (let to = 1; to <= ends.length; to++) {
    best[to] = Number.POSITIVE_INFINITY;
    const end = ends[to - 1]!;
    for (let start = to - 1; start >= 0; start--) {
      const natural = edge[end]! - edge[starts[start]!]!;
      const room = start === 0 ? width : width - indent;
      if (natural > room + 0.01 && start < to - 1) break;
      const cost = best[start]! + lineCost(natural, room, to === ends.length, start === 0) + (pieces[end]?.cost ?? 0);
      if (cost < best[to]!) {
        best[to] = cost;
        from[to] = start;
      }
    }
  }
  return from;
}

function lineCost(natural: number, room: number, last: boolean, only: boolean): number {
  if (natural > room + 0.01) return OVERFULL;
  if (last) return PER_LINE + (!only && natural < room * 0.1 ? SHORT_LAST : 0);
  const slack = (room - natural) / room;
  return PER_LINE + 100 * slack * slack;
}
