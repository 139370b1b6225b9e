import type { Document } from '../../document/document.ts';
import { box, INK, type Item } from './item.ts';
import type { Pen } from './piece.ts';
import { label, smallPen } from './room.ts';
import type { Slab } from './slab.ts';

/**
 * The foot of a page, relative to the bottom left corner of its frame: sheet title, page n of N, on sheets the total of the page's
 * marking cells, and very small the codes of the questions on it. All of it is an artifact to a reader.
 */
export function drawFoot(
  slabs: readonly Slab[],
  { number, count, document, pen }: { number: number; count: number; document: Document; pen: Pen },
): Item[] {
  const { measures } = pen;
  const small = smallPen(pen);
  const size = Math.max(measures.floor, small.size * 0.94);
  const y = 25;
  const items: Item[] = [label(small, document.foot, { x: 0, y, size })];
  items.push(label(small, `page ${number} of ${count}`, { x: measures.frame / 2, y, size, align: 'middle' }));
  const marks = slabs.reduce((sum, part) => sum + (part.note?.marks ?? 0), 0);
  if (document.kind === 'sheet' && marks > 0) items.push(...pageTotal(marks, small, y));
  const codes = [...new Set(slabs.flatMap((part) => part.note?.code ?? []))];
  if (codes.length > 0)
    items.push(label(small, codes.join('  '), { x: 0, y: y + measures.size.tiny * 1.6, size: measures.size.tiny }));
  return items;
}

/** "this page / 14", its cell under the marking cells. */
function pageTotal(marks: number, pen: Pen, y: number): Item[] {
  const { measures } = pen;
  const text = measures.size.text;
  const width = measures.cells - text * 0.9;
  const left = measures.frame - width;
  const height = text * 1.75;
  return [
    box(left, y - text * 0.33 - height / 2, width, height, 0.6, INK.rule),
    label(pen, `/ ${marks}`, { x: left + width - text * 0.4, y, align: 'end', size: text * 0.95, ink: INK.text }),
    label(pen, 'this page', { x: left - text * 0.5, y, align: 'end', size: Math.max(measures.floor, pen.size * 0.94) }),
  ];
}
