import { readFileSync } from 'node:fs';
import { FONT_FILES, type FontFile, type Fonts, openFonts } from '../../src/printers/pdf/fonts.ts';

const modules = new URL('../../node_modules/', import.meta.url);

/** A font file's bytes. */
export function readFace(file: FontFile): Uint8Array {
  return readFileSync(new URL(FONT_FILES[file], modules));
}

/** Opens the fonts of the product, read from where npm puts them, with nothing in their caches. */
export function freshFonts(): Fonts {
  return openFonts(readFace);
}

/** The fonts, shared by all tests of a file. */
export const FONTS = freshFonts();
