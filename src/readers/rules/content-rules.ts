import type { Marking } from '../read-content.ts';
import type { PageReading, Reading } from '../read-pdf.ts';
import { type Element, isElement } from '../read-structure.ts';
import { elementsOf } from './elements.ts';
import { type Rule, rule } from './rule.ts';

/** `page mcid` of every sequence that the structure tree holds. */
export function taggedContent(reading: Reading): ReadonlySet<string> {
  const held = elementsOf(reading).flatMap((element) =>
    element.kids.flatMap((kid) => (isElement(kid) ? [] : [`${kid.page} ${kid.mcid}`])),
  );
  return new Set(held);
}

interface Piece {
  readonly page: PageReading;
  readonly what: string;
  readonly markings: readonly Marking[];
}

function piecesOf(reading: Reading): Piece[] {
  return reading.pages.flatMap((page) => [
    ...page.runs.map((run) => ({ page, what: `\`${run.text}\``, markings: run.markings })),
    ...page.paths.map((path) => ({ page, what: 'a path', markings: path.markings })),
  ]);
}

function isTagged({ page, markings }: Piece, tagged: ReadonlySet<string>): boolean {
  return markings.some(({ mcid }) => mcid !== undefined && tagged.has(`${page.number} ${mcid}`));
}

/** Where in its open sequences a piece is an artifact, and where tagged; -1 for neither. */
function places(piece: Piece): { artifact: number; content: number } {
  return {
    artifact: piece.markings.findIndex(({ tag }) => tag === 'Artifact'),
    content: piece.markings.findIndex(({ mcid, tag }) => mcid !== undefined && tag !== 'Artifact'),
  };
}

const STANDARD = new Set(
  (
    'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody ' +
    'TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby RB RT RP Warichu WT WP Figure Formula Form'
  ).split(' '),
);

function roles({ file }: Reading): [string, string][] {
  const map = file.dict(file.dict(file.catalog.get('StructTreeRoot'))?.get('RoleMap'));
  return [...(map ?? [])].map(([from, to]) => [from, file.name(to) ?? '']);
}

function goesRound(start: string, map: ReadonlyMap<string, string>): boolean {
  let at = start;
  for (let i = 0; i <= map.size; i++) {
    const next = map.get(at);
    if (next === undefined) return false;
    at = next;
  }
  return true;
}

function lacksParent(element: Element): boolean {
  return !element.dict.has('P');
}

/** What is content and what decoration, and how types are mapped: clause 7.1. */
export const CONTENT_RULES: readonly Rule[] = [
  rule('7.1-1', 'no artifact stands inside tagged content', (reading) =>
    piecesOf(reading).flatMap((piece) => {
      const { artifact, content } = places(piece);
      return content >= 0 && artifact > content ? [`page ${piece.page.number}: ${piece.what} is an artifact inside content`] : [];
    }),
  ),
  rule('7.1-2', 'no tagged content stands inside an artifact', (reading) =>
    piecesOf(reading).flatMap((piece) => {
      const { artifact, content } = places(piece);
      return artifact >= 0 && content > artifact
        ? [`page ${piece.page.number}: ${piece.what} is content inside an artifact`]
        : [];
    }),
  ),
  rule('7.1-3', 'all is tagged or an artifact', (reading) => {
    const tagged = taggedContent(reading);
    return piecesOf(reading).flatMap((piece) => {
      const artifact = piece.markings.some(({ tag }) => tag === 'Artifact');
      return artifact || isTagged(piece, tagged)
        ? []
        : [`page ${piece.page.number}: ${piece.what} is neither tagged nor an artifact`];
    });
  }),
  rule('7.1-5', 'types are standard or mapped to standard ones', (reading) =>
    elementsOf(reading).flatMap(({ type, standard }) => (STANDARD.has(standard) ? [] : [`${type} is no standard type`])),
  ),
  rule('7.1-6', 'no mapping of types goes round', (reading) => {
    const map = new Map(roles(reading));
    return [...map.keys()].filter((type) => goesRound(type, map)).map((type) => `${type} is mapped to itself`);
  }),
  rule('7.1-7', 'standard types are not mapped', (reading) =>
    roles(reading).flatMap(([from]) => (STANDARD.has(from) ? [`${from} is mapped`] : [])),
  ),
  rule('7.1-12', 'every element names its parent', (reading) =>
    elementsOf(reading)
      .filter(lacksParent)
      .map(({ type }) => `${type} has no parent`),
  ),
];
