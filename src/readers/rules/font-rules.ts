import type { FontReading } from '../read-font.ts';
import { programWidths } from '../read-font-program.ts';
import type { Reading } from '../read-pdf.ts';
import { absent, type Rule, rule } from './rule.ts';
import {
  typedCmapless,
  typedEncodingWrong,
  typedGlyphless,
  typedNotEmbedded,
  typedSymbolicCmaps,
  typedSymbolicEncoded,
  typedUnread,
  typedWidthDiffers,
} from './typed-fonts.ts';

/** Codes shown in each font. */
function codesOf(reading: Reading): Map<FontReading, Set<number>> {
  const codes = new Map<FontReading, Set<number>>();
  for (const { runs } of reading.pages) {
    for (const run of runs) {
      const found = codes.get(run.font) ?? new Set<number>();
      for (const code of run.codes) found.add(code);
      codes.set(run.font, found);
    }
  }
  return codes;
}

/** A check of every code shown in every font. */
function eachCode(check: (font: FontReading, code: number, reading: Reading) => string | undefined) {
  return (reading: Reading): string[] =>
    [...codesOf(reading)].flatMap(([font, codes]) =>
      [...codes].flatMap((code) => check(font, code, reading) ?? []).map((fault) => `${font.name}: ${fault}`),
    );
}

function otherThanIdentity({ file, fonts }: Reading): boolean {
  return fonts.some((font) => !['Identity-H', 'Identity-V'].includes(file.name(font.dict.get('Encoding')) ?? ''));
}

function ofSubtype(subtype: string) {
  return ({ fonts }: Reading): boolean => fonts.some((font) => font.subtype === subtype);
}

function widthDiffers(reading: Reading): string[] {
  return [...codesOf(reading)].flatMap(([font, codes]) => {
    const widths = programWidths(reading.file, font) ?? [];
    return [...codes].flatMap((code) => {
      const own = widths[code];
      const off = own !== undefined && Math.abs(own - font.width(code)) > 1;
      return off ? [`${font.name}: glyph ${code} is ${own} wide in the program, ${font.width(code)} in the file`] : [];
    });
  });
}

function notEmbedded({ fonts }: Reading): string[] {
  return fonts.flatMap(({ name, embedded }) => (embedded ? [] : [`${name} is not embedded`]));
}

function absentGlyphs(reading: Reading): string[] {
  return [...codesOf(reading)].flatMap(([font, codes]) => {
    const count = programWidths(reading.file, font)?.length ?? 0;
    return [...codes].flatMap((code) => (code < count ? [] : [`${font.name}: glyph ${code} of ${count} is shown`]));
  });
}

/** No page shows a simple TrueType font; one of the form is checked. */
function typedOnly(id: string, says: string, check: Rule['check']): Rule {
  return rule(id, says, (reading) => [
    ...(TRUETYPE(reading) ? ['found a simple TrueType font on a page'] : []),
    ...check(reading),
  ]);
}

/** Places in the fonts of the pages, then in those of the form. */
function both(shown: Rule['check'], typed: Rule['check']): Rule['check'] {
  return (reading) => [...shown(reading), ...typed(reading)];
}

const FORBIDDEN = ['\u0000', '\ufeff', '\ufffe'];
const TRUETYPE = ofSubtype('TrueType');

/**
 * Fonts: clause 7.21. The printer writes Type 0 fonts with Identity-H, and a simple TrueType font for what is typed into fields; other kinds
 * are told as absent.
 */
export const FONT_RULES: readonly Rule[] = [
  absent('7.21.3.1-1', 'encoding of a composite font other than identity', otherThanIdentity),
  rule('7.21.3.2-1', 'composite TrueType fonts map codes to glyphs', ({ file, fonts }) =>
    fonts.flatMap(({ name, descendant }) =>
      file.name(descendant?.get('Subtype')) === 'CIDFontType2' && !descendant?.has('CIDToGIDMap')
        ? [`${name} has no CIDToGIDMap`]
        : [],
    ),
  ),
  absent('7.21.3.3-1', 'CMap other than identity', otherThanIdentity),
  absent('7.21.3.3-2', 'embedded CMap', otherThanIdentity),
  absent('7.21.3.3-3', 'embedded CMap', otherThanIdentity),
  rule('7.21.4.1-1', 'fonts are embedded', both(notEmbedded, typedNotEmbedded)),
  rule('7.21.4.1-2', 'all glyphs shown are in the font program', both(absentGlyphs, typedGlyphless)),
  absent('7.21.4.2-1', 'Type 1 font', ofSubtype('Type1')),
  absent('7.21.4.2-2', 'CIDSet', ({ fonts }) => fonts.some(({ descriptor }) => descriptor?.has('CIDSet'))),
  rule('7.21.5-1', 'widths agree with the font program', both(widthDiffers, typedWidthDiffers)),
  typedOnly('7.21.6-1', 'a TrueType font that is not symbolic has a cmap', typedCmapless),
  typedOnly('7.21.6-2', 'its encoding is Windows’ or Macintosh’s, its names are in the Adobe Glyph List', typedEncodingWrong),
  typedOnly('7.21.6-3', 'a symbolic TrueType font has no encoding', typedSymbolicEncoded),
  typedOnly('7.21.6-4', 'a symbolic TrueType font has one cmap, or one for symbols', typedSymbolicCmaps),
  rule(
    '7.21.7-1',
    'every code has a character',
    both(
      eachCode((font, code) => (font.unicode.has(code) ? undefined : `code ${code} has no character`)),
      typedUnread,
    ),
  ),
  rule('7.21.7-2', 'no character is U+0000, U+FEFF or U+FFFE', ({ fonts, typedFonts }) =>
    [...fonts, ...typedFonts].flatMap(({ name, unicode }) =>
      [...unicode.values()].some((text) => FORBIDDEN.some((each) => text.includes(each)))
        ? [`${name} has a forbidden character`]
        : [],
    ),
  ),
  rule(
    '7.21.8-1',
    'the glyph for "none" is not shown',
    eachCode((_, code) => (code === 0 ? 'the glyph for "none" is shown' : undefined)),
  ),
];
