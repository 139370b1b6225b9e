import { breakLines, type Line } from './break-lines.ts';
import { BoxBuilder, type Pen, type Piece, spacePiece, textWidth } from './piece.ts';
import { textPieces } from './text-pieces.ts';

/** Facts with a dot between those on one line. Where a line ends there is no dot to see; one is heard all the same. */
export function factLines(facts: readonly string[], pen: Pen, width: number): readonly Line[] {
  const dot: Piece = { ...new BoxBuilder(pen).text('  ·  ').build(), kind: 'space' };
  const pieces = facts.flatMap((fact, at) => [...(at > 0 ? [dot] : []), ...textPieces(kept(fact, pen, width), pen)]);
  const unseen: Piece = { ...spacePiece(pen), speech: { type: 'Span', actual: ' · ' } };
  return breakLines(pieces, width).map((line) => (line.end === dot ? { ...line, end: unseen } : line));
}

/** A fact stays on one line where a line can hold it. */
function kept(fact: string, pen: Pen, width: number): string {
  return textWidth(pen.fonts, pen.face, pen.size, fact) < width * 0.9 ? fact.replaceAll(' ', '\u00a0') : fact;
}
