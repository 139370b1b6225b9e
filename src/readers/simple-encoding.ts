import type { PdfFile } from './pdf-file.ts';
import type { FontReading } from './read-font.ts';
import { Name } from './value.ts';

/** How a simple font finds its glyphs (ISO 32000-1, 9.6.6). */
export interface SimpleEncoding {
  /** `WinAnsiEncoding` and the like; undefined when the dictionary names none */
  readonly base: string | undefined;
  /** names that stand in place of the base's, by code */
  readonly differences: ReadonlyMap<number, string>;
}

export function readSimpleEncoding(file: PdfFile, font: FontReading): SimpleEncoding {
  const encoding = file.get(font.dict.get('Encoding'));
  if (encoding instanceof Name) return { base: encoding.value, differences: new Map() };
  const dict = file.dict(font.dict.get('Encoding'));
  const differences = new Map<number, string>();
  let code = 0;
  for (const each of file.array(dict?.get('Differences'))) {
    if (each instanceof Name) differences.set(code++, each.value);
    else code = file.number(each) ?? code;
  }
  return { base: file.name(dict?.get('BaseEncoding')), differences };
}

/** The character by which a code of a TrueType font is looked up in its program; undefined when it cannot be. */
export function lookupOf({ base, differences }: SimpleEncoding, code: number): number | undefined {
  const name = differences.get(code);
  if (name !== undefined) return GLYPH_NAMES.get(name);
  return base === 'WinAnsiEncoding' ? winAnsi(code) : undefined;
}

/** Codes 128 to 159 of Windows' code page 1252, a question mark where it has none. Node's own decoder takes them for Latin-1. */
const C1 = [
  [0x20ac, 0x3f, 0x201a, 0x0192, 0x201e, 0x2026, 0x2020, 0x2021, 0x02c6, 0x2030, 0x0160, 0x2039, 0x0152, 0x3f, 0x017d, 0x3f],
  [0x3f, 0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x02dc, 0x2122, 0x0161, 0x203a, 0x0153, 0x3f, 0x017e, 0x0178],
].flat();

/** WinAnsiEncoding is that code page with one space and one hyphen more (ISO 32000-1, annex D.2). */
function winAnsi(code: number): number | undefined {
  if (code < 0x20 || code === 0x7f) return undefined;
  if (code === 0xa0 || code === 0xad) return code === 0xa0 ? 0x20 : 0x2d;
  return C1[code - 0x80] ?? code;
}

const DIGITS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** The names of the Adobe Glyph List 2.0 that may stand in our files, with its characters. Any other is a fault, for us. */
export const GLYPH_NAMES: ReadonlyMap<string, number> = new Map([
  ...DIGITS.map((digit, at) => [`${digit}inferior`, 0x2080 + at] as const),
  ...DIGITS.slice(4).map((digit, at) => [`${digit}superior`, 0x2074 + at] as const),
  ['arrowright', 0x2192],
  ['minus', 0x2212],
  ['Deltagreek', 0x0394],
  ['approxequal', 0x2248],
  ['lessequal', 0x2264],
  ['greaterequal', 0x2265],
  ['commasuperior', 0xf6e2],
  ['hyphensuperior', 0xf6e6],
]);
