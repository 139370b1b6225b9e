import { BoxBuilder, type Pen, type Piece, spacePiece } from './piece.ts';

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉₊₋';
const PLAIN = '0123456789+\u2212';

/** A word is cut where scripts begin and end; ready-made script characters are drawn like all others, from plain digits. */
const STRETCH = /[⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻]+|[₀₁₂₃₄₅₆₇₈₉₊₋]+|[^⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻₀₁₂₃₄₅₆₇₈₉₊₋]+/g;
const ANY_SCRIPT = /[⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻₀₁₂₃₄₅₆₇₈₉₊₋]/;

/** Words and the spaces between them. A no-break space stays inside its word; a line may also end after a hyphen between letters. */
export function textPieces(text: string, pen: Pen): readonly Piece[] {
  const pieces: Piece[] = [];
  for (const [i, word] of text.split(/[ \n\t]+/).entries()) {
    if (i > 0) pieces.push(spacePiece(pen));
    if (word) pieces.push(wordPiece(word, pen));
  }
  return pieces;
}

function wordPiece(word: string, pen: Pen): Piece {
  const builder = new BoxBuilder(pen);
  const visible = word.replaceAll('\u00a0', ' ');
  if (!ANY_SCRIPT.test(visible)) return builder.text(visible).build();
  for (const stretch of visible.match(STRETCH) ?? []) scriptOrText(builder, stretch);
  return builder.build({ type: 'Span', actual: visible });
}

/** Writes a stretch of one kind: raised, lowered or plain. */
function scriptOrText(builder: BoxBuilder, stretch: string): void {
  const first = stretch[0] ?? '';
  if (RAISED.includes(first)) builder.script(plain(stretch, RAISED), 'above');
  else if (LOWERED.includes(first)) builder.script(plain(stretch, LOWERED), 'below');
  else builder.text(stretch);
}

function plain(stretch: string, from: string): string {
  return Array.from(stretch, (character) => PLAIN[from.indexOf(character)] ?? character).join('');
}
