/**
 * Columns that a text takes on a terminal: one for a character, none for a mark on the one before. Stands in for the package of the same
 * name when the program is bundled; help holds Latin letters and a few signs of chemistry, for which the two agree.
 */
export default function stringWidth(text: string): number {
  return [...text].filter((character) => !/[\p{M}\p{Cc}\u200b-\u200f]/u.test(character)).length;
}
