import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { type Face, type Fonts, openFonts, type PreparedFonts } from '../printers/pdf/fonts.ts';

const sans = (cut: string) => `source-sans/OTF/SourceSans3-${cut}.otf`;

const FILES: Readonly<Record<Face, string>> = {
  regular: sans('Regular'),
  medium: sans('Medium'),
  strong: sans('Semibold'),
  strongItalic: sans('SemiboldIt'),
  italic: sans('It'),
  light: sans('Light'),
  lightItalic: sans('LightIt'),
  symbol: '@expo-google-fonts/stix-two-math/400Regular/STIXTwoMath_400Regular.ttf',
};

/** What the build has worked out of the fonts; without it a document opens the fonts itself, to the same bytes. */
const PREPARED = '.build/fonts.json';

/**
 * The fonts of the printed page, each read from its package when it is first used.
 * @param root folder of this package, from which packages are found
 */
export function readFonts(root: string): Fonts {
  const file = join(root, PREPARED);
  const prepared = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as PreparedFonts) : {};
  return openFonts((face) => readFace(root, face), prepared);
}

/** The bytes of one font file. */
export function readFace(root: string, face: Face): Uint8Array {
  const { resolve } = createRequire(join(root, 'package.json'));
  return readFileSync(resolve(FILES[face]));
}
