/** Structure types used, all standard in ISO 32000-1:2008, 14.8.4. */
export type TagType =
  | 'Document'
  | 'Sect'
  | 'Div'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'H4'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Caption'
  | 'Table'
  | 'THead'
  | 'TBody'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Span'
  | 'Formula'
  | 'Figure'
  | 'Form';

/** A node of the logical structure. Content hangs on it by marks, in reading order among its child tags. */
export interface Tag {
  type: TagType;
  readonly alt?: string;
  /** figures: left, top, right, bottom on the page, known once the page is made */
  box?: readonly [number, number, number, number];
  /** header cells */
  readonly scope?: 'Row' | 'Column';
  /** tables: what they show, for those who cannot look over them */
  readonly summary?: string;
  /** lists: how their items are labelled (ISO 32000-1, table 347) */
  readonly numbering?: 'None' | 'Disc' | 'Decimal' | 'UpperAlpha' | 'LowerAlpha';
  readonly kids: (Tag | Mark)[];
}

/** A stretch of page content that belongs to a tag. `actual` is the text it stands for when its glyphs alone do not say it. */
export interface Mark {
  readonly tag: Tag;
  readonly actual?: string;
}

/** Makes a tag below a parent. */
export function addTag(parent: Tag, type: TagType, more: Pick<Tag, 'alt' | 'scope' | 'summary' | 'numbering'> = {}): Tag {
  const tag: Tag = { type, ...more, kids: [] };
  parent.kids.push(tag);
  return tag;
}

/** Makes the next stretch of content of a tag. */
export function addMark(tag: Tag, actual?: string): Mark {
  const mark: Mark = actual === undefined ? { tag } : { tag, actual };
  tag.kids.push(mark);
  return mark;
}

export function isTag(kid: Tag | Mark): kid is Tag {
  return 'kids' in kid;
}
