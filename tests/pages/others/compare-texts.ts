/** Where two readers of a file disagree, in words; empty when they do not. */
export function differencesBetween(ours: Texts, theirs: Texts): string[] {
  const pages = Math.max(ours.pages.length, theirs.pages.length);
  return [
    ...(ours.pages.length === theirs.pages.length
      ? []
      : [`we read ${ours.pages.length} pages, the other reads ${theirs.pages.length}`]),
    ...Array.from({ length: pages }, (_, at) =>
      difference(`page ${at + 1}`, ours.pages[at] ?? '', theirs.pages[at] ?? ''),
    ).flat(),
    ...difference('headings', headingsIn(ours.structure), headingsIn(theirs.structure)),
    ...difference('structure', ours.structure, theirs.structure),
  ];
}

/** What a reader finds in a file. */
export interface Texts {
  /** text of each page, without white space */
  readonly pages: readonly string[];
  /** types and glyphs of the structure, such as `<H1>Titrations<P>…` */
  readonly structure: string;
}

/** The headings of a structure, each with the text that it holds itself. */
export function headingsIn(structure: string): string {
  return (structure.match(/<H\d>(?:[^<]|<(?:Span|Formula)>|<(?![A-Z]))*/g) ?? []).join('');
}

function difference(where: string, ours: string, theirs: string): string[] {
  if (ours === theirs) return [];
  let at = 0;
  while (ours[at] === theirs[at]) at += 1;
  const around = (text: string) => `\`${text.slice(Math.max(0, at - 12), at)}»${text.slice(at, at + 24)}\``;
  return [`${where}: we read ${around(ours)}, the other reads ${around(theirs)}`];
}
