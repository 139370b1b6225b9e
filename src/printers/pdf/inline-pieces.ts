import { alongLine } from '../../document/along-line.ts';
import type { Inline } from '../../document/inline.ts';
import { speakInlines } from '../../document/spoken.ts';
import { equationPieces, formulaPiece } from './chemistry-pieces.ts';
import { dots } from './item.ts';
import { BoxBuilder, ITALIC_FACE, joinPieces, type Pen, type Piece, type Speech } from './piece.ts';
import { quantityPiece } from './quantity-piece.ts';
import { scriptSize } from './settings.ts';
import { textPieces } from './text-pieces.ts';

type Handlers = { readonly [K in Inline['kind']]: (inline: Extract<Inline, { kind: K }>, pen: Pen) => readonly Piece[] };

/** One handler for each kind of inline; the type refuses a table with a hole. */
const HANDLERS: Handlers = {
  text: ({ text, weight }, pen) => textPieces(text, weight ? { ...pen, face: weight } : pen),
  formula: ({ formula }, pen) => [formulaPiece(formula, pen)],
  equation: ({ equation, arrow }, pen) => equationPieces(equation, arrow, pen),
  quantity: (quantity, pen) => [quantityPiece(quantity, pen)],
  symbol: (symbol, pen) => [symbolPiece(symbol, pen)],
  fraction: fractionPieces,
  gap: (gap, pen) => [gap.filled ? filledPiece(gap.filled, gap.width, pen) : blankPiece(gap.width, pen)],
};

/** Turns inlines into pieces ready for line breaking. */
export function inlinePieces(inlines: readonly Inline[], pen: Pen): readonly Piece[] {
  return inlines.flatMap((inline) => handle(inline, pen));
}

function handle<K extends Inline['kind']>(inline: Extract<Inline, { kind: K }>, pen: Pen): readonly Piece[] {
  const handler: ((inline: Extract<Inline, { kind: K }>, pen: Pen) => readonly Piece[]) | undefined = HANDLERS[inline.kind as K];
  if (!handler) throw new Error(`the PDF printer knows no inline of kind \`${inline.kind}\``);
  return handler(inline, pen);
}

/** Italic letter; what is raised stands over what is lowered, as in E°cell, where there is room. */
function symbolPiece(symbol: Extract<Inline, { kind: 'symbol' }>, pen: Pen): Piece {
  const builder = new BoxBuilder(pen).text(symbol.letter, { face: ITALIC_FACE[pen.face] });
  const start = builder.x;
  if (symbol.raised === '°') builder.text('°');
  else if (symbol.raised) builder.script(symbol.raised, 'above');
  const raisedEnd = builder.x;
  // scripts nearly as large as their letter would meet: then they stand one behind the other
  const stacked = scriptSize(pen.measures, pen.size) <= pen.size * 0.8;
  if (symbol.lowered) builder.back(stacked ? start : raisedEnd).script(symbol.lowered, 'below');
  if (raisedEnd > builder.x) builder.back(raisedEnd);
  if (symbol.of) {
    builder.skip(pen.size * 0.04).text('(');
    for (const piece of inlinePieces(symbol.of, pen)) builder.piece(piece);
    builder.text(')');
  }
  const plain = !symbol.raised && !symbol.lowered && !symbol.of;
  return builder.build(plain ? undefined : { type: 'Formula', alt: speakInlines([symbol]) });
}

/** Width that a thing on a line may have; in huge print a line has little left beside what it continues. */
function widest({ measures }: Pen): number {
  const { frame, hang, cells } = measures;
  return (frame - 2 * hang - cells) * (cells === 0 ? 0.7 : 1);
}

/** A stacked fraction, or one written along the line where no line could hold it, as in the largest print. */
function fractionPieces(fraction: Extract<Inline, { kind: 'fraction' }>, pen: Pen): readonly Piece[] {
  const stacked = stackedFraction(fraction, pen);
  if (stacked.width < widest(pen)) return [stacked];
  const words = (text: string): Inline => ({ kind: 'text', text });
  return inlinePieces([words('('), ...fraction.above, words(') ÷\u00a0'), ...fraction.below], pen);
}

/** The bar of a stacked fraction is at the height of a minus sign. */
function stackedFraction(fraction: Extract<Inline, { kind: 'fraction' }>, pen: Pen): Piece {
  const small = { ...pen, size: Math.max(pen.measures.floor, pen.size * 0.92) };
  const above = joinPieces(small, inlinePieces(fraction.above, small));
  const below = joinPieces(small, inlinePieces(fraction.below, small));
  const width = Math.max(above.width, below.width) + pen.size * 0.3;
  const axis = pen.size * 0.33;
  const gap = pen.size * 0.16;
  const builder = new BoxBuilder(pen);
  builder.skip((width - above.width) / 2).piece(above, axis + gap + above.descent);
  builder.back((width - below.width) / 2).piece(below, axis - gap - below.ascent);
  const bar = { ...dots(0, -axis, width), line: Math.max(0.4, pen.size * (pen.face === 'light' ? 0.034 : 0.045)), ink: pen.ink };
  const { dash: _dash, round: _round, ...solid } = bar;
  const speech: Speech = { type: 'Formula', alt: speakInlines([fraction]) };
  return builder.path(solid).build(speech, width);
}

/** A dotted gap to write in, a little under the baseline; read out as a blank. */
function blankPiece(ems: number, pen: Pen): Piece {
  const width = Math.min(ems * pen.size, widest(pen));
  const line = dots(0, pen.size * 0.12, width);
  const speech: Speech = { type: 'Span', actual: ' blank ' };
  const piece = new BoxBuilder(pen)
    .path(line)
    .skip(width)
    .reach(pen.size * 0.9, pen.size * 0.2)
    .build(speech);
  return { ...piece, isBlank: true };
}

/** A gap with what belongs into it on its dots: in smaller print, never under the floor, where it is too narrow; wider only then. */
function filledPiece(content: readonly Inline[], ems: number, pen: Pen): Piece {
  const blank = blankPiece(ems, pen);
  const at = (size: number): Piece => {
    const strong = { ...pen, face: 'strong' as const, size };
    return joinPieces(strong, inlinePieces(alongLine(content), strong));
  };
  let size = pen.size;
  while (size > pen.measures.floor && at(size).width > blank.width) size = Math.max(pen.measures.floor, size - 0.4);
  const written = at(size);
  const width = Math.max(blank.width, written.width);
  const line = dots(0, pen.size * 0.12, width);
  const speech: Speech = { type: 'Formula', alt: speakInlines(content) };
  return new BoxBuilder(pen)
    .path(line)
    .skip((width - written.width) / 2)
    .piece(written, pen.size * 0.06)
    .reach(pen.size * 0.9, pen.size * 0.2)
    .build(speech, width);
}
