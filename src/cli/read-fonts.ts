import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { FONT_FILES, type FontFile, type Fonts, openFonts, type PreparedFonts } from '../printers/pdf/fonts.ts';

/** What the build has worked out of the fonts; without it a document opens the fonts itself, to the same bytes. */
const PREPARED = '.build/fonts.json';

/**
 * The fonts of the printed page, each read from its package when it is first used.
 * @param root folder of this package, from which packages are found
 */
export function readFonts(root: string): Fonts {
  const file = join(root, PREPARED);
  const prepared = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as PreparedFonts) : {};
  return openFonts((file) => readFace(root, file), prepared);
}

/** The bytes of one font file. */
export function readFace(root: string, file: FontFile): Uint8Array {
  const { resolve } = createRequire(join(root, 'package.json'));
  return readFileSync(resolve(FONT_FILES[file]));
}
