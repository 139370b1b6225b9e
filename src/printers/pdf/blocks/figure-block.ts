import type { Block } from '../../../document/block.ts';
import type { Figure, Primitive } from '../../../document/figure.ts';
import { inlinePieces } from '../inline-pieces.ts';
import type { Item } from '../item.ts';
import { joinPieces, type Pen } from '../piece.ts';
import { inner, type Room, setText } from '../room.ts';
import { type Slab, slab, stack } from '../slab.ts';
import { addMark, addTag, type Mark } from '../tag.ts';

/** A drawing, centred, with its caption below; scaled down when it is wider than its room. */
export function layFigure({ figure, caption }: Extract<Block, { kind: 'figure' }>, room: Room): Slab[] {
  const { step } = room.pen.measures;
  const scale = Math.min(1, room.width / figure.width);
  const x = room.x + (room.width - figure.width * scale) / 2;
  const tag = addTag(room.tag, 'Figure', { alt: figure.alt });
  const mark = addMark(tag);
  const items = figure.draw.flatMap((primitive) => drawPrimitive(primitive, { figure, pen: room.pen, x, scale, mark }));
  const drawing = slab(figure.height * scale, items);
  if (!caption) return [{ ...drawing, above: step * 1.4 }];
  const text = setText(caption, inner(room, { pen: { size: room.pen.measures.size.small } }), 'P', { align: 'middle' });
  return [{ ...stack([drawing, ...text]), above: step * 1.4 }];
}

interface Place {
  readonly figure: Figure;
  readonly pen: Pen;
  readonly x: number;
  readonly scale: number;
  readonly mark: Mark;
}

const FILL = { paper: 1, grey: 0.85, ink: 0 } as const;

function drawPrimitive(primitive: Primitive, place: Place): Item[] {
  if (primitive.kind === 'label') return drawLabel(primitive, place);
  const { scale, x, mark } = place;
  const path = primitive.path.map((part) => {
    if (part.to === 'close') return part;
    const end = { ...part, x: part.x * scale, y: part.y * scale };
    return part.to === 'curve' && end.to === 'curve'
      ? { ...end, x1: part.x1 * scale, y1: part.y1 * scale, x2: part.x2 * scale, y2: part.y2 * scale }
      : end;
  });
  const item: Item = { kind: 'path', x, y: 0, path, line: primitive.line, ink: 0.1, mark };
  return [
    { ...item, ...(primitive.fill ? { fill: FILL[primitive.fill] } : {}), ...(primitive.dash ? { dash: primitive.dash } : {}) },
  ];
}

/** Labels keep the text size whatever the scale; all of the figure is one thing to a reader, told by its alternative text. */
function drawLabel(primitive: Extract<Primitive, { kind: 'label' }>, { pen, x, scale, mark }: Place): Item[] {
  const small = { ...pen, size: Math.max(pen.measures.floor, pen.size * 0.9) };
  const piece = joinPieces(small, inlinePieces(primitive.label, small));
  const left = x + primitive.x * scale - piece.width * { start: 0, middle: 0.5, end: 1 }[primitive.anchor];
  const y = primitive.y * scale;
  const texts = piece.runs.map((run): Item => {
    return {
      kind: 'text',
      x: left + run.x,
      y: y - run.rise,
      face: run.face,
      size: run.size,
      text: run.text,
      width: run.width,
      ink: run.ink,
      mark,
    };
  });
  return [...texts, ...piece.paths.map((path) => ({ ...path, x: path.x + left, y: path.y + y, mark }))];
}
