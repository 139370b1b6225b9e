import type { Reading } from '../read-pdf.ts';
import { type Dict, isDict, Stream } from '../value.ts';
import { elementsOfType } from './elements.ts';
import { absent, type Rule, rule } from './rule.ts';

/** Dictionaries of all objects of the file, those of streams too. */
function allDicts({ file }: Reading): Dict[] {
  return file.numbers.flatMap((number) => {
    const value = file.object(number);
    return value instanceof Stream ? [value.dict] : isDict(value) ? [value] : [];
  });
}

function annotations(reading: Reading, ...subtypes: string[]): boolean {
  return reading.pages.some((page) =>
    page.annotations.some((each) => subtypes.includes(reading.file.name(each.get('Subtype')) ?? '')),
  );
}

function anyAnnotation(reading: Reading): boolean {
  return reading.pages.some((page) => page.annotations.length > 0);
}

function has(reading: Reading, key: string, value?: string): boolean {
  return allDicts(reading).some((dict) => dict.has(key) && (value === undefined || reading.file.name(dict.get(key)) === value));
}

const LAYERS = (reading: Reading): boolean => reading.file.catalog.has('OCProperties');
const FORM_OBJECT = (reading: Reading): boolean => has(reading, 'Subtype', 'Form');

/** Layers, attachments, forms, encryption, annotations and form objects: clauses 7.10 to 7.20. */
export const FEATURE_RULES: readonly Rule[] = [
  absent('7.10-1', 'layer', LAYERS),
  absent('7.10-2', 'layer', LAYERS),
  absent('7.11-1', 'embedded file', (reading) => has(reading, 'EF')),
  absent('7.15-1', 'XFA form', (reading) => has(reading, 'XFA')),
  absent('7.16-1', 'encryption', ({ file }) => file.trailer.has('Encrypt')),
  absent('7.18.1-1', 'annotation', anyAnnotation),
  absent('7.18.1-2', 'annotation', anyAnnotation),
  absent('7.18.1-3', 'form field', (reading) => annotations(reading, 'Widget')),
  absent('7.18.2-1', 'trap network', (reading) => annotations(reading, 'TrapNet')),
  rule('7.18.3-1', 'pages with annotations are read in the order of the structure', ({ file, pages }) =>
    pages.flatMap((page) =>
      page.annotations.length === 0 || file.name(page.dict.get('Tabs')) === 'S' ? [] : [`page ${page.number} has another order`],
    ),
  ),
  absent('7.18.4-1', 'form field', (reading) => annotations(reading, 'Widget')),
  absent('7.18.4-2', 'Form element', (reading) => elementsOfType(reading, 'Form').length > 0),
  absent('7.18.5-1', 'link', (reading) => annotations(reading, 'Link')),
  absent('7.18.5-2', 'link', (reading) => annotations(reading, 'Link')),
  absent('7.18.6.2-1', 'media clip', (reading) => has(reading, 'S', 'MCD')),
  absent('7.18.6.2-2', 'media clip', (reading) => has(reading, 'S', 'MCD')),
  absent('7.18.8-1', 'printer’s mark', (reading) => annotations(reading, 'PrinterMark')),
  absent('7.20-1', 'reference object', (reading) => FORM_OBJECT(reading) && has(reading, 'Ref')),
  absent('7.20-2', 'form object', FORM_OBJECT),
];
