import { PdfFile } from './pdf-file.ts';
import { type Content, readContent } from './read-content.ts';
import { type FontReading, readFont } from './read-font.ts';
import { type Element, readStructure } from './read-structure.ts';
import { type Dict, Ref, type Value } from './value.ts';

export interface PageReading extends Content {
  /** from 1 */
  readonly number: number;
  readonly width: number;
  readonly height: number;
  readonly dict: Dict;
  readonly annotations: readonly Dict[];
}

/** A PDF read back: what stands where on its pages, its fonts and its structure. */
export interface Reading {
  readonly file: PdfFile;
  readonly pages: readonly PageReading[];
  readonly fonts: readonly FontReading[];
  /** fonts of the form, which text is typed in; they need not show anything yet */
  readonly typedFonts: readonly FontReading[];
  /** top of the structure tree, absent when there is none */
  readonly structure?: Element;
  readonly title?: string;
  readonly language?: string;
  readonly bookmarks: readonly string[];
}

/**
 * Reads a PDF that the printer wrote.
 * @param bytes the whole file
 * @throws Fault `bad-pdf` when it is none, or uses what the printer never writes
 */
export function readPdf(bytes: Uint8Array): Reading {
  const file = new PdfFile(bytes);
  const { catalog } = file;
  const refs = pageRefs(file, catalog.get('Pages'));
  const fonts = new Map<number, FontReading>();
  const pages = refs.map((ref, i) => readPage(file, file.dict(ref) ?? new Map(), i + 1, fonts));
  const structure = readStructure(file, new Map(refs.map((ref, i) => [ref.number, i + 1])));
  const title = file.text(file.dict(file.trailer.get('Info'))?.get('Title'));
  const language = file.text(catalog.get('Lang'));
  return {
    file,
    pages,
    fonts: [...fonts.values()],
    typedFonts: readTypedFonts(file),
    bookmarks: readBookmarks(file, file.dict(catalog.get('Outlines'))),
    ...(structure ? { structure } : {}),
    ...(title === undefined ? {} : { title }),
    ...(language === undefined ? {} : { language }),
  };
}

/** Fonts in the default resources of the form (ISO 32000-1, table 218). */
function readTypedFonts(file: PdfFile): FontReading[] {
  const resources = file.dict(file.dict(file.catalog.get('AcroForm'))?.get('DR'));
  const fonts = file.dict(resources?.get('Font')) ?? [];
  return [...fonts].map(([resource, font]) => readFont(file, resource, file.dict(font) ?? new Map()));
}

function pageRefs(file: PdfFile, node: Value | undefined): Ref[] {
  const dict = file.dict(node);
  if (dict?.has('Kids')) return file.array(dict.get('Kids')).flatMap((kid) => pageRefs(file, kid));
  return node instanceof Ref ? [node] : [];
}

function readPage(file: PdfFile, dict: Dict, number: number, known: Map<number, FontReading>): PageReading {
  const [left = 0, bottom = 0, right = 0, top = 0] = file.array(dict.get('MediaBox')).map((edge) => file.number(edge) ?? 0);
  const fonts = new Map<string, FontReading>();
  for (const [resource, ref] of file.dict(file.dict(dict.get('Resources'))?.get('Font')) ?? []) {
    const id = ref instanceof Ref ? ref.number : -1;
    const font = known.get(id) ?? readFont(file, resource, file.dict(ref) ?? new Map());
    known.set(id, font);
    fonts.set(resource, font);
  }
  const source = Buffer.from(file.stream(dict.get('Contents')) ?? []).toString('latin1');
  const { runs, paths, operators } = readContent(file, source, fonts, top - bottom);
  const annotations = file.array(dict.get('Annots')).flatMap((annotation) => file.dict(annotation) ?? []);
  return { number, width: right - left, height: top - bottom, dict, annotations, runs, paths, operators };
}

function readBookmarks(file: PdfFile, outlines: Dict | undefined): string[] {
  const titles: string[] = [];
  for (let item = file.dict(outlines?.get('First')); item && titles.length < 1000; item = file.dict(item.get('Next'))) {
    titles.push(file.text(item.get('Title')) ?? '');
  }
  return titles;
}
