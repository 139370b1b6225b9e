import { alongLine } from '../../../document/along-line.ts';
import type { Filled, WorkingLine } from '../../../document/block.ts';
import type { Inline } from '../../../document/inline.ts';
import { breakLines, type Line } from '../break-lines.ts';
import { BEFORE_ARROW } from '../chemistry-pieces.ts';
import { inlinePieces } from '../inline-pieces.ts';
import type { Item } from '../item.ts';
import { shift } from '../item.ts';
import type { Pen } from '../piece.ts';
import type { Room } from '../room.ts';
import { setLines, strutAscent } from '../set-lines.ts';
import { addTag } from '../tag.ts';

/** Rows to write on: how many, how far apart, and where the first one's writing line is. */
export interface Rows {
  readonly count: number;
  readonly pitch: number;
  readonly first: number;
}

/** A line of writing: its baseline from the top of the space. */
export interface Written {
  readonly baseline: number;
  readonly items: readonly Item[];
}

/** Lines of writing to a row at most, and their size in a space so shared: letters must clear the dots above them. */
const MOST = 3;
const TIGHT = 0.86;
/** Baselines stand over the dots by this share of the size. */
const OVER = 0.2;

/**
 * Writes paragraphs on the rows of a space: one line to a row, in smaller print two or three where they are more, never under the
 * floor. What finds no room even so goes on below the last row.
 */
export function writeOnRows(paragraphs: readonly (readonly Inline[])[], rows: Rows, room: Room): Written[] {
  const { floor } = room.pen.measures;
  const settings = Array.from({ length: MOST }, (_, i) => i + 1).flatMap((share) => {
    const leading = rows.pitch / share;
    const size = Math.max(floor, Math.min(room.pen.size, leading * TIGHT));
    return share > 1 && leading < floor * 1.02 ? [] : [{ leading, pen: { ...room.pen, size } }];
  });
  // a teacher copy may write into the column of marking cells, beside which no answer space stands
  const widths = [room.width, room.width + (room.sheet ? room.pen.measures.cells : 0)];
  for (const { leading, pen } of settings) {
    for (const width of widths) {
      const set = paragraphs.map((each) => breakLines(inlinePieces(alongLine(each), pen), width));
      const fits = set.reduce((sum, lines) => sum + lines.length, 0) * leading <= rows.count * rows.pitch + 0.01;
      if (fits && apartIn(set.flat(), pen) <= leading) return written(set, { room, pen, leading, width, first: rows.first });
    }
  }
  const [{ leading: least, pen }, width] = [settings.at(-1)!, widths[1]!];
  const set = paragraphs.map((each) => breakLines(inlinePieces(alongLine(each), pen), width));
  const leading = Math.max(least, apartIn(set.flat(), pen));
  return written(set, { room, pen, leading, width, first: rows.first });
}

/** An equation on two rows, a side on each, at the largest size at which both fit; nothing when none does. */
export function writeSides(content: readonly Inline[], rows: Rows, room: Room): Written[] | undefined {
  const { floor } = room.pen.measures;
  for (let size = room.pen.size; size >= floor; size -= 0.4) {
    const pen = { ...room.pen, size };
    const pieces = inlinePieces(content, pen);
    const gap = pieces.findIndex(({ cost }) => cost === BEFORE_ARROW);
    const sides = [pieces.slice(0, gap), pieces.slice(gap + 1)].map((side) => ({
      pieces: side,
      width: side.reduce((sum, { width }) => sum + width, 0),
    }));
    if (gap < 0 || sides.some(({ width }) => width > room.width)) continue;
    return written([sides], { room, pen, leading: rows.pitch, width: room.width, first: rows.first });
  }
  return undefined;
}

interface Writing {
  readonly room: Room;
  readonly pen: Pen;
  readonly leading: number;
  readonly width: number;
  readonly first: number;
}

function written(paragraphs: readonly (readonly Line[])[], { room, pen, leading, width, first }: Writing): Written[] {
  // several lines to a row: the last of them stands on the dots
  const share = Math.max(1, Math.round(room.pen.measures.ruled / leading));
  let row = first - leading * (share - 1) - pen.size * OVER;
  // raised scripts do not leave the space at its top; the lines below are back on their rows as soon as they keep apart there
  const apart = apartIn(paragraphs.flat(), pen);
  let baseline = row;
  const top = paragraphs.flat()[0];
  if (top) baseline = Math.max(row, ...top.pieces.map(({ ascent }) => ascent));
  return paragraphs.flatMap((lines) => {
    const slabs = setLines(lines, pen, { x: room.x, width }, addTag(room.tag, 'P'));
    return slabs.map(({ items }, i) => {
      const dy = baseline - ascentOf(lines[i]!, pen);
      const line = { baseline, items: items.map((item) => shift(item, 0, dy)) };
      row += leading;
      baseline = Math.max(row, baseline + Math.min(apart, leading));
      return line;
    });
  });
}

/** How far apart baselines have to be for no script of a line to touch one of the next. */
function apartIn(lines: readonly Line[], pen: Pen): number {
  const below = lines.map(({ pieces }) => Math.max(pen.size * 0.2, ...pieces.map(({ descent }) => descent)));
  const above = lines.map(({ pieces }) => Math.max(pen.size * 0.6, ...pieces.map(({ ascent }) => ascent)));
  return Math.max(0, ...lines.slice(1).map((_, i) => below[i]! + above[i + 1]!));
}

/** Height of a set line's baseline below its top. */
export function ascentOf(line: Line, pen: Pen): number {
  return Math.max(strutAscent(pen), ...line.pieces.map((piece) => piece.ascent + pen.size * 0.02));
}

/** Working as sentences, then the answers that none of it ends in. */
export function paragraphsOf({ working, answers }: Filled): (readonly Inline[])[] {
  return [...working.map(asText), ...answers.flatMap(({ content, worked }) => (worked ? [] : [content]))];
}

function asText({ left, right }: WorkingLine): Inline[] {
  return left.length > 0 ? [...left, { kind: 'text', text: ' = ' }, ...right] : [...right];
}
