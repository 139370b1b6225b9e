/** Longest stretch of a line that is shown, in characters. */
const WINDOW = 96;

/**
 * The line in which a fault stands, with carets under it.
 * @param text as it was given; of several lines, the one with the fault is shown
 * @param at start of the fault in UTF-16 units
 * @param length of the fault in UTF-16 units; one caret at least is drawn
 */
export function underline(text: string, at = 0, length = 0): string {
  const lineStart = text.lastIndexOf('\n', at - 1) + 1;
  const lineEnd = text.indexOf('\n', lineStart);
  const line = text.slice(lineStart, lineEnd === -1 ? undefined : lineEnd);
  const start = widthOf(line.slice(0, at - lineStart));
  const carets = Math.max(1, widthOf(line.slice(at - lineStart, at - lineStart + length)));
  const characters = [...line].filter((character) => widthOf(character) > 0 || /\p{M}/u.test(character));
  if (characters.length <= WINDOW) return drawn(characters.map(shown).join(''), start, carets);
  const from = Math.max(0, Math.min(start - 24, characters.length - WINDOW));
  const part = characters
    .slice(from, from + WINDOW)
    .map(shown)
    .join('');
  const before = from > 0 ? '… ' : '';
  const after = from + WINDOW < characters.length ? ' …' : '';
  return drawn(before + part + after, before.length + start - from, Math.min(carets, WINDOW - (start - from)));
}

function drawn(line: string, start: number, carets: number): string {
  return `  ${line}\n  ${' '.repeat(start)}${'^'.repeat(carets)}`;
}

/** Columns that a text takes: one for a character, none for a mark that sits on the one before. */
function widthOf(text: string): number {
  return [...text].filter((character) => !/\p{M}/u.test(character)).length;
}

/** A tab would shift the carets, and other control characters would steer the terminal. */
function shown(character: string): string {
  if (character === '\t') return ' ';
  return /\p{Cc}/u.test(character) ? '\ufffd' : character;
}
