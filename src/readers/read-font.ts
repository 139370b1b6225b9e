import type { PdfFile } from './pdf-file.ts';
import { type Dict, isArray, type Value } from './value.ts';

/** What is known of a font of the file. */
export interface FontReading {
  /** resource name on the page, such as `F1` */
  readonly resource: string;
  readonly name: string;
  readonly subtype: string;
  readonly embedded: boolean;
  readonly dict: Dict;
  readonly descendant: Dict | undefined;
  readonly descriptor: Dict | undefined;
  /** character of each code; absent codes are missing from ToUnicode */
  readonly unicode: ReadonlyMap<number, string>;
  readonly hasToUnicode: boolean;
  /** codes that a simple font states a width for; empty for a composite one */
  readonly codes: readonly number[];
  /** advance of a code in thousandths of an em */
  width(code: number): number;
}

/**
 * Reads a font dictionary: codes of two bytes of a Type 0 font with Identity-H, or of one byte of a simple font, with their widths and the
 * ToUnicode map.
 */
export function readFont(file: PdfFile, resource: string, dict: Dict): FontReading {
  const descendant = file.dict(file.array(dict.get('DescendantFonts'))[0]);
  const descriptor = file.dict((descendant ?? dict).get('FontDescriptor'));
  const embedded = ['FontFile', 'FontFile2', 'FontFile3'].some((key) => descriptor?.has(key));
  const cmap = file.stream(dict.get('ToUnicode'));
  const simple = readSimpleWidths(file, dict);
  const widths = descendant ? readWidths(file, descendant.get('W')) : simple;
  const standard = file.number(descendant?.get('DW')) ?? 1000;
  return {
    resource,
    name: file.name(dict.get('BaseFont')) ?? '',
    subtype: file.name(dict.get('Subtype')) ?? '',
    embedded,
    dict,
    descendant,
    descriptor,
    unicode: cmap ? readToUnicode(Buffer.from(cmap).toString('latin1')) : new Map(),
    hasToUnicode: cmap !== undefined,
    codes: [...simple.keys()],
    width: (code) => widths.get(code) ?? standard,
  };
}

/** Widths of a simple font, from its first code on (ISO 32000-1, table 111). */
function readSimpleWidths(file: PdfFile, dict: Dict): Map<number, number> {
  const first = file.number(dict.get('FirstChar')) ?? 0;
  return new Map(file.array(dict.get('Widths')).map((width, at) => [first + at, file.number(width) ?? 0]));
}

/** `[first [w w …]]` and `[first last w]` (ISO 32000-1, 9.7.4.3). */
function readWidths(file: PdfFile, value: Value | undefined): Map<number, number> {
  const widths = new Map<number, number>();
  const list = file.array(value);
  for (let i = 0; i < list.length; ) {
    const first = file.number(list[i]) ?? 0;
    const second = file.get(list[i + 1]);
    if (isArray(second)) {
      for (const [n, width] of second.entries()) widths.set(first + n, file.number(width) ?? 0);
      i += 2;
    } else {
      for (let code = first; code <= Number(second); code++) widths.set(code, file.number(list[i + 2]) ?? 0);
      i += 3;
    }
  }
  return widths;
}

/** The `bfchar` and `bfrange` entries of a ToUnicode CMap. */
export function readToUnicode(cmap: string): Map<number, string> {
  const unicode = new Map<number, string>();
  for (const [, section = ''] of cmap.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, code, text] of section.matchAll(/<([0-9a-fA-F]+)>\s*<([0-9a-fA-F ]+)>/g))
      unicode.set(Number.parseInt(code!, 16), utf16(text!));
  }
  for (const [, section = ''] of cmap.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) readRanges(section, unicode);
  return unicode;
}

function readRanges(section: string, unicode: Map<number, string>): void {
  for (const [, low, high, list, start] of section.matchAll(
    /<([0-9a-fA-F]+)>\s*<([0-9a-fA-F]+)>\s*(?:\[([^\]]*)\]|<([0-9a-fA-F]+)>)/g,
  )) {
    const first = Number.parseInt(low!, 16);
    const texts = list?.match(/<[^>]*>/g)?.map((hex) => utf16(hex.slice(1, -1)));
    for (let code = first; code <= Number.parseInt(high!, 16); code++) {
      const text = texts ? texts[code - first] : String.fromCodePoint(Number.parseInt(start!, 16) + code - first);
      if (text !== undefined) unicode.set(code, text);
    }
  }
}

function utf16(hex: string): string {
  const units = hex.replace(/\s/g, '').match(/.{4}/g) ?? [];
  return units.map((unit) => String.fromCharCode(Number.parseInt(unit, 16))).join('');
}
