import { readFileSync } from 'node:fs';
import { type Face, FONT_FILES, type Fonts, openFonts } from '../../src/printers/pdf/fonts.ts';

const modules = new URL('../../node_modules/', import.meta.url);

/** The file of a face. */
export function readFace(face: Face): Uint8Array {
  return readFileSync(new URL(FONT_FILES[face], modules));
}

/** Opens the fonts of the product, read from where npm puts them, with nothing in their caches. */
export function freshFonts(): Fonts {
  return openFonts(readFace);
}

/** The fonts, shared by all tests of a file. */
export const FONTS = freshFonts();
