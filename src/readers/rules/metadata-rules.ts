import type { Reading } from '../read-pdf.ts';
import { isDict } from '../value.ts';
import { condition, type Rule } from './rule.ts';

/** The XMP packet as text; empty when there is none. */
export function xmpOf({ file }: Reading): string {
  const bytes = file.stream(file.catalog.get('Metadata'));
  return bytes ? Buffer.from(bytes).toString('utf8') : '';
}

const UA_NAMESPACE = 'http://www.aiim.org/pdfua/ns/id/';

/** Value of a property of the PDF/UA identification schema, as element or attribute, under whatever prefix. */
function uaProperty(reading: Reading, name: string): { prefix: string; value: string } | undefined {
  const xmp = xmpOf(reading);
  const prefix = new RegExp(`xmlns:([A-Za-z]+)=["']${UA_NAMESPACE}["']`).exec(xmp)?.[1];
  if (!prefix) return undefined;
  const value = new RegExp(`<${prefix}:${name}>([^<]*)<|${prefix}:${name}=["']([^"']*)["']`).exec(xmp);
  return value ? { prefix, value: (value[1] ?? value[2] ?? '').trim() } : undefined;
}

function prefixRight(reading: Reading, name: string): boolean {
  const property = uaProperty(reading, name);
  return property === undefined || property.prefix === 'pdfuaid';
}

/** Identification, title and other metadata: clauses 5, 6.1 to 6.2 and part of 7.1. */
export const METADATA_RULES: readonly Rule[] = [
  condition('5-1', 'the file identifies itself as PDF/UA', (reading) => xmpOf(reading).includes(UA_NAMESPACE)),
  condition('5-2', 'the part of PDF/UA is 1', (reading) => uaProperty(reading, 'part')?.value === '1'),
  condition('5-3', 'the part has the prefix pdfuaid', (reading) => prefixRight(reading, 'part')),
  condition('5-4', 'an amendment has the prefix pdfuaid', (reading) => prefixRight(reading, 'amd')),
  condition('5-5', 'a corrigendum has the prefix pdfuaid', (reading) => prefixRight(reading, 'corr')),
  condition('6.1-1', 'the header names PDF 1.0 to 1.7', ({ file }) => /^%PDF-1\.[0-7]$/.test(file.header)),
  condition(
    '6.2-1',
    'the file says that it is marked',
    ({ file }) => file.get(file.dict(file.catalog.get('MarkInfo'))?.get('Marked')) === true,
  ),
  condition(
    '7.1-4',
    'no content is suspect',
    ({ file }) => file.get(file.dict(file.catalog.get('MarkInfo'))?.get('Suspects')) !== true,
  ),
  condition('7.1-8', 'the catalog has an XML metadata stream', ({ file }) => {
    const dict = file.dict(file.catalog.get('Metadata'));
    return dict !== undefined && file.name(dict.get('Type')) === 'Metadata' && file.name(dict.get('Subtype')) === 'XML';
  }),
  condition('7.1-9', 'the metadata hold a title', (reading) =>
    /<dc:title>[\s\S]*<rdf:li[^>]*>\s*[^\s<][\s\S]*<\/dc:title>/.test(xmpOf(reading)),
  ),
  condition('7.1-10', 'the title is shown as the window’s', ({ file }) => {
    return file.get(file.dict(file.catalog.get('ViewerPreferences'))?.get('DisplayDocTitle')) === true;
  }),
  condition('7.1-11', 'the file has a structure tree', ({ file }) => isDict(file.get(file.catalog.get('StructTreeRoot')))),
];
