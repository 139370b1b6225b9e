/** A code of the face of fields: the character it is read as, and its glyph's name where WinAnsiEncoding has none for the code. */
export interface FieldCode {
  readonly code: number;
  readonly codePoint: number;
  readonly name?: string;
  /** what the list has for the name, where that is another character */
  readonly nameCodePoint?: number;
}

/** Codes 128 to 159 of WinAnsiEncoding (ISO 32000-1, annex D.2); a dot where there is none. */
const MIDDLE = '€·‚ƒ„…†‡ˆ‰Š‹Œ·Ž··‘’“”•–—˜™š›œ·žŸ';

/**
 * What pupils of chemistry type beyond WinAnsiEncoding, under codes that it leaves free. Only names of the Adobe Glyph List will do
 * (ISO 14289-1, 7.21.6). It has none for a raised plus or minus, so these take names of the list's private characters: a name is no more
 * than the way from a code to a glyph here, what a code is read as stands in ToUnicode.
 */
const MORE: Readonly<Record<string, string>> = {
  '→': 'arrowright',
  '−': 'minus',
  '⁴': 'foursuperior',
  '⁵': 'fivesuperior',
  '⁶': 'sixsuperior',
  '⁷': 'sevensuperior',
  '⁸': 'eightsuperior',
  '⁹': 'ninesuperior',
  '₀': 'zeroinferior',
  '₁': 'oneinferior',
  '₂': 'twoinferior',
  '₃': 'threeinferior',
  '₄': 'fourinferior',
  '₅': 'fiveinferior',
  '₆': 'sixinferior',
  '₇': 'seveninferior',
  '₈': 'eightinferior',
  '₉': 'nineinferior',
  Δ: 'Deltagreek',
  '≈': 'approxequal',
  '⁺': 'commasuperior',
  '⁻': 'hyphensuperior',
  '≤': 'lessequal',
  '≥': 'greaterequal',
};

const PRIVATE: Readonly<Record<string, number>> = { commasuperior: 0xf6e2, hyphensuperior: 0xf6e6 };

const FREE = [...range(0x0e, 0x1f), 0x7f, 0x81, 0x8d, 0x8f, 0x90, 0x9d];

/** Codes of the face that typed text is set in, in ascending order; the first is 14, the last 255, and none between is left out. */
export const FIELD_CODES: readonly FieldCode[] = [
  ...[...range(0x20, 0x7e), ...range(0xa0, 0xff)].map((code) => ({ code, codePoint: code })),
  ...Array.from(MIDDLE, (character, at) => ({ code: 0x80 + at, codePoint: character.codePointAt(0)! })).filter(
    ({ code }) => !FREE.includes(code),
  ),
  ...Object.entries(MORE).map(([character, name], at) => ({
    code: FREE[at]!,
    codePoint: character.codePointAt(0)!,
    name,
    ...(name in PRIVATE ? { nameCodePoint: PRIVATE[name]! } : {}),
  })),
].sort((one, other) => one.code - other.code);

function range(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, at) => first + at);
}
