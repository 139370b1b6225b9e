import type { Reading } from './read-pdf.ts';
import { type ContentRef, type Element, isElement } from './read-structure.ts';

/** Elements that are read within the line they stand in. */
const INLINE: ReadonlySet<string> = new Set(['Formula', 'Span', 'Lbl']);

/**
 * The file as it is read out: one line for each paragraph, heading, label with its item, or cell, in the order of the structure.
 * Alternative text stands for what carries it, actual text for its glyphs, the tooltip in brackets for a field; artifacts are not read.
 */
export function readingOrder(reading: Reading): string[] {
  const texts = contentTexts(reading);
  const lines: string[] = [];
  let line = '';
  const close = (): void => {
    if (line.trim()) lines.push(tidy(line));
    line = '';
  };
  const visit = (element: Element): void => {
    const block = !INLINE.has(element.standard);
    if (element.standard === 'Form') {
      line += ` [${element.annotations.map((each) => reading.file.text(each.get('TU')) ?? '').join('; ')}] `;
      return;
    }
    if (block && !(element.parent && joinsLabel(element))) close();
    if (element.alt !== undefined) line += ` ${element.alt} `;
    else {
      for (const kid of element.kids) {
        if (isElement(kid)) visit(kid);
        else line += texts.get(contentKey(kid)) ?? '';
      }
    }
    if (element.standard === 'Lbl') line += ' ';
    else if (block) close();
  };
  for (const kid of reading.structure?.kids ?? []) if (isElement(kid)) visit(kid);
  close();
  return lines;
}

/** One space between words, none before a stop. */
function tidy(line: string): string {
  return line
    .replace(/\s+/g, ' ')
    .replace(/ (?=[;,.?)])/g, '')
    .replace(/(?<=\() /g, '')
    .trim();
}

/** The first block of an item's body goes on from the item's label. */
function joinsLabel({ standard, parent }: Element): boolean {
  return standard === 'LBody' || (parent?.standard === 'LBody' && standard === 'P');
}

export function contentKey({ page, mcid }: ContentRef): string {
  return `${page} ${mcid}`;
}

/** Text of every marked-content sequence. */
export function contentTexts(reading: Reading): Map<string, string> {
  const texts = new Map<string, string>();
  const told = new Set<string>();
  for (const page of reading.pages) {
    const pieces = [...page.runs, ...page.paths.map(({ markings }) => ({ markings, text: '' }))];
    for (const run of pieces) {
      const marking = run.markings.find(({ mcid }) => mcid !== undefined);
      if (marking?.mcid === undefined) continue;
      const id = contentKey({ page: page.number, mcid: marking.mcid });
      if (told.has(id)) continue;
      if (marking.actual !== undefined) told.add(id);
      texts.set(id, marking.actual ?? (texts.get(id) ?? '') + run.text);
    }
  }
  return texts;
}
