import type { Document } from '../../document/document.ts';
import { layBlocks } from './blocks/handlers.ts';
import { Fields } from './fields.ts';
import type { Fonts } from './fonts.ts';
import { drawFoot, withFootRoom } from './foot.ts';
import { type FieldItem, INK, type Ink, type Item, shift } from './item.ts';
import type { Laid, Page } from './page.ts';
import { paginate, type Turning } from './paginate.ts';
import type { Pen } from './piece.ts';
import type { Room } from './room.ts';
import { type Measures, measure, type Settings, TINTS } from './settings.ts';
import { settleHeadings } from './settle-headings.ts';
import type { Slab } from './slab.ts';

/**
 * Lays a document out on pages: positioned text, rules and boxes, and the structure they hang on. Pure; nothing is drawn.
 * @throws Fault `missing-glyph` when no font holds a character
 */
export function layout(document: Document, settings: Settings, fonts: Fonts): Laid {
  const room = frameRoom(document, settings, fonts);
  const { pen, tag: root } = room;
  const slabs = layBlocks(document.blocks, room);
  settleHeadings(root);
  const sections = sectionsOf(slabs).map((section) => paginate(section, turningIn(room)));
  const pages = sections.flat();
  const last = new Set(sections.map((section) => section.at(-1)));
  const tint = settings.tint && settings.tint !== 'none' ? { tint: TINTS[settings.tint] } : {};
  return {
    title: document.title,
    subject: document.subject,
    language: document.language,
    root,
    pages: pages.map((slabs, i) => {
      return { ...makePage(slabs, { number: i + 1, count: pages.length, isLast: last.has(slabs), document, pen }), ...tint };
    }),
  };
}

/** What stands before a forced turn of the page is laid out as if nothing followed: a copy with more at its end turns where the sheet does. */
function sectionsOf(slabs: readonly Slab[]): Slab[][] {
  const sections: Slab[][] = [[]];
  for (const part of slabs) {
    if (part.fresh && sections.at(-1)!.length > 0) sections.push([]);
    sections.at(-1)!.push(part);
  }
  return sections;
}

/** The room between the margins of a document's pages, with a tag that everything in it hangs on. */
export function frameRoom(document: Document, settings: Settings, fonts: Fonts): Room {
  const measures = withFootRoom(measure(settings), document, fonts);
  const pen: Pen = { fonts, measures, face: 'regular', size: measures.size.text, ink: INK.text };
  const sheet = document.kind === 'sheet';
  const width = measures.frame - (sheet ? measures.cells : 0);
  const fields = sheet && settings.fillable ? { fields: new Fields(document.answered) } : {};
  return { pen, x: 0, width, tag: { type: 'Document', kids: [] }, sheet, lay: layBlocks, ...fields };
}

/** How the pages of a document are turned. */
export function turningIn({ pen: { measures }, sheet }: Room): Turning {
  return {
    height: measures.height - measures.margin.top - measures.margin.bottom,
    early: sheet ? EARLY : 0,
    isDuplex: measures.sides === 'both',
  };
}

/** On a sheet a page should not end early: room to write in fills it. A scheme may, so that a part stays in one place. */
const EARLY = 70;

interface PageFacts {
  readonly number: number;
  readonly count: number;
  /** nothing follows, or what follows is set apart */
  readonly isLast: boolean;
  readonly document: Document;
  readonly pen: Pen;
}

function makePage(slabs: readonly Slab[], facts: PageFacts): Page {
  const { measures } = facts.pen;
  const { margin } = measures;
  const left = punchedLeft(facts.number, measures) ? margin.punched : margin.open;
  const items: Item[] = [];
  const bookmarks: { title: string; y: number }[] = [];
  const airy = facts.isLast ? 1 : airiness(slabs, measures);
  let y = margin.top;
  for (const [i, part] of slabs.entries()) {
    if (i > 0) y += part.above * airy;
    for (const item of part.items) items.push(shift(item, left, y));
    if (part.note?.bookmark) bookmarks.push({ title: part.note.bookmark, y });
    y += part.height;
  }
  const foot = drawFoot(slabs, facts).map((item) => shift(item, left, measures.height - margin.bottom));
  const frame = { left, top: margin.top, right: left + measures.frame, bottom: measures.height - margin.bottom };
  placeFigures(items);
  const { number } = facts;
  const size = { width: measures.width, height: measures.height };
  return { number, ...size, frame, items: [...items, ...foot].filter(isInk), fields: items.filter(isField), bookmarks };
}

const isField = (item: Item): item is FieldItem => item.kind === 'field';
const isInk = (item: Item): item is Ink => item.kind !== 'field';

/** How far the white between slabs is opened so that the page ends near its foot; a little at most, else pages would differ. */
function airiness(slabs: readonly Slab[], measures: Measures): number {
  const whites = slabs.slice(1).reduce((sum, part) => sum + part.above, 0);
  const filled = slabs.reduce((sum, part) => sum + part.height, whites);
  const left = measures.height - measures.margin.top - measures.margin.bottom - filled;
  return whites > 0 ? 1 + Math.min(Math.max(0, left) / whites, 0.4) : 1;
}

/** On paper printed on both sides the punched edge is at the right of even pages. */
function punchedLeft(number: number, measures: Measures): boolean {
  return measures.sides === 'one' || number % 2 === 1;
}

/** Tells each figure's tag where it stands, from the paths drawn for it. */
function placeFigures(items: readonly Item[]): void {
  for (const item of items) {
    const tag = item.mark?.tag;
    if (tag?.type !== 'Figure' || item.kind !== 'path') continue;
    const box = tag.box ?? [item.x, item.y, item.x, item.y];
    let [left, top, right, bottom] = box;
    for (const part of item.path) {
      if (part.to === 'close') continue;
      left = Math.min(left, item.x + part.x);
      right = Math.max(right, item.x + part.x);
      top = Math.min(top, item.y + part.y);
      bottom = Math.max(bottom, item.y + part.y);
    }
    tag.box = [left, top, right, bottom];
  }
}
