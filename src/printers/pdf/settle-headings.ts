import { isTag, type Tag, type TagType } from './tag.ts';

const LEVELS: readonly TagType[] = ['H1', 'H2', 'H3', 'H4'];

/** Makes the first heading an H1 and lets no heading skip a level (ISO 14289-1, 7.4.2), whatever a document asked for. */
export function settleHeadings(root: Tag): void {
  let level = 0;
  const visit = (tag: Tag): void => {
    const asked = LEVELS.indexOf(tag.type) + 1;
    if (asked > 0) {
      level = Math.min(asked, level + 1);
      tag.type = LEVELS[level - 1] ?? tag.type;
    }
    for (const kid of tag.kids) if (isTag(kid)) visit(kid);
  };
  visit(root);
}
