import type { Block, Paragraph } from '../../../document/block.ts';
import { speakInlines } from '../../../document/spoken.ts';
import { INK, rule } from '../item.ts';
import { inner, label, type Room, setText, smallPen } from '../room.ts';
import { strutAscent } from '../set-lines.ts';
import { KEEP, keepTogether, type Slab, withAbove, withItems } from '../slab.ts';
import { addMark, addTag } from '../tag.ts';

type Of<K extends Block['kind']> = Extract<Block, { kind: K }>;

/** Running text; light paragraphs step back by their grey, not by thin strokes. A caution stands beside an upright rule, its words first. */
export function layParagraph(paragraph: Paragraph, room: Room): Slab[] {
  const slabs = laidParagraph(paragraph, room);
  return paragraph.keeps ? keepTogether(slabs, KEEP) : slabs;
}

function laidParagraph({ content, weight }: Paragraph, room: Room): Slab[] {
  const { step, size } = room.pen.measures;
  if (weight === 'caution') {
    const dx = size.text * 0.9;
    const text = keepTogether(setText(content, inner(room, { dx }), 'P'), 0);
    const bar = (height: number) => rule(room.x + size.text * 0.25, 0, 0, height, 1.4, 0.35);
    return withAbove(
      text.map((part) => ({ ...part, items: [bar(part.height), ...part.items] })),
      step,
    );
  }
  const pen = weight === 'light' ? { ink: INK.light } : {};
  return withAbove(setText(content, inner(room, { pen }), 'P'), step);
}

/** A heading stays with what follows it. */
export function layHeading({ level, content }: Of<'heading'>, room: Room): Slab[] {
  const { size, step } = room.pen.measures;
  const pen = { face: 'strong' as const, size: [size.title, size.heading, size.text][level - 1] ?? size.text };
  const slabs = setText(content, inner(room, { pen }), `H${level}`, { leading: 1.25 });
  const title = speakInlines(content);
  const noted = slabs.map((part, i) => (i === 0 ? { ...part, note: { bookmark: title } } : part));
  return withAbove(keepTogether(noted, KEEP), step * (level === 3 ? 2 : 3));
}

/** Items with a hanging bullet or number. */
export function layList({ ordered, items }: Of<'list'>, room: Room): Slab[] {
  const { pen } = room;
  const list = addTag(room.tag, 'L', { numbering: ordered ? 'Decimal' : 'Disc' });
  const dx = pen.size * 1.4;
  return items.flatMap((blocks, i) => {
    const item = addTag(list, 'LI');
    const mark = addMark(addTag(item, 'Lbl'));
    const sign = label(pen, ordered ? `${i + 1}.` : '•', { x: room.x + pen.size * 0.2, y: strutAscent(pen), mark });
    const slabs = room.lay(blocks, inner(room, { dx, tag: addTag(item, 'LBody') }));
    return withAbove(withItems(slabs, [sign]), pen.measures.step * (i === 0 ? 1 : 0.4));
  });
}

/** An equation or expression on a line of its own, a little indented; continuation lines more so. */
export function layDisplay({ content }: Of<'display'>, room: Room): Slab[] {
  const { size, step } = room.pen.measures;
  const slabs = setText(content, inner(room, { dx: size.text * 1.5 }), 'P', { indent: size.text * 2 });
  return withAbove(keepTogether(slabs, 30), step);
}

/** Very small print at the end of a scheme. */
export function laySmallPrint({ paragraphs }: Of<'small-print'>, room: Room): Slab[] {
  const pen = smallPen(room.pen);
  const small = inner(room, { pen });
  const slabs = paragraphs.flatMap((paragraph) => withAbove(setText(paragraph, small, 'P', { leading: 1.3 }), pen.size * 0.5));
  const line = rule(room.x, 0, room.width, 0, 0.5, INK.faint);
  return withAbove(
    withItems(
      slabs.map((part, i) =>
        i === 0 ? { ...part, items: part.items.map((item) => ({ ...item, y: item.y + 4 })), height: part.height + 4 } : part,
      ),
      [line],
    ),
    pen.measures.step * 2,
  );
}

/** What follows starts a page. */
export function layPageBreak(): Slab[] {
  return [{ above: 0, height: 0, items: [], after: 0, fresh: true }];
}
