import { readFileSync } from 'node:fs';
import { openFonts } from '../../src/printers/pdf/fonts.ts';

const modules = new URL('../../node_modules/', import.meta.url);
const sans = (cut: string): Uint8Array => readFileSync(new URL(`source-sans/OTF/SourceSans3-${cut}.otf`, modules));

/** The fonts of the product, read from where npm puts them. */
export const FONTS = openFonts({
  regular: sans('Regular'),
  medium: sans('Medium'),
  strong: sans('Semibold'),
  italic: sans('It'),
  light: sans('Light'),
  symbol: readFileSync(new URL('@expo-google-fonts/stix-two-math/400Regular/STIXTwoMath_400Regular.ttf', modules)),
});
