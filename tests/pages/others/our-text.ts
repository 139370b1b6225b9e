import type { Marking } from '../../../src/readers/read-content.ts';
import type { PageReading, Reading } from '../../../src/readers/read-pdf.ts';
import { type Element, isElement } from '../../../src/readers/read-structure.ts';

/** Text of each page as our reader extracts it: in the order of the content, actual text in place of the glyphs it stands for. */
export function pageTexts({ pages }: Reading): string[] {
  return pages.map(pageText);
}

function pageText({ runs }: PageReading): string {
  const told = new Set<Marking>();
  let text = '';
  for (const run of runs) {
    const marking = run.markings.find(({ actual }) => actual !== undefined);
    if (marking && told.has(marking)) continue;
    if (marking) told.add(marking);
    text += marking?.actual ?? run.text;
  }
  return closed(text);
}

/**
 * The structure with the glyphs of each element, as `<H1>Titrations<P>…`: what a reader sees who takes neither actual nor alternative text.
 */
export function structureText(reading: Reading): string {
  const glyphs = new Map<string, string>();
  for (const { number, runs } of reading.pages) {
    for (const { markings, text } of runs) {
      const mcid = markings.find((each) => each.mcid !== undefined)?.mcid;
      if (mcid !== undefined) glyphs.set(`${number} ${mcid}`, (glyphs.get(`${number} ${mcid}`) ?? '') + text);
    }
  }
  const told = (element: Element): string =>
    `<${element.type}>${element.kids.map((kid) => (isElement(kid) ? told(kid) : (glyphs.get(`${kid.page} ${kid.mcid}`) ?? ''))).join('')}`;
  return closed((reading.structure?.kids ?? []).map((kid) => (isElement(kid) ? told(kid) : '')).join(''));
}

/** Without white space: where a line ends, and whether a gap is a space, is each reader's guess. */
export function closed(text: string): string {
  return text.replaceAll(/\s+/g, '');
}
