const PARTS: readonly (readonly [number, string])[] = [
  [10, 'X'],
  [9, 'IX'],
  [5, 'V'],
  [4, 'IV'],
  [1, 'I'],
];

/** Roman numeral of an oxidation number: 7 is `VII`, 0 is `0`, −1 is `−I` with a true minus (IUPAC 2005, IR-5.4.2.2). */
export function roman(number: number): string {
  if (number === 0) return '0';
  let rest = Math.abs(number);
  let text = '';
  for (const [value, letters] of PARTS) {
    while (rest >= value) {
      text += letters;
      rest -= value;
    }
  }
  return number < 0 ? `\u2212${text}` : text;
}
