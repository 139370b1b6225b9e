import type { DocumentFont } from 'pdfkit';
import type { Segment } from '../../document/figure.ts';
import type { Sheet } from './draw.ts';
import type { Shape } from './fonts.ts';
import type { Item, PathItem, TextItem } from './item.ts';

/** Page operators for one item. pdfkit has turned the page upside down (origin top left); text is turned back. */
export function drawItem(sheet: Sheet, item: Item): string {
  return item.kind === 'text' ? drawText(sheet, item) : drawPath(item);
}

/**
 * Shows a run of text with its kerning. Glyphs are put into the document's subset here, with the code point they were asked for, so
 * that ToUnicode never depends on what the shared font was used for before.
 */
function drawText(sheet: Sheet, item: TextItem): string {
  const font = sheet.faces.get(item.face);
  if (!font) throw new Error(`face \`${item.face}\` is not registered`);
  sheet.pdf.page.fonts[font.id] ??= font.ref();
  const show = showText(sheet, font, item);
  const place = `1 0 0 -1 ${number(item.x)} ${number(item.y)} Tm`;
  return `BT ${number(item.ink)} g ${place} /${font.id} ${number(item.size)} Tf [${show}] TJ ET`;
}

function showText(sheet: Sheet, font: DocumentFont, item: TextItem): string {
  let show = '';
  let hex = '';
  const add = (shape: Shape): void => {
    for (const [i, glyph] of shape.glyphs.entries()) {
      hex += encodeGlyph(font, glyph, shape.codePoints[i]!, shape.advances[i]!);
      const kern = shape.kerns[i]!;
      if (kern !== 0) {
        show += `<${hex}>${number(-kern)}`;
        hex = '';
      }
    }
  };
  for (const [i, word] of item.text.split(' ').entries()) {
    if (i > 0) add(sheet.fonts.shape(item.face, ' '));
    if (word) add(sheet.fonts.shape(item.face, word));
  }
  return hex ? `${show}<${hex}>` : show;
}

/** The glyph's code in this document, four hexadecimal digits. */
function encodeGlyph(font: DocumentFont, glyph: number, codePoint: number, advance: number): string {
  const code = font.subset.includeGlyph(glyph);
  font.widths[code] ??= advance;
  font.unicode[code] ??= [PRINTED_AS.get(codePoint) ?? codePoint];
  return code.toString(16).padStart(4, '0');
}

/** The long arrow is how we draw an arrow; it is read as the ordinary one. */
const PRINTED_AS: ReadonlyMap<number, number> = new Map([[0x27f6, 0x2192]]);

function drawPath(item: PathItem): string {
  const operators = ['q', `1 0 0 1 ${number(item.x)} ${number(item.y)} cm`];
  if (item.line > 0) operators.push(`${number(item.ink)} G ${number(item.line)} w`);
  if (item.fill !== undefined) operators.push(`${number(item.fill)} g`);
  if (item.round) operators.push('1 J 1 j');
  if (item.dash) operators.push(`[${item.dash.map(number).join(' ')}] 0 d`);
  operators.push(...item.path.map(segment), paint(item), 'Q');
  return operators.join(' ');
}

function paint(item: PathItem): string {
  if (item.fill === undefined) return 'S';
  return item.line > 0 ? 'B' : 'f';
}

function segment(part: Segment): string {
  switch (part.to) {
    case 'move':
      return `${number(part.x)} ${number(part.y)} m`;
    case 'line':
      return `${number(part.x)} ${number(part.y)} l`;
    case 'curve':
      return `${[part.x1, part.y1, part.x2, part.y2, part.x, part.y].map(number).join(' ')} c`;
    case 'close':
      return 'h';
  }
}

/** Coordinates are written to a hundredth of a point. */
function number(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(Object.is(rounded, -0) ? 0 : rounded);
}
