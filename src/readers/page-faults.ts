import { inkExtent, touch } from './ink-extent.ts';
import type { PageFault } from './inspect.ts';
import type { PaintedPath, TextRun } from './read-content.ts';
import type { PageReading } from './read-pdf.ts';
import { isArray, Name } from './value.ts';

/** All that is wrong with one page, of so many, as far as its ink goes. */
export function pageFaults(page: PageReading, count: number, margin: number): PageFault[] {
  const faults = [
    ...strayText(page, margin),
    ...strayPaths(page, margin),
    ...strayFields(page, margin),
    ...overlaps(page),
    ...crossed(page),
    ...missing(page),
    ...colours(page),
    ...orphans(page, count),
  ];
  return faults.map((fault) => ({ ...fault, page: page.number }));
}

function visible(page: PageReading): TextRun[] {
  return page.runs.filter(({ text }) => text.trim());
}

/** Most readers silently leave out what lies off the page; here it is found like all else. */
function strayText(page: PageReading, margin: number): PageFault[] {
  return visible(page).flatMap((run): PageFault[] => {
    const code = stray(inkExtent(run), page, margin);
    return code
      ? [{ code, message: `\`${run.text.trim()}\` stands ${code === 'off-page' ? 'off the page' : 'in the margin'}` }]
      : [];
  });
}

function strayPaths(page: PageReading, margin: number): PageFault[] {
  return page.paths.flatMap((path): PageFault[] => {
    if (isBackground(path)) return [];
    const code = stray(path.box, page, margin);
    return code ? [{ code, message: `a line stands ${code === 'off-page' ? 'off the page' : 'in the margin'}` }] : [];
  });
}

/** Annotations are placed from the foot of the page; what is typed into a field must be as safe as what is printed. */
function strayFields(page: PageReading, margin: number): PageFault[] {
  return page.annotations.flatMap((annotation): PageFault[] => {
    const rect = annotation.get('Rect');
    const [left = 0, bottom = 0, right = 0, top = 0] = (isArray(rect) ? rect : []).map(Number);
    const code = stray([left, page.height - top, right, page.height - bottom], page, margin);
    return code ? [{ code, message: `a field stands ${code === 'off-page' ? 'off the page' : 'in the margin'}` }] : [];
  });
}

function stray(
  [left, top, right, bottom]: readonly number[],
  { width, height }: PageReading,
  margin: number,
): 'off-page' | 'outside-margin' | undefined {
  const within = (edge: number): boolean => left! >= edge && top! >= edge && right! <= width - edge && bottom! <= height - edge;
  if (within(margin)) return undefined;
  return within(0) ? 'outside-margin' : 'off-page';
}

/** Runs that print over one another. Runs of one marked sequence are one drawn thing, such as a symbol with stacked scripts. */
function overlaps(page: PageReading): PageFault[] {
  const boxes = visible(page).map((run) => ({ run, box: inkExtent(run) }));
  boxes.sort((one, other) => one.box[1] - other.box[1]);
  return boxes.flatMap(({ run, box }, i) => {
    const faults: PageFault[] = [];
    for (let n = i + 1; n < boxes.length && boxes[n]!.box[1] < box[3]; n++) {
      const other = boxes[n]!;
      if (touch(box, other.box))
        faults.push({ code: 'overlap', message: `\`${run.text.trim()}\` and \`${other.run.text.trim()}\` overlap` });
    }
    return faults;
  });
}

/** Text that the side of a frame or an upright rule goes through. Figures are left out: in them leaders end at words. */
function crossed(page: PageReading): PageFault[] {
  const sides = page.paths
    .filter(({ line, markings }) => line > 0 && !markings.some(({ tag }) => tag === 'Figure'))
    .flatMap(({ box: [left, top, right, bottom] }) => [left, right].map((x) => ({ x, top, bottom })));
  return visible(page).flatMap((run) => {
    const [left, top, right, bottom] = inkExtent(run);
    const through = sides.some(
      (side) => side.x > left + 0.5 && side.x < right - 0.5 && Math.min(bottom, side.bottom) - Math.max(top, side.top) > 1,
    );
    return through ? [{ code: 'crossed' as const, message: `a line goes through \`${run.text.trim()}\`` }] : [];
  });
}

function missing(page: PageReading): PageFault[] {
  return page.runs.flatMap((run): PageFault[] => {
    const hole = run.codes.includes(0) || run.text.includes('\u0000');
    return hole ? [{ code: 'missing-glyph', message: `a glyph of \`${run.text.replaceAll('\u0000', '□')}\` is missing` }] : [];
  });
}

/** Everything must survive a black and white copier; only the background may be tinted. */
function colours(page: PageReading): PageFault[] {
  const texts = page.runs.filter(({ colour }) => colour).map(({ text }) => `\`${text}\``);
  const paths = page.paths.filter((path) => path.colour && path.line > 0).map(() => 'a line');
  const all = [...texts, ...paths];
  return all.length > 0 ? [{ code: 'colour', message: `${all[0]} is drawn in colour` }] : [];
}

/** The tint of the page, which reaches to its edges. */
function isBackground({ markings }: PaintedPath): boolean {
  return markings.some(({ tag, properties }) => {
    const type = properties.get('Type');
    return tag === 'Artifact' && type instanceof Name && type.value === 'Background';
  });
}

/** Height of the strip at the foot that is not content, in points. */
const FOOT = 60;

/** A page, not the only one, that holds two lines of text or fewer, and no room to write in. */
function orphans(page: PageReading, count: number): PageFault[] {
  const content = visible(page).filter(({ markings }) => markings.every(({ tag }) => tag !== 'Artifact'));
  const drawn = page.paths.filter(({ box }) => box[3] < page.height - FOOT).length + page.annotations.length;
  const lines = new Set(content.map(({ y }) => Math.round(y / 4)));
  return count > 1 && lines.size > 0 && lines.size <= 2 && drawn <= 1
    ? [{ code: 'orphan', message: `the page holds ${lines.size} lines of text only` }]
    : [];
}
