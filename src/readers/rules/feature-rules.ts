import type { PdfFile } from '../pdf-file.ts';
import type { Reading } from '../read-pdf.ts';
import { type Dict, isDict, Stream } from '../value.ts';
import { elementsOf, elementsOfType } from './elements.ts';
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

/** Annotations of all pages, of these subtypes or of any but these, each with its page and the element that holds it. */
function annotationsOf(reading: Reading, subtypes: readonly string[], wanted: boolean) {
  const holders = new Map(elementsOf(reading).flatMap((element) => element.annotations.map((each) => [each, element] as const)));
  return reading.pages.flatMap((page) =>
    page.annotations
      .filter((each) => subtypes.includes(reading.file.name(each.get('Subtype')) ?? '') === wanted)
      .map((dict) => ({ dict, where: `page ${page.number}`, holder: holders.get(dict) })),
  );
}

const SPECIAL = ['Widget', 'PrinterMark', 'Link'];

/** A text of a field: its own, or that of the group it belongs to. */
function fieldText({ file }: Reading, dict: Dict, key: string): string {
  return file.text(dict.get(key)) ?? file.text(file.dict(dict.get('Parent'))?.get(key)) ?? '';
}

/** Form objects that are no appearance of an annotation, or hold marked content of their own. */
function looseForms(reading: Reading): string[] {
  const { file } = reading;
  const appearances = new Set(reading.pages.flatMap((page) => page.annotations.flatMap((each) => appearancesOf(file, each))));
  return file.numbers.flatMap((number) => {
    const value = file.object(number);
    const dict = value instanceof Stream ? value.dict : value;
    if (!isDict(dict) || file.name(dict.get('Subtype')) !== 'Form') return [];
    if (!(value instanceof Stream) || !appearances.has(dict)) return [`object ${number} is a form object that nothing shows`];
    const marked = Buffer.from(file.stream(value) ?? []).includes('/MCID');
    return marked ? [`object ${number} holds marked content`] : [];
  });
}

/** Dictionaries of an annotation's appearance streams, those of its states included. */
function appearancesOf(file: PdfFile, annotation: Dict): Dict[] {
  const normal = file.get(file.dict(annotation.get('AP'))?.get('N'));
  if (normal instanceof Stream) return [normal.dict];
  return isDict(normal) ? [...normal.values()].flatMap((state) => file.dict(state) ?? []) : [];
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
  rule('7.18.1-1', 'annotations stand in Annot elements', (reading) =>
    annotationsOf(reading, SPECIAL, false).flatMap(({ where, holder }) =>
      holder?.standard === 'Annot' ? [] : [`${where}: an annotation stands in ${holder?.standard ?? 'nothing'}`],
    ),
  ),
  rule('7.18.1-2', 'annotations are told in words', (reading) =>
    annotationsOf(reading, SPECIAL, false).flatMap(({ dict, where, holder }) =>
      reading.file.text(dict.get('Contents')) || holder?.alt ? [] : [`${where}: an annotation is not told`],
    ),
  ),
  rule('7.18.1-3', 'form fields are told in words', (reading) =>
    annotationsOf(reading, ['Widget'], true).flatMap(({ dict, where, holder }) =>
      fieldText(reading, dict, 'TU') || holder?.alt
        ? []
        : [`${where}: the field \`${fieldText(reading, dict, 'T')}\` has no tooltip`],
    ),
  ),
  absent('7.18.2-1', 'trap network', (reading) => annotations(reading, 'TrapNet')),
  rule('7.18.3-1', 'pages with annotations are read in the order of the structure', ({ file, pages }) =>
    pages.flatMap((page) =>
      page.annotations.length === 0 || file.name(page.dict.get('Tabs')) === 'S' ? [] : [`page ${page.number} has another order`],
    ),
  ),
  rule('7.18.4-1', 'form fields stand in Form elements', (reading) =>
    annotationsOf(reading, ['Widget'], true).flatMap(({ dict, where, holder }) =>
      holder?.standard === 'Form' ? [] : [`${where}: the field \`${fieldText(reading, dict, 'T')}\` stands in no Form`],
    ),
  ),
  rule('7.18.4-2', 'a Form element holds one field and nothing else', (reading) =>
    elementsOfType(reading, 'Form').flatMap(({ annotations: held, kids }) =>
      held.length === 1 && kids.length === 0 ? [] : [`a Form holds ${held.length} fields and ${kids.length} other things`],
    ),
  ),
  absent('7.18.5-1', 'link', (reading) => annotations(reading, 'Link')),
  absent('7.18.5-2', 'link', (reading) => annotations(reading, 'Link')),
  absent('7.18.6.2-1', 'media clip', (reading) => has(reading, 'S', 'MCD')),
  absent('7.18.6.2-2', 'media clip', (reading) => has(reading, 'S', 'MCD')),
  absent('7.18.8-1', 'printer’s mark', (reading) => annotations(reading, 'PrinterMark')),
  absent('7.20-1', 'reference object', (reading) => FORM_OBJECT(reading) && has(reading, 'Ref')),
  rule('7.20-2', 'form objects are appearances of annotations and hold no marked content', looseForms),
];
