import type { Line } from './break-lines.ts';
import { type Item, shift, type TextItem } from './item.ts';
import type { Pen, Run, Speech } from './piece.ts';
import { KEEP, type Slab, slab } from './slab.ts';
import { addMark, addTag, type Mark, type Tag } from './tag.ts';

/** Where lines go and how they stand there. */
export interface Setting {
  readonly x: number;
  readonly width: number;
  readonly align?: 'start' | 'middle' | 'end';
  /** indent of every line but the first */
  readonly indent?: number;
  readonly leading?: number;
  /** names the field that a gap becomes, on sheets that are filled in on a screen */
  readonly blank?: () => { readonly name: string; readonly tip: string };
}

/** Marks of the content of one tag, in reading order: plain text directly below it, formulas in tags of their own. */
class Marker {
  readonly #tag: Tag;
  #speech: Speech | undefined;
  #mark: Mark | undefined;
  constructor(tag: Tag) {
    this.#tag = tag;
  }
  markFor(speech: Speech | undefined): Mark {
    if (this.#mark && this.#speech === speech) return this.#mark;
    this.#speech = speech;
    this.#mark = speech ? addMark(this.#tagFor(speech), speech.actual) : addMark(this.#tag);
    return this.#mark;
  }
  /** The mark of a field among the text. */
  fieldMark(): Mark {
    this.#mark = undefined;
    return addMark(addTag(this.#tag, 'Form'));
  }
  #tagFor(speech: Speech): Tag {
    return addTag(this.#tag, speech.type, speech.alt === undefined ? {} : { alt: speech.alt });
  }
}

/** Sets lines one below the other, one slab a line; two lines at least stay together at either end. */
export function setLines(lines: readonly Line[], pen: Pen, setting: Setting, tag: Tag): Slab[] {
  const marker = new Marker(tag);
  const leading = pen.size * (setting.leading ?? pen.measures.leading);
  return lines.map((line, i) => {
    const strut = { ascent: leading * 0.5 + pen.size * 0.25, descent: leading * 0.5 - pen.size * 0.25 };
    const ascent = Math.max(strut.ascent, ...line.pieces.map((piece) => piece.ascent + pen.size * 0.02));
    const descent = Math.max(strut.descent, ...line.pieces.map((piece) => piece.descent + pen.size * 0.02));
    const indent = i > 0 ? (setting.indent ?? 0) : 0;
    const room = setting.width - indent - line.width;
    const x = setting.x + indent + room * { start: 0, middle: 0.5, end: 1 }[setting.align ?? 'start'];
    const widow = i === 0 || i >= lines.length - 2;
    return slab(ascent + descent, lineItems(line, { x, baseline: ascent, size: pen.size }, marker, setting.blank), {
      after: widow && i < lines.length - 1 ? KEEP : 30,
    });
  });
}

/** Height of the first baseline below the top of a line without tall pieces. */
export function strutAscent(pen: Pen): number {
  return pen.size * (pen.measures.leading * 0.5 + 0.25);
}

/** Where a line begins, and the size of its text. */
interface LinePlace {
  readonly x: number;
  readonly baseline: number;
  readonly size: number;
}

function lineItems(line: Line, { x, baseline, size }: LinePlace, marker: Marker, blank: Setting['blank']): Item[] {
  const items: Item[] = [];
  let at = x;
  for (const piece of line.end ? [...line.pieces, line.end] : line.pieces) {
    if (piece.isBlank && blank) {
      const box = { x: at, y: baseline - size * 0.95, width: piece.width, height: size * 1.2 };
      items.push({ kind: 'field', ...box, ...blank(), lines: 'one', size, mark: marker.fieldMark() });
      for (const path of piece.paths) items.push(shift(path, at, baseline));
      at += piece.width;
      continue;
    }
    const mark = marker.markFor(piece.speech);
    for (const run of piece.runs) pushRun(items, run, at, baseline, mark);
    for (const path of piece.paths) items.push({ ...shift(path, at, baseline), ...(piece.speech ? { mark } : {}) });
    at += piece.width;
  }
  return items;
}

/** A run joins the one before it across a space when nothing else differs, so that a line is few items. */
function pushRun(items: Item[], run: Run, x: number, baseline: number, mark: Mark): void {
  const last = items.at(-1);
  const space = run.text === ' ';
  if (last?.kind === 'text' && joins(last, run, baseline, mark) && (space || last.text.endsWith(' '))) {
    const width = space ? last.width : x + run.x + run.width - last.x;
    items[items.length - 1] = { ...last, text: last.text + run.text, width };
    return;
  }
  const y = baseline - run.rise;
  items.push({
    kind: 'text',
    x: x + run.x,
    y,
    face: run.face,
    size: run.size,
    text: run.text,
    width: space ? 0 : run.width,
    ink: run.ink,
    mark,
  });
}

function joins(last: TextItem, run: Run, baseline: number, mark: Mark): boolean {
  return (
    last.mark === mark &&
    last.face === run.face &&
    last.size === run.size &&
    last.ink === run.ink &&
    run.rise === 0 &&
    last.y === baseline
  );
}
