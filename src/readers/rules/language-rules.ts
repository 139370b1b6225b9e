import type { Reading } from '../read-pdf.ts';
import type { Element } from '../read-structure.ts';
import { elementsOf } from './elements.ts';
import { xmpOf } from './metadata-rules.ts';
import { condition, type Rule, rule } from './rule.ts';

const TAG = /^[a-zA-Z]{1,8}(-[a-zA-Z0-9]{1,8})*$/;

function hasLanguage(element: Element): boolean {
  for (let at: Element | undefined = element; at; at = at.parent) if (at.lang) return true;
  return false;
}

/** Elements that carry a text under a key, in a file without a language of its own, outside any element with one. */
function unspoken(key: 'alt' | 'actual' | 'E') {
  return (reading: Reading): string[] => {
    if (reading.language) return [];
    const texts = elementsOf(reading).filter((element) => (key === 'E' ? element.dict.has('E') : element[key] !== undefined));
    return texts.filter((element) => !hasLanguage(element)).map((element) => `${element.type} has a text in no language`);
  };
}

/** Marked content `Span` with a text under a key, in a file without a language. */
function spanUnspoken(key: string) {
  return (reading: Reading): string[] => {
    if (reading.language) return [];
    return reading.pages.flatMap((page) => {
      const spans = page.runs.flatMap((run) =>
        run.markings.filter(({ tag, properties }) => tag === 'Span' && properties.has(key) && !properties.has('Lang')),
      );
      return spans.length > 0 ? [`page ${page.number}: a Span has ${key} in no language`] : [];
    });
  };
}

/** Natural language: clause 7.2. */
export const LANGUAGE_RULES: readonly Rule[] = [
  condition(
    '7.2-2',
    'the language of bookmarks is known',
    (reading) => reading.bookmarks.length === 0 || Boolean(reading.language),
  ),
  rule('7.2-21', 'the language of actual text is known', unspoken('actual')),
  rule('7.2-22', 'the language of alternative text is known', unspoken('alt')),
  rule('7.2-23', 'the language of expansions is known', unspoken('E')),
  rule('7.2-24', 'the language of annotations is known', (reading) => {
    if (reading.language) return [];
    return reading.pages.flatMap((page) =>
      page.annotations.filter((each) => each.has('Contents')).map(() => `page ${page.number}: an annotation in no language`),
    );
  }),
  rule('7.2-25', 'the language of form fields is known', (reading) => {
    if (reading.language) return [];
    return reading.pages.flatMap((page) =>
      page.annotations.filter((each) => each.has('TU')).map(() => `page ${page.number}: a field in no language`),
    );
  }),
  rule('7.2-29', 'languages are language tags', (reading) => {
    const { file } = reading;
    const languages = [file.text(file.catalog.get('Lang')), ...elementsOf(reading).map((element) => element.lang)];
    return languages.flatMap((language) =>
      language === undefined || TAG.test(language) ? [] : [`\`${language}\` is no language tag`],
    );
  }),
  rule('7.2-30', 'the language of actual text in content is known', spanUnspoken('ActualText')),
  rule('7.2-31', 'the language of alternative text in content is known', spanUnspoken('Alt')),
  rule('7.2-32', 'the language of expansions in content is known', spanUnspoken('E')),
  condition(
    '7.2-33',
    'the language of the metadata is known',
    (reading) => Boolean(reading.language) || !xmpOf(reading).includes('x-default'),
  ),
  condition(
    '7.2-34',
    'the language of the text is known',
    (reading) => Boolean(reading.language) || reading.pages.every((page) => page.runs.length === 0),
  ),
];
