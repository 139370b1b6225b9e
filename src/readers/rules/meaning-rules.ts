import type { Reading } from '../read-pdf.ts';
import type { Element } from '../read-structure.ts';
import { elementsOf, elementsOfType, kidTypes } from './elements.ts';
import { type Rule, rule } from './rule.ts';

/** Elements of a type without a text for those who cannot see them. */
function untold(type: string) {
  return (reading: Reading): string[] =>
    elementsOfType(reading, type).flatMap(({ alt, actual }) =>
      alt || actual !== undefined ? [] : [`${type} has no alternative text`],
    );
}

/** Headings H1 to H6 in order: the first is H1, and none goes down by more than one. */
function headingSkips(reading: Reading): string[] {
  let level = 0;
  return elementsOf(reading).flatMap(({ standard }) => {
    const found = /^H([1-6])$/.exec(standard);
    if (!found) return [];
    const next = Number(found[1]);
    const skip = next > level + 1;
    const from = level === 0 ? 'nothing' : `H${level}`;
    level = next;
    return skip ? [`${standard} follows ${from}`] : [];
  });
}

function usesBoth(reading: Reading): string[] {
  const types = new Set(elementsOf(reading).map(({ standard }) => standard));
  const numbered = [...types].some((type) => /^H[1-6]$/.test(type));
  return types.has('H') && numbered ? ['headings H and numbered headings are mixed'] : [];
}

/** Header cells must say for what they are headers: by scope, since the printer uses no ids. */
function scopeless(reading: Reading): string[] {
  return elementsOfType(reading, 'TH').flatMap(({ scope }) =>
    scope === 'Row' || scope === 'Column' || scope === 'Both' ? [] : ['TH has no scope'],
  );
}

function unknownHeaders(reading: Reading): string[] {
  const ids = new Set(elementsOf(reading).map(({ dict }) => reading.file.text(dict.get('ID'))));
  return elementsOfType(reading, 'TD').flatMap(({ dict }) => {
    const attributes = reading.file.dict(dict.get('A'));
    const headers = reading.file.array(attributes?.get('Headers')).map((id) => reading.file.text(id));
    return headers.flatMap((id) => (ids.has(id) ? [] : [`TD names the header \`${id}\`, which is not there`]));
  });
}

function noteIds(reading: Reading): (string | undefined)[] {
  return elementsOfType(reading, 'Note').map(({ dict }: Element) => reading.file.text(dict.get('ID')));
}

/** Alternative text, headings, header cells, formulas and notes: clauses 7.3 to 7.9. */
export const MEANING_RULES: readonly Rule[] = [
  rule('7.3-1', 'figures have alternative text', untold('Figure')),
  rule('7.4.2-1', 'headings begin with H1 and skip no level', headingSkips),
  rule('7.4.4-1', 'an element has one heading H at most', (reading) =>
    elementsOf(reading).flatMap((element) =>
      kidTypes(element).filter((type) => type === 'H').length > 1 ? [`${element.type} has several headings H`] : [],
    ),
  ),
  rule('7.4.4-2', 'a file with H has no numbered headings', usesBoth),
  rule('7.4.4-3', 'a file with numbered headings has no H', usesBoth),
  rule('7.5-1', 'header cells have a scope', scopeless),
  rule('7.5-2', 'headers that cells name exist', unknownHeaders),
  rule('7.7-1', 'formulas have alternative text', untold('Formula')),
  rule('7.9-1', 'notes have an id', (reading) => noteIds(reading).flatMap((id) => (id ? [] : ['a note has no id']))),
  rule('7.9-2', 'ids of notes differ', (reading) => {
    const ids = noteIds(reading);
    return ids.flatMap((id, i) => (id !== undefined && ids.indexOf(id) < i ? [`two notes have the id \`${id}\``] : []));
  }),
];
