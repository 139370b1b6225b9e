import type { Fonts } from './fonts.ts';
import { BoxBuilder, type Pen, type Piece, spacePiece } from './piece.ts';

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉₊₋';
const PLAIN = '0123456789+\u2212';

/** A word is cut where scripts begin and end; ready-made script characters are drawn like all others, from plain digits. */
const STRETCH = /[⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻]+|[₀₁₂₃₄₅₆₇₈₉₊₋]+|[^⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻₀₁₂₃₄₅₆₇₈₉₊₋]+/g;
const ANY_SCRIPT = /[⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻₀₁₂₃₄₅₆₇₈₉₊₋]/;

/** How unwelcome a line end is after an equals sign, which belongs to what follows: as two lines more. */
export const AFTER_EQUALS = 2000;

/** Words and the spaces between them. A no-break space stays inside its word; a line may also end after a hyphen between letters. */
export function textPieces(text: string, pen: Pen): readonly Piece[] {
  const pieces: Piece[] = [];
  const words = text.split(/[ \n\t]+/);
  for (const [i, word] of words.entries()) {
    if (i > 0) pieces.push(words[i - 1] === '=' ? { ...spacePiece(pen), cost: AFTER_EQUALS } : spacePiece(pen));
    if (word) pieces.push(keptWord(word, pen));
  }
  return pieces;
}

/** Word pieces by fonts, then by pen and word: most words of a document were met before. */
const KEPT = new WeakMap<Fonts, Map<string, Piece>>();
const MOST_KEPT = 20_000;

function keptWord(word: string, pen: Pen): Piece {
  const kept = KEPT.get(pen.fonts) ?? new Map<string, Piece>();
  KEPT.set(pen.fonts, kept);
  const key = `${pen.face} ${pen.size} ${pen.ink} ${pen.measures.floor} ${word}`;
  const found = kept.get(key);
  if (found) return found;
  if (kept.size > MOST_KEPT) kept.clear();
  const piece = wordPiece(word, pen);
  // a piece with a speech of its own is one occurrence: two of them must not become one tag
  if (!piece.speech) kept.set(key, piece);
  return piece;
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
