import type { Document } from '../../document/document.ts';
import { draw } from './draw.ts';
import type { Fonts } from './fonts.ts';
import { layout } from './layout.ts';
import type { Settings } from './settings.ts';

/** Prints a document as a tagged PDF/UA-1 file. Same document, settings and fonts: same bytes. */
export function printPdf(document: Document, settings: Settings, fonts: Fonts): Uint8Array {
  return draw(layout(document, settings, fonts), fonts);
}
