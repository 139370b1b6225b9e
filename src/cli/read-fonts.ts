import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { type Face, type Fonts, openFonts } from '../printers/pdf/fonts.ts';

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

/**
 * The fonts of the printed page, each read from its package when it is first used.
 * @param root folder of this package, from which packages are found
 */
export function readFonts(root: string): Fonts {
  const { resolve } = createRequire(join(root, 'package.json'));
  return openFonts((face) => readFileSync(resolve(FILES[face])));
}
