import type { PdfFile } from './pdf-file.ts';
import { type Dict, isDict, Ref, type Value } from './value.ts';

/** A structure element, with its type mapped to a standard one. */
export interface Element {
  readonly type: string;
  readonly standard: string;
  readonly alt?: string;
  readonly actual?: string;
  readonly lang?: string;
  readonly scope?: string;
  readonly dict: Dict;
  readonly parent?: Element;
  readonly kids: readonly (Element | ContentRef)[];
  /** annotations that it holds by object references */
  readonly annotations: readonly Dict[];
}

/** A marked-content sequence that belongs to an element: page number from 1, and its id there. */
export interface ContentRef {
  readonly page: number;
  readonly mcid: number;
}

export function isElement(kid: Element | ContentRef): kid is Element {
  return 'standard' in kid;
}

/** The top of the structure tree; undefined when the file has none. */
export function readStructure(file: PdfFile, pages: ReadonlyMap<number, number>): Element | undefined {
  const root = file.dict(file.catalog.get('StructTreeRoot'));
  if (!root) return undefined;
  const roles = file.dict(root.get('RoleMap')) ?? new Map<string, Value>();
  const top = {
    type: 'StructTreeRoot',
    standard: 'StructTreeRoot',
    dict: root,
    kids: [] as (Element | ContentRef)[],
    annotations: [],
  };
  top.kids.push(...readKids(file, root, { pages, roles, parent: top, page: 0 }));
  return top;
}

interface Reading {
  readonly pages: ReadonlyMap<number, number>;
  readonly roles: Dict;
  readonly parent: Element;
  /** page of the nearest element that names one */
  readonly page: number;
}

function readKids(file: PdfFile, dict: Dict, reading: Reading): (Element | ContentRef)[] {
  const kids = dict.get('K');
  const found = file.get(kids);
  const list = Array.isArray(found) ? (found as readonly Value[]) : kids === undefined ? [] : [kids];
  return list.flatMap((kid) => readKid(file, kid, reading));
}

function readKid(file: PdfFile, kid: Value, reading: Reading): (Element | ContentRef)[] {
  const value = file.get(kid);
  if (typeof value === 'number') return [{ page: reading.page, mcid: value }];
  if (!isDict(value)) return [];
  const page = pageOf(value, reading);
  if (file.name(value.get('Type')) === 'MCR') return [{ page, mcid: file.number(value.get('MCID')) ?? -1 }];
  if (file.name(value.get('Type')) === 'OBJR') return [];
  return [readElement(file, value, { ...reading, page })];
}

function readElement(file: PdfFile, dict: Dict, reading: Reading): Element {
  const type = file.name(dict.get('S')) ?? '';
  const text = (key: string): string | undefined => file.text(dict.get(key));
  const scope = file.name(attributes(file, dict)?.get('Scope'));
  const element = {
    type,
    standard: mapRole(file, type, reading.roles),
    dict,
    parent: reading.parent,
    kids: [] as (Element | ContentRef)[],
    annotations: referencedIn(file, dict),
    ...optional('alt', text('Alt')),
    ...optional('actual', text('ActualText')),
    ...optional('lang', text('Lang')),
    ...optional('scope', scope),
  };
  element.kids.push(...readKids(file, dict, { ...reading, parent: element }));
  return element;
}

/** What the object references among the children of an element point to. */
function referencedIn(file: PdfFile, dict: Dict): Dict[] {
  const kids = file.get(dict.get('K'));
  return (Array.isArray(kids) ? kids : [kids]).flatMap((kid: Value) => {
    const value = file.dict(kid);
    return value && file.name(value.get('Type')) === 'OBJR' ? (file.dict(value.get('Obj')) ?? []) : [];
  });
}

function optional<K extends string>(key: K, value: string | undefined): { [P in K]?: string } {
  return value === undefined ? {} : ({ [key]: value } as { [P in K]?: string });
}

function attributes(file: PdfFile, dict: Dict): Dict | undefined {
  const value = file.get(dict.get('A'));
  return Array.isArray(value) ? file.dict(value[0] as Value) : file.dict(value);
}

/** Follows the role map; at most as many steps as it has entries. */
function mapRole(file: PdfFile, type: string, roles: Dict): string {
  let standard = type;
  for (let i = 0; i <= roles.size && roles.has(standard); i++) standard = file.name(roles.get(standard)) ?? standard;
  return standard;
}

function pageOf(dict: Dict, reading: Reading): number {
  const page = dict.get('Pg');
  return page instanceof Ref ? (reading.pages.get(page.number) ?? reading.page) : reading.page;
}
