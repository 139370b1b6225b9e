import type { Segment } from '../../document/figure.ts';
import type { DocumentFace } from './document-face.ts';
import type { Sheet } from './draw.ts';
import type { Ink, PathItem, TextItem } from './item.ts';

/** Page operators for one item. pdfkit has turned the page upside down (origin top left); text is turned back. */
export function drawItem(sheet: Sheet, item: Ink, paper: readonly number[] = [1, 1, 1]): string {
  return item.kind === 'text' ? drawText(sheet, item) : drawPath(item, paper);
}

function drawText(sheet: Sheet, item: TextItem): string {
  const face = sheet.faces.get(item.face);
  if (!face) throw new Error(`face \`${item.face}\` is not registered`);
  sheet.pdf.page.fonts[face.id] ??= face.ref;
  const place = `1 0 0 -1 ${number(item.x)} ${number(item.y)} Tm`;
  return `BT ${number(item.ink)} g ${place} /${face.id} ${number(item.size)} Tf [${showText(sheet, face, item)}] TJ ET`;
}

/** Words are shaped apart from their spaces, as they were measured. */
function showText(sheet: Sheet, face: DocumentFace, item: TextItem): string {
  const space = item.text.includes(' ') ? face.show(sheet.fonts.shape(item.face, ' ')) : '';
  return item.text
    .split(' ')
    .map((word) => (word ? face.show(sheet.fonts.shape(item.face, word)) : ''))
    .join(space);
}

/** White filling is the colour of the paper. */
function drawPath(item: PathItem, paper: readonly number[]): string {
  const operators = ['q', `1 0 0 1 ${number(item.x)} ${number(item.y)} cm`];
  if (item.line > 0) operators.push(`${number(item.ink)} G ${number(item.line)} w`);
  if (item.fill === 1) operators.push(`${paper.map(number).join(' ')} rg`);
  else if (item.fill !== undefined) operators.push(`${number(item.fill)} g`);
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
