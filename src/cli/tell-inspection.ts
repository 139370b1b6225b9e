import type { Inspection } from '../readers/inspect.ts';

/** An inspection in words, faults last. */
export function tellInspection({ title, language, pages, fonts, smallest, tags, bookmarks, faults }: Inspection): string {
  const [first] = pages;
  const size = first ? `${Math.round(first.width)} × ${Math.round(first.height)} pt` : 'none';
  const loose = fonts.filter(({ embedded }) => !embedded).map(({ name }) => name);
  return [
    `title:      ${title ?? 'none'} (${language ?? 'no language'})`,
    `pages:      ${pages.length}, ${size}`,
    `fonts:      ${fonts.length}, ${loose.length === 0 ? 'all embedded' : `not embedded: ${loose.join(', ')}`}`,
    `smallest:   ${smallest ? `${smallest.size.toFixed(1)} pt, page ${smallest.page}: ${smallest.text}` : 'no text'}`,
    `tags:       ${Object.entries(tags)
      .map(([tag, count]) => `${tag} ${count}`)
      .join(', ')}`,
    `white:      ${emptyFeet(pages)}`,
    `bookmarks:  ${bookmarks.length}`,
    faults.length === 0 ? 'nothing wrong' : `wrong:      ${faults.length}`,
    ...faults.map(({ code, page, message }) => `  ${page === undefined ? 'file' : `page ${page}`}: ${code}: ${message}`),
  ].join('\n');
}

/** Pages, but the last, of which a quarter or more is white at the foot. */
function emptyFeet(pages: Inspection['pages']): string {
  const empty = pages.slice(0, -1).filter(({ white }) => white >= 0.25);
  return empty.length === 0
    ? 'no page but the last ends early'
    : empty.map(({ number, white }) => `page ${number} ${Math.round(white * 100)} %`).join(', ');
}
