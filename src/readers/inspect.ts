import { pageFaults } from './page-faults.ts';
import type { Marking } from './read-content.ts';
import { type Reading, readPdf } from './read-pdf.ts';
import { elementsOf } from './rules/elements.ts';
import { brokenRules } from './rules/index.ts';
import { turnFaults } from './turn-faults.ts';

/** Something wrong on a page, or (without a page) in the file. */
export interface PageFault {
  readonly code:
    | 'off-page'
    | 'outside-margin'
    | 'overlap'
    | 'crossed'
    | 'missing-glyph'
    | 'colour'
    | 'orphan'
    | 'page-total'
    | 'torn'
    | 'lone-header'
    | 'bare-lines'
    | 'rule';
  readonly page?: number;
  readonly message: string;
}

export interface PageFacts {
  readonly number: number;
  readonly width: number;
  readonly height: number;
  readonly runs: number;
  readonly white: number;
}

/** What an inspection tells of a file. */
export interface Inspection {
  readonly title: string | undefined;
  readonly language: string | undefined;
  /** `white`: share of the page between the last content and the foot */
  readonly pages: readonly PageFacts[];
  readonly fonts: readonly { readonly name: string; readonly embedded: boolean; readonly glyphs: number }[];
  /** the smallest text: its size in points, what it says and where */
  readonly smallest: { readonly size: number; readonly text: string; readonly page: number } | undefined;
  /** how often each structure type occurs */
  readonly tags: Readonly<Record<string, number>>;
  readonly bookmarks: readonly string[];
  /** tooltips of the fields to fill in, in the order of the pages */
  readonly fields: readonly string[];
  readonly faults: readonly PageFault[];
}

/**
 * Looks over a PDF that the printer wrote: pages, fonts, smallest text, tags, and everything that is wrong with it.
 * @param margin in points: nothing may stand nearer to the edge of a page; 10 mm when absent
 * @throws Fault `bad-pdf`
 */
export function inspect(bytes: Uint8Array, margin = (10 * 72) / 25.4): Inspection {
  const reading = readPdf(bytes);
  const rules = brokenRules(reading).map(({ rule, places }): PageFault => {
    return { code: 'rule', message: `PDF/UA-1 ${rule.id} (${rule.says}): ${places.slice(0, 3).join('; ')}` };
  });
  return {
    title: reading.title,
    language: reading.language,
    pages: reading.pages.map(pageFacts),
    fonts: [...reading.fonts, ...reading.typedFonts].map(({ name, embedded, unicode }) => ({
      name,
      embedded,
      glyphs: unicode.size,
    })),
    smallest: smallestText(reading),
    tags: countTags(reading),
    bookmarks: reading.bookmarks,
    fields: reading.pages.flatMap(({ annotations }) => annotations.map((each) => reading.file.text(each.get('TU')) ?? '')),
    faults: [
      ...reading.pages.flatMap((page) => pageFaults(page, reading.pages.length, margin)),
      ...turnFaults(reading),
      ...rules,
    ],
  };
}

function pageFacts({ number, width, height, runs, paths }: Reading['pages'][number]): PageFacts {
  const isContent = ({ markings }: { readonly markings: readonly Marking[] }) => markings.every(({ tag }) => tag !== 'Artifact');
  const feet = [...runs.filter(isContent).map(({ y }) => y), ...paths.map(({ box }) => box[3])].filter((y) => y < height - FOOT);
  const white = Math.max(0, 1 - (Math.max(0, ...feet) + FOOT) / height);
  return { number, width, height, runs: runs.length, white: Math.round(white * 100) / 100 };
}

/** Height of the margin with the foot, in points. */
const FOOT = 68;

function smallestText({ pages }: Reading): Inspection['smallest'] {
  const texts = pages.flatMap((page) =>
    page.runs.filter(({ text }) => text.trim()).map(({ size, text }) => ({ size, text, page: page.number })),
  );
  return texts.reduce<Inspection['smallest']>((least, each) => (least && least.size <= each.size ? least : each), undefined);
}

function countTags(reading: Reading): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { standard } of elementsOf(reading)) counts[standard] = (counts[standard] ?? 0) + 1;
  return counts;
}
