import type { PageFault } from './inspect.ts';
import type { PageReading, Reading } from './read-pdf.ts';
import { type Element, isElement } from './read-structure.ts';
import { contentKey, contentTexts } from './reading-order.ts';
import { elementsOf, elementsOfType } from './rules/elements.ts';

/** What went wrong where pages turn: marks counted on the wrong page, a task torn, a header row parted from its rows, lines without a task. */
export function turnFaults(reading: Reading): PageFault[] {
  return [
    ...(reading.pages.some((page) => scoreOn(page, true) > 0) ? reading.pages.flatMap(wrongTotals) : []),
    ...tornTasks(reading),
    ...loneHeaders(reading),
    ...reading.pages.flatMap(bareLines),
  ];
}

const isArtifact = ({ markings }: PageReading['runs'][number]): boolean => markings.some(({ tag }) => tag === 'Artifact');

/** The foot's total is the sum of the marking cells on its page, in a file that has totals: copies with answers have none. */
function wrongTotals(page: PageReading): PageFault[] {
  const [cells, foot] = [scoreOn(page, false), scoreOn(page, true)];
  if (cells === foot) return [];
  const message = `the foot says ${foot} marks, the cells of the page add up to ${cells}`;
  return [{ code: 'page-total', page: page.number, message }];
}

/** Marks in the foot, or in the cells, of a page. */
function scoreOn({ runs }: PageReading, isFoot: boolean): number {
  return runs
    .filter((run) => isArtifact(run) === isFoot)
    .reduce((sum, { text }) => sum + Number(/^\/ (\d+)$/.exec(text.trim())?.[1] ?? 0), 0);
}

/** A task stands on one page, together with the cell for its marks. */
function tornTasks(reading: Reading): PageFault[] {
  const texts = contentTexts(reading);
  const isCell = ({ kids }: Element): boolean =>
    kids.some((kid) => !isElement(kid) && /^\d+ marks?$/.test(texts.get(contentKey(kid))?.trim() ?? ''));
  return elementsOfType(reading, 'LBody').flatMap((body): PageFault[] => {
    const [task, ...rest] = body.kids.filter(isElement);
    const cell = rest.find(isCell);
    if (!task || !cell) return [];
    const pages = [...new Set([...pagesOf(task), ...pagesOf(cell)])];
    if (pages.length === 1) return [];
    return [{ code: 'torn', ...onPage(pages), message: `a task and its marks are spread over ${pages.length} pages` }];
  });
}

/** The header row of a table stands on the page of the first row below it. */
function loneHeaders(reading: Reading): PageFault[] {
  const rows = elementsOf(reading).filter(({ standard }) => standard === 'TR');
  return rows.flatMap((row, at): PageFault[] => {
    if (row.parent?.standard !== 'THead') return [];
    const [head] = pagesOf(row);
    const [first] = pagesOf(rows[at + 1] ?? row);
    if (head === undefined || first === undefined || head === first) return [];
    return [{ code: 'lone-header', page: head, message: 'a header row stands alone at the foot of the page' }];
  });
}

/** A page with lines to write on says what for, if only by the letter of the part that goes on. */
function bareLines({ number, runs, paths, height }: PageReading): PageFault[] {
  const words = runs.filter(({ text, y }) => text.trim() && y < height - FOOT);
  const lines = paths.filter(({ markings }) => markings.some(({ actual }) => /^(?:\d+ )?blank line/.test(actual ?? '')));
  return words.length === 0 && lines.length > 0
    ? [{ code: 'bare-lines', page: number, message: 'the page has lines to write on, and nothing says what for' }]
    : [];
}

/** Height of the strip at the foot that is not content, in points. */
const FOOT = 60;

const onPage = ([first]: readonly number[]) => (first === undefined ? {} : { page: first });

function pagesOf(element: Element): number[] {
  return element.kids.flatMap((kid) => (isElement(kid) ? pagesOf(kid) : [kid.page]));
}
