import type { Block } from '../../../document/block.ts';
import { type Figure, LABEL_SIZE, type Primitive } from '../../../document/figure.ts';
import type { Inline } from '../../../document/inline.ts';
import { joined } from '../../../document/inlines.ts';
import { INK, type Item, type PathItem, shift } from '../item.ts';
import type { Pen } from '../piece.ts';
import { inner, type Room, setText } from '../room.ts';
import { FEW_LINES, type Measures } from '../settings.ts';
import { keepTogether, type Slab, slab, withAbove } from '../slab.ts';
import { addMark, addTag, type Mark } from '../tag.ts';
import { type PlacedLine, placeLabels } from './figure-labels.ts';

/** A drawing, centred, with its caption below; it grows with the print as far as its room allows. */
export function layFigure({ figure, caption }: Extract<Block, { kind: 'figure' }>, room: Room): Slab[] {
  const { step, size, floor } = room.pen.measures;
  const tag = addTag(room.tag, 'Figure', { alt: figure.alt });
  const pen = { ...room.pen, face: 'regular' as const, size: Math.max(floor, room.pen.size * LABEL_SHARE) };
  const drawing = drawFigure(figure, { ...room, tag, pen }, addMark(tag));
  const small = { ...room.pen, size: size.small };
  const key = drawing.key.length === 0 ? [] : setText(keyText(drawing.key), inner(room, { pen: small, tag }), 'P');
  const text = caption ? setText(caption, inner(room, { pen: small }), 'P', { align: 'middle' }) : [];
  return withAbove(keepTogether([drawing.slab, ...withAbove(key, step * 0.4), ...text], 0), step * 1.4);
}

/** Labels are a little smaller than the text around them. */
const LABEL_SHARE = 0.9;

/** Height to which a drawing grows: the largest print leaves room on the page for a heading above it and a few lines below. */
function tallest({ size, height, margin }: Measures): number {
  const page = height - margin.top - margin.bottom;
  return size.text > FEW_LINES ? page * 0.8 : page;
}

/** A figure in a room, its labels of the size of the pen, everything under one mark. */
export function drawFigure(figure: Figure, room: Room, mark: Mark): { slab: Slab; key: readonly (readonly Inline[])[] } {
  const { pen, width } = room;
  const wanted = Math.max(1, Math.min(pen.size / LABEL_SIZE, tallest(pen.measures) / figure.height));
  const { lines, scale, dx, key, above, height } = placeLabels(figure, { width, scale: wanted, pen });
  const paths = figure.draw.flatMap((each) =>
    each.kind === 'path' ? [drawPath(each, room.x + dx, scale, pen.measures.size.text, mark)] : [],
  );
  const items = [...paths, ...lines.flatMap((each) => drawLine(each, room.x, pen, mark))];
  return {
    slab: slab(
      height,
      items.map((item) => shift(item, 0, above)),
    ),
    key,
  };
}

/** `1 zinc; 2 salt bridge` */
function keyText(key: readonly (readonly Inline[])[]): Inline[] {
  return joined(
    key.map((words, at) => [{ kind: 'text', text: `${at + 1}\u00a0`, weight: 'strong' } as const, ...words]),
    '; ',
  );
}

/** Lines of figures are half as thick again in the largest print. */
const thickness = (line: number, size: number): number => line * Math.min(1.5, Math.max(1, size / 16));

const FILL = { paper: 1, grey: 0.85, ink: 0 } as const;

function drawPath(primitive: Extract<Primitive, { kind: 'path' }>, x: number, scale: number, size: number, mark: Mark): PathItem {
  const path = primitive.path.map((part) => {
    if (part.to === 'close') return part;
    const end = { ...part, x: part.x * scale, y: part.y * scale };
    return part.to === 'curve' && end.to === 'curve'
      ? { ...end, x1: part.x1 * scale, y1: part.y1 * scale, x2: part.x2 * scale, y2: part.y2 * scale }
      : end;
  });
  const line = thickness(primitive.line, size);
  const item: PathItem = { kind: 'path', x, y: 0, path, line, ink: primitive.stroke ? INK.rule : 0.1, mark };
  return {
    ...item,
    ...(primitive.fill ? { fill: FILL[primitive.fill] } : {}),
    ...(primitive.dash ? { dash: primitive.dash } : {}),
  };
}

/** All of a figure is one thing to a reader, told by its alternative text. */
function drawLine({ piece, x, y }: PlacedLine, left: number, pen: Pen, mark: Mark): Item[] {
  const texts = piece.runs.map(({ rise, ...run }): Item => {
    return { ...run, kind: 'text', x: left + x + run.x, y: y - rise, ink: pen.ink, mark };
  });
  return [...texts, ...piece.paths.map((path) => ({ ...path, x: path.x + left + x, y: path.y + y, mark }))];
}
