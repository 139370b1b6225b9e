import { type CmapReading, readCmaps } from '../read-cmap.ts';
import type { FontReading } from '../read-font.ts';
import { programWidths } from '../read-font-program.ts';
import type { Reading } from '../read-pdf.ts';
import { GLYPH_NAMES, lookupOf, readSimpleEncoding } from '../simple-encoding.ts';

type Check = (reading: Reading) => string[];

/** A check of every font of the form, by whose codes anything may be typed. */
function eachFont(check: (font: FontReading, reading: Reading) => readonly string[]): Check {
  return (reading) =>
    reading.typedFonts.flatMap((font) => check(font, reading).map((fault) => `${font.name}, to type in: ${fault}`));
}

/** A check of all codes of every font of the form. */
function eachTypedCode(check: (font: FontReading, code: number, glyph: number | undefined) => string | undefined): Check {
  return eachFont((font, reading) => {
    const find = glyphFinder(font, reading);
    return [...font.codes].flatMap((code) => check(font, code, find(code)) ?? []).slice(0, 9);
  });
}

function cmapsOf({ descriptor }: FontReading, { file }: Reading): CmapReading[] {
  const program = file.stream(descriptor?.get('FontFile2'));
  return program ? readCmaps(program) : [];
}

/** How codes find their glyphs: by Unicode for Windows, which fonts that are not symbolic are looked up by. */
function glyphFinder(font: FontReading, reading: Reading): (code: number) => number | undefined {
  const encoding = readSimpleEncoding(reading.file, font);
  const glyphs = cmapsOf(font, reading).find(isUnicode)?.glyphs;
  return (code) => {
    const lookup = lookupOf(encoding, code);
    return lookup === undefined ? undefined : glyphs?.get(lookup);
  };
}

const isUnicode = ({ platform, encoding }: CmapReading): boolean => platform === 3 && encoding === 1;
const isWindowsSymbol = ({ platform, encoding }: CmapReading): boolean => platform === 3 && encoding === 0;

function isSymbolic({ descriptor }: FontReading, { file }: Reading): boolean {
  return ((file.number(descriptor?.get('Flags')) ?? 0) & 4) !== 0;
}

/** 7.21.4.1-1, and that fields are set in a font which the form holds. */
export const typedNotEmbedded: Check = (reading) => {
  const known = new Set(reading.typedFonts.map(({ resource }) => resource));
  const lost = reading.pages.flatMap(({ annotations }) =>
    annotations.flatMap((each) => {
      const font = /\/(\S+)\s+[\d.]+\s+Tf/.exec(reading.file.text(each.get('DA')) ?? '')?.[1];
      return font === undefined || known.has(font) ? [] : [`a field is set in \`${font}\`, which the form does not hold`];
    }),
  );
  return [...eachFont(({ embedded }) => (embedded ? [] : ['not embedded']))(reading), ...new Set(lost)];
};

/** 7.21.4.1-2 */
export const typedGlyphless = eachTypedCode((_font, code, glyph) => (glyph ? undefined : `code ${code} has no glyph`));

/** 7.21.5-1 */
export const typedWidthDiffers = eachFont((font, reading) => {
  const widths = programWidths(reading.file, font) ?? [];
  const find = glyphFinder(font, reading);
  return [...font.codes].flatMap((code) => {
    const own = widths[find(code) ?? 0];
    const off = own === undefined || Math.abs(own - font.width(code)) > 1;
    return off ? [`code ${code} is ${own} wide in the program, ${font.width(code)} in the file`] : [];
  });
});

/** 7.21.6-1 */
export const typedCmapless = eachFont((font, reading) => {
  const cmaps = cmapsOf(font, reading);
  const least = cmaps.some(isWindowsSymbol) ? 2 : 1;
  return isSymbolic(font, reading) || cmaps.length >= least ? [] : ['no cmap that is not symbolic'];
});

/** 7.21.6-2 */
export const typedEncodingWrong = eachFont((font, reading) => {
  if (isSymbolic(font, reading)) return [];
  const { base, differences } = readSimpleEncoding(reading.file, font);
  const unknown = [...differences.values()].filter((name) => !GLYPH_NAMES.has(name));
  return [
    ...(base === 'WinAnsiEncoding' || base === 'MacRomanEncoding' ? [] : ['neither WinAnsiEncoding nor MacRomanEncoding']),
    ...unknown.map((name) => `\`${name}\` is not known to be in the Adobe Glyph List`),
    ...(differences.size > 0 && !cmapsOf(font, reading).some(isUnicode) ? ['differences without a cmap for Unicode'] : []),
  ];
});

/** 7.21.6-3 */
export const typedSymbolicEncoded = eachFont((font, reading) =>
  isSymbolic(font, reading) && font.dict.has('Encoding') ? ['symbolic, with an encoding'] : [],
);

/** 7.21.6-4 */
export const typedSymbolicCmaps = eachFont((font, reading) => {
  const cmaps = cmapsOf(font, reading);
  const right = cmaps.length === 1 || cmaps.some(isWindowsSymbol);
  return !isSymbolic(font, reading) || right ? [] : [`symbolic, with ${cmaps.length} cmaps`];
});

/** 7.21.7-1 */
export const typedUnread = eachTypedCode((font, code) => (font.unicode.has(code) ? undefined : `code ${code} has no character`));
