import { Fault } from '../../exact/fault.ts';
import type { Face } from './fonts.ts';

/** A character that no open font can draw; printing it would leave a hole. */
export function missingGlyph(codePoint: number, face: Face): Fault {
  const name = `U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}`;
  const text = String.fromCodePoint(codePoint);
  return new Fault(
    'missing-glyph',
    `expected characters that the fonts hold, found \`${text}\` (${name}), absent from the ${face} face`,
    {
      text,
      at: 0,
      length: text.length,
    },
  );
}
