import type { Document } from '../../document/document.ts';
import { factLines } from './fact-lines.ts';
import type { Fonts } from './fonts.ts';
import { box, INK, type Item, type TextItem } from './item.ts';
import { type Pen, textWidth } from './piece.ts';
import { label, smallPen } from './room.ts';
import { setLines } from './set-lines.ts';
import { cellWidth, FEW_LINES, FOOT_LEADING, LARGE, type Measures, SAFE } from './settings.ts';
import type { Slab } from './slab.ts';

/** What a foot tells. */
interface FootFacts {
  readonly number: number;
  readonly count: number;
  readonly document: Document;
  readonly pen: Pen;
}

/**
 * The foot of a page, relative to the bottom left corner of its frame: sheet title, page n of N, on sheets the total of the page's
 * marking cells, and very small the codes of the questions on it. All of it is an artifact to a reader.
 */
export function drawFoot(slabs: readonly Slab[], facts: FootFacts): Item[] {
  const { document, pen } = facts;
  const marks = slabs.reduce((sum, part) => sum + (part.note?.marks ?? 0), 0);
  const codes = [...new Set(slabs.flatMap((part) => part.note?.code ?? []))];
  const total = document.kind === 'sheet' && marks > 0 ? marks : undefined;
  return pen.size > LARGE ? largeFoot(codes, total, facts) : smallFoot(codes, total, facts);
}

/** One line: title, page and total, the codes below the title. */
function smallFoot(codes: readonly string[], total: number | undefined, { number, count, document, pen }: FootFacts): Item[] {
  const { measures } = pen;
  const small = smallPen(pen);
  const y = 28;
  const items: Item[] = [
    label(small, document.foot, { x: 0, y }),
    label(small, `page ${number} of ${count}`, { x: measures.frame / 2, y, align: 'middle' }),
    label(small, codes.join('  '), { x: 0, y: y + measures.size.tiny * 1.5, size: measures.size.tiny }),
  ];
  return [...items, ...(total === undefined ? [] : pageTotal(total, pen, y))];
}

/** Running text over as many lines as it takes, the total at the right of the last. */
function largeFoot(codes: readonly string[], total: number | undefined, facts: FootFacts): Item[] {
  const { pen } = facts;
  const { measures } = pen;
  const slabs = fittingLines(codes, total !== undefined, facts);
  let y = measures.margin.bottom - SAFE - heightOf(slabs);
  const lines: Item[] = [];
  for (const part of slabs) {
    for (const item of part.items) lines.push(withoutMark({ ...(item as TextItem), y: item.y + y }));
    y += part.height;
  }
  return [...lines, ...(total === undefined ? [] : pageTotal(total, pen, measures.margin.bottom - SAFE - pen.size * 0.6))];
}

/** As many codes as there is room for; the first to go is that of a question which began on an earlier page, where it stands. */
function fittingLines(codes: readonly string[], withTotal: boolean, facts: FootFacts): Slab[] {
  const { measures, size } = facts.pen;
  const room = measures.margin.bottom - SAFE - size * 0.2;
  const from = codes.findIndex((_, i) => heightOf(footLines(codes.slice(i), withTotal, facts)) <= room);
  return footLines(from < 0 ? [] : codes.slice(from), withTotal, facts);
}

function footLines(codes: readonly string[], withTotal: boolean, { number, count, document, pen }: FootFacts): Slab[] {
  const { measures } = pen;
  const small = smallPen(pen);
  const facts = [...numberWords(number, count, document, pen), ...codes];
  const taken = withTotal ? cellWidth(measures) + textWidth(pen.fonts, 'regular', small.size, 'this page') + pen.size * 1.5 : 0;
  const width = measures.frame - taken;
  return setLines(factLines(facts, small, width), small, { x: 0, width, leading: FOOT_LEADING }, { type: 'P', kids: [] });
}

/** `9 of 20` alone where a page holds a few lines; else the title and the word "page" as well. */
function numberWords(number: number, count: number, document: Document, pen: Pen): string[] {
  const words = `${number} of ${count}`;
  return pen.size > FEW_LINES ? [words] : [document.foot, `page ${words}`];
}

function heightOf(slabs: readonly Slab[]): number {
  return slabs.reduce((sum, part) => sum + part.height, 0);
}

/** Codes that the foot of a page of large print has room for. */
const CODES = ['MMMMMMMM', 'MMMMMMMM', 'MMMMMMMM'];
const FEW_CODES = ['MMMMMMMM'];

/** The same measures with a bottom margin that holds the foot: in large print it is several lines of running text. */
export function withFootRoom(measures: Measures, document: Document, fonts: Fonts): Measures {
  const pen: Pen = { fonts, measures, face: 'regular', size: measures.size.text, ink: 0 };
  if (pen.size <= LARGE) return measures;
  const sheet = document.kind === 'sheet';
  const codes = document.blocks.some(({ kind }) => kind === 'question') ? (pen.size > FEW_LINES ? FEW_CODES : CODES) : [];
  const slabs = footLines(codes, sheet, { number: 88, count: 88, document, pen });
  const gap = pen.size * (pen.size > FEW_LINES ? 0.6 : 0.8);
  const height = Math.max(heightOf(slabs), sheet ? pen.size * 1.75 : 0);
  return { ...measures, margin: { ...measures.margin, bottom: SAFE + height + gap } };
}

function withoutMark({ mark: _mark, ...item }: TextItem): TextItem {
  return item;
}

/** "this page / 14", its cell under the marking cells. */
function pageTotal(marks: number, pen: Pen, y: number): Item[] {
  const { measures } = pen;
  const text = measures.size.text;
  const width = cellWidth(measures);
  const left = measures.frame - width;
  const height = text * 1.75;
  return [
    box(left, y - text * 0.33 - height / 2, width, height, 0.6, INK.rule),
    label(pen, `/ ${marks}`, { x: left + width - text * 0.4, y, align: 'end', size: text * 0.95, ink: INK.text }),
    label(smallPen(pen), 'this page', { x: left - text * 0.5, y, align: 'end' }),
  ];
}
