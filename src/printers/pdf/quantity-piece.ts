import type { Inline } from '../../document/inline.ts';
import { speakQuantity } from '../../document/spoken.ts';
import { raisedText } from './actual-text.ts';
import { BoxBuilder, type Pen, type Piece } from './piece.ts';

type Quantity = Extract<Inline, { kind: 'quantity' }>;

/** A number and its unit in one box. Powers come as caret text: `1.20×10^-4`, `mol dm^-3`. */
export function quantityPiece({ number, unit }: Quantity, pen: Pen): Piece {
  const builder = new BoxBuilder(pen);
  const text = quantityText(number, unit);
  caretText(builder, text);
  // a minus sign is passed over by some readers, so it is said
  if (!/[\^\u2212]/.test(text)) return builder.build();
  return builder.build({ type: 'Formula', alt: speakQuantity(number, unit), actual: raisedText(text) });
}

/** Writes a quantity, unit or power, `mol dm^-3`, with its exponents raised. */
export function caretText(builder: BoxBuilder, text: string): void {
  for (const stretch of text.match(/\^[+\u2212-]?[\d.]+|[^^]+|\^/g) ?? []) {
    if (stretch.startsWith('^') && stretch.length > 1) builder.script(stretch.slice(1).replace('-', '\u2212'), 'above');
    else builder.text(stretch.replace(/^-(?=\d)/, '\u2212'));
  }
}

function quantityText(number: string, unit: string): string {
  const shown = spaced(number);
  const apart = shown && unit && unit !== '%' && unit !== '°';
  return `${shown}${apart ? ' ' : ''}${unit}`;
}

/** The multiplication sign takes a space on both sides. */
function spaced(number: string): string {
  return number.replace(/\s*×\s*/, ' × ');
}
