import type { Reading } from '../read-pdf.ts';
import type { Element } from '../read-structure.ts';
import { elementsOfType, kidTypes } from './elements.ts';
import { type Rule, rule } from './rule.ts';

/** Elements of a type may hold only children of these. */
function holdsOnly(type: string, allowed: readonly string[]) {
  return (reading: Reading): string[] =>
    elementsOfType(reading, type).flatMap((element) =>
      kidTypes(element).flatMap((kid) => (allowed.includes(kid) ? [] : [`${type} holds ${kid}`])),
    );
}

/** Elements of a type must stand in one of these. */
function standsIn(type: string, allowed: readonly string[]) {
  return (reading: Reading): string[] =>
    elementsOfType(reading, type).flatMap(({ parent }) => {
      const found = parent?.standard ?? 'nothing';
      return allowed.includes(found) ? [] : [`${type} stands in ${found}`];
    });
}

/** A condition on the list of child types of every element of a type. */
function kids(type: string, says: string, holds: (kids: readonly string[], element: Element) => boolean) {
  return (reading: Reading): string[] =>
    elementsOfType(reading, type).flatMap((element) => (holds(kidTypes(element), element) ? [] : [says]));
}

function countOf(list: readonly string[], type: string): number {
  return list.filter((each) => each === type).length;
}

/** Columns of each row of a table; spans are not used by the printer, so cells are counted. */
function rowLengths(table: Element): number[] {
  const rows = (element: Element): number[] =>
    element.kids.flatMap((kid) => ('standard' in kid ? (kid.standard === 'TR' ? [kidTypes(kid).length] : rows(kid)) : []));
  return rows(table);
}

function unequalRows(reading: Reading): string[] {
  return elementsOfType(reading, 'Table').flatMap((table) =>
    new Set(rowLengths(table)).size > 1 ? ['rows of a table have different numbers of cells'] : [],
  );
}

function spans(reading: Reading): string[] {
  const cells = [...elementsOfType(reading, 'TH'), ...elementsOfType(reading, 'TD')];
  const attributes = cells.map(({ dict }) => reading.file.dict(dict.get('A')));
  return attributes.flatMap((each) => (each?.has('RowSpan') || each?.has('ColSpan') ? ['a cell spans others'] : []));
}

const ROWS = ['Table', 'THead', 'TBody', 'TFoot'];
const NOT_MIDDLE = 'a caption stands in the middle';

/** What may stand in what, for tables, lists and contents: clause 7.2. */
export const NESTING_RULES: readonly Rule[] = [
  rule(
    '7.2-3',
    'a table holds rows, groups of rows and a caption',
    holdsOnly('Table', ['TR', 'THead', 'TBody', 'TFoot', 'Caption']),
  ),
  rule('7.2-4', 'rows stand in tables', standsIn('TR', ROWS)),
  rule('7.2-5', 'heads stand in tables', standsIn('THead', ['Table'])),
  rule('7.2-6', 'bodies stand in tables', standsIn('TBody', ['Table'])),
  rule('7.2-7', 'feet stand in tables', standsIn('TFoot', ['Table'])),
  rule('7.2-8', 'header cells stand in rows', standsIn('TH', ['TR'])),
  rule('7.2-9', 'cells stand in rows', standsIn('TD', ['TR'])),
  rule('7.2-10', 'a row holds cells', holdsOnly('TR', ['TH', 'TD'])),
  rule(
    '7.2-11',
    'a table has one head at most',
    kids('Table', 'a table has several heads', (list) => countOf(list, 'THead') <= 1),
  ),
  rule(
    '7.2-12',
    'a table has one foot at most',
    kids('Table', 'a table has several feet', (list) => countOf(list, 'TFoot') <= 1),
  ),
  rule(
    '7.2-13',
    'a table with a foot has a body',
    kids('Table', 'a foot without a body', (list) => !list.includes('TFoot') || list.includes('TBody')),
  ),
  rule(
    '7.2-14',
    'a table with a head has a body',
    kids('Table', 'a head without a body', (list) => !list.includes('THead') || list.includes('TBody')),
  ),
  rule('7.2-15', 'no cell meets another', spans),
  rule(
    '7.2-16',
    'a caption is first or last in its table',
    kids('Table', NOT_MIDDLE, (list) => !list.slice(1, -1).includes('Caption')),
  ),
  rule('7.2-17', 'items stand in lists', standsIn('LI', ['L'])),
  rule('7.2-18', 'bodies of items stand in items', standsIn('LBody', ['LI'])),
  rule('7.2-19', 'a list holds items', holdsOnly('L', ['L', 'LI', 'Caption'])),
  rule('7.2-20', 'an item holds a label and a body', holdsOnly('LI', ['Lbl', 'LBody'])),
  rule('7.2-26', 'entries stand in contents', standsIn('TOCI', ['TOC'])),
  rule('7.2-27', 'contents hold entries', holdsOnly('TOC', ['TOC', 'TOCI', 'Caption'])),
  rule(
    '7.2-28',
    'a caption is first in its contents',
    kids('TOC', NOT_MIDDLE, (list) => !list.slice(1).includes('Caption')),
  ),
  rule('7.2-36', 'a head holds rows', holdsOnly('THead', ['TR'])),
  rule('7.2-37', 'a body holds rows', holdsOnly('TBody', ['TR'])),
  rule('7.2-38', 'a foot holds rows', holdsOnly('TFoot', ['TR'])),
  rule(
    '7.2-39',
    'a table has one caption at most',
    kids('Table', 'a table has several captions', (list) => countOf(list, 'Caption') <= 1),
  ),
  rule(
    '7.2-40',
    'a caption is first in its list',
    kids('L', NOT_MIDDLE, (list) => !list.slice(1).includes('Caption')),
  ),
  rule('7.2-41', 'columns have equally many rows', unequalRows),
  rule('7.2-42', 'rows have equally many columns', unequalRows),
  rule('7.2-43', 'rows have equally many columns, spans counted', unequalRows),
];
