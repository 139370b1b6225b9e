import type { Block } from '../../../document/block.ts';
import { factLines } from '../fact-lines.ts';
import { fieldIn } from '../fields.ts';
import { box, INK, type Item, rule } from '../item.ts';
import { inner, label, type Room, setText, smallPen } from '../room.ts';
import { setLines } from '../set-lines.ts';
import { FEW_LINES } from '../settings.ts';
import { KEEP, keepFirmly, type Slab, slab, stack, withAbove } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';

/** Head of a sheet: title large at the left, a line of facts below it, a strip of ruled cells at the right, and one plain sentence. */
export function layHead(head: Extract<Block, { kind: 'head' }>, room: Room): Slab[] {
  const { measures } = room.pen;
  // in the largest print what is white here is a line of the sentence below that goes to the next page
  const gap = measures.step * (measures.size.text > FEW_LINES ? 0.5 : 0.9);
  const beside = head.cells.length > 0 && measures.frame > measures.size.text * 32;
  const text = inner(room, { width: beside ? measures.frame * (1 - STRIP) - measures.size.text * 2 : measures.frame });
  const title = setText(
    [{ kind: 'text', text: head.title }],
    inner(text, { pen: { face: 'strong', size: measures.size.title } }),
    'H1',
    { leading: 1.16 },
  );
  const small = inner(text, { pen: smallPen(room.pen) });
  const facts = setLines(
    factLines(head.facts, small.pen, small.width),
    small.pen,
    { x: small.x, width: small.width, ...(measures.size.text > FEW_LINES ? { leading: 1.25 } : {}) },
    addTag(small.tag, 'P'),
  );
  const left = stack([...title, ...withAbove(facts, measures.size.text * 0.35)]);
  const strip = head.cells.length > 0 ? cellStrip(head.cells, room, beside) : undefined;
  const joined = strip ? withStrip(left, strip, beside, measures.size.text) : left;
  const line = rule(room.x, joined.height + gap, measures.frame, 0, 0.6, INK.rule);
  const top = slab(joined.height + gap, [...joined.items, line], {
    // the sentence below moves to the next page whole rather than in halves
    after: measures.size.text > FEW_LINES ? AFTER_HEAD : KEEP,
  });
  const note = head.note ? withAbove(setText(head.note, room, 'P'), gap) : [];
  return [top, ...keepFirmly(note, AFTER_HEAD)];
}

/** Cost of turning the page below the head, which large print may fill. */
const AFTER_HEAD = 30;

/** Width of the strip of cells, as a share of the frame. */
const STRIP = 0.42;

interface Strip {
  readonly height: number;
  readonly items: readonly Item[];
}

function withStrip(left: Slab, strip: Strip, beside: boolean, size: number): Slab {
  const dy = beside ? 0 : left.height + size * 0.6;
  const items = strip.items.map((item) => ({ ...item, y: item.y + dy }));
  return slab(beside ? Math.max(left.height, strip.height) : dy + strip.height, [...left.items, ...items]);
}

/** The first cell takes a whole row of the strip, the others share the next; each has its small label in the corner. */
function cellStrip(cells: readonly string[], room: Room, beside: boolean): Strip {
  const { measures } = room.pen;
  const pen = smallPen(room.pen);
  const size = Math.max(measures.floor, measures.size.text * 0.7);
  const width = beside ? measures.frame * STRIP : measures.frame;
  const left = room.x + measures.frame - width;
  const height = Math.max(measures.size.text * 2.15, 23);
  const items = cells.flatMap((text, i) => {
    const share = i === 0 ? width : width / (cells.length - 1);
    const x = i === 0 ? left : left + (i - 1) * share;
    const y = i === 0 ? 0 : height;
    const name = label(pen, text, { x: x + size * 0.5, y: y + size * 1.1, size, mark: addMark(addTag(room.tag, 'P')) });
    // a cell with a slash is the marker's
    const small = inner(room, { pen: { size: Math.min(room.pen.size, height * 0.45) } });
    const field = text.includes('/') ? [] : fieldIn(small, text, [x + 1, y + size * 1.3, share - 2, height - size * 1.3 - 1]);
    return [box(x, y, share, height, 0.6, INK.rule), name, ...field];
  });
  return { height: cells.length > 1 ? 2 * height : height, items };
}
