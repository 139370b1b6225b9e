/** Letter of an option by its place, from zero. */
export function optionLetter(place: number): string {
  return 'ABCDEFGH'[place]!;
}
