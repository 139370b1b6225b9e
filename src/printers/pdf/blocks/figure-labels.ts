import type { Figure, Primitive } from '../../../document/figure.ts';
import type { Inline } from '../../../document/inline.ts';
import { joined } from '../../../document/inlines.ts';
import { inlinePieces } from '../inline-pieces.ts';
import { joinPieces, type Pen, type Piece } from '../piece.ts';
import { type Box, boundsOf, meet, pathBounds } from './figure-bounds.ts';

type Label = Extract<Primitive, { kind: 'label' }>;

/** A line of a label, in points from the left of the room and the top of the drawing; `y` is its baseline. */
export interface PlacedLine {
  readonly piece: Piece;
  readonly x: number;
  readonly y: number;
}

/** Labels of a figure drawn at a scale, its origin `dx` from the left of the room. */
export interface PlacedLabels {
  readonly lines: readonly PlacedLine[];
  readonly scale: number;
  readonly dx: number;
  /** height of drawing and labels, the part above the origin of the drawing first */
  readonly above: number;
  readonly height: number;
  /** what the numbers in the drawing stand for, when its labels did not fit; empty else */
  readonly key: readonly (readonly Inline[])[];
}

/** What labels are placed in: the width of the room, and the scale at which drawing and labels have the proportions they were drawn for. */
export interface Wanted {
  readonly width: number;
  readonly scale: number;
  readonly pen: Pen;
}

/** How much smaller than its labels a drawing may be made so that they fit beside it. */
const SMALLEST = 0.6;
const STEP = 0.05;

/**
 * Places the labels of a figure. Figures on a scale are thinned out where they would meet. Where other labels would run into one another or
 * out of the room, as in large print, the drawing is made smaller; and where that does not help, the longer labels are replaced by
 * numbers, and the words go into a key below.
 */
export function placeLabels(figure: Figure, wanted: Wanted): PlacedLabels {
  const labels = figure.draw.filter((primitive): primitive is Label => primitive.kind === 'label').map(worded);
  for (let share = 1; share >= SMALLEST; share -= STEP) {
    const found = tryAt(figure, labels, { ...wanted, scale: wanted.scale * share });
    if (found) return { ...found, key: [] };
  }
  const key: (readonly Inline[])[] = [];
  const numbered = labels.map((each) => {
    if (each.label.scale || isShort(each)) return each;
    key.push(joined(each.content, ', '));
    return { ...each, content: [[{ kind: 'text', text: String(key.length), weight: 'strong' } as const]] };
  });
  for (let share = 1; ; share -= STEP) {
    const found = tryAt(figure, numbered, { ...wanted, scale: wanted.scale * share }, share < 0.3);
    if (found) return { ...found, key };
  }
}

/** A label and its lines, or the number that stands for them. */
interface Worded {
  readonly label: Label;
  readonly content: readonly (readonly Inline[])[];
}

const worded = (label: Label): Worded => ({ label, content: [label.label, ...(label.below ?? [])] });

/** A letter or two digits stay in the drawing. */
function isShort({ content }: Worded): boolean {
  const [only, ...more] = content.flat();
  return only?.kind === 'text' && only.text.length <= 2 && more.length === 0;
}

/** The labels at one scale, centred with their drawing; nothing when they do not fit, unless they must. */
function tryAt(figure: Figure, labels: readonly Worded[], wanted: Wanted, must = false): Omit<PlacedLabels, 'key'> | undefined {
  const { scale, width, pen } = wanted;
  const placed = thinned(labels.map((each) => ({ ...each, lines: place(each, scale, pen) })));
  const boxes = placed.map(({ lines }) => lines.map(boxOf));
  const apart = boxes.every((one, at) => boxes.slice(at + 1).every((other) => !one.some((a) => other.some((b) => meet(a, b)))));
  const [left, top, right, bottom] = boundsOf([pathBounds(figure, scale), ...boxes.flat()]);
  if (!must && !(apart && right - left <= width + 0.01)) return undefined;
  const dx = (width - right - left) / 2;
  const above = Math.max(0, -top);
  return {
    scale,
    dx,
    above,
    height: above + Math.max(bottom, figure.height * scale),
    lines: placed.flatMap(({ lines }) => lines.map((line) => ({ ...line, x: line.x + dx }))),
  };
}

type Placed = Worded & { readonly lines: readonly PlacedLine[] };

/** Of the figures of each scale every one, every second or every fifth, as many as stand apart. */
function thinned(labels: readonly Placed[]): Placed[] {
  const scales = new Set(labels.flatMap(({ label }) => label.scale ?? []));
  const kept = [...scales].flatMap((scale) => {
    const own = labels.filter(({ label }) => label.scale === scale);
    const choices = [1, 2, 5, 10].map((every) => own.filter((_, at) => at % every === 0));
    return choices.find(standApart) ?? own.slice(0, 1);
  });
  return labels.filter((each) => !each.label.scale || kept.includes(each));
}

/** Figures of a scale keep a third of an em between them. */
function standApart(labels: readonly Placed[]): boolean {
  const boxes = labels.flatMap(({ lines }) => lines.map((line) => boxOf(line, line.piece.ascent * 0.25)));
  return boxes.slice(1).every((box, at) => !meet(boxes[at]!, box));
}

/** Least distance of baselines, and half the height of capitals, in ems. */
const LEADING = 1.25;
const HALF_LETTER = 0.33;

function place({ label, content }: Worded, scale: number, pen: Pen): PlacedLine[] {
  const pieces = content.map((line) => joinPieces(pen, inlinePieces(line, pen)));
  const steps = pieces.slice(1).map((piece, n) => Math.max(LEADING * pen.size, pieces[n]!.descent + piece.ascent));
  const [right, down] = label.nudge ?? [0, 0];
  const whole = steps.reduce((sum, step) => sum + step, 0);
  let y = label.y * scale + down * pen.size - whole / 2 + HALF_LETTER * pen.size;
  return pieces.map((piece, n) => {
    if (n > 0) y += steps[n - 1]!;
    const x = label.x * scale + right * pen.size - piece.width * { start: 0, middle: 0.5, end: 1 }[label.anchor];
    return { piece, x, y };
  });
}

function boxOf({ piece, x, y }: PlacedLine, air = 0): Box {
  return [x - air, y - piece.ascent, x + piece.width + air, y + piece.descent];
}
