import PDFDocument, { type MarkedContent } from 'pdfkit';
import { DocumentFace } from './document-face.ts';
import { FormFields } from './draw-fields.ts';
import { drawItem } from './draw-item.ts';
import { buildStructure } from './draw-structure.ts';
import { FACES, type Face, type Fonts } from './fonts.ts';
import type { Ink } from './item.ts';
import type { Laid, Page } from './page.ts';
import { isTag, type Mark, type Tag } from './tag.ts';

/** Nothing but the document decides the bytes: all carry this date. */
const CREATED = new Date('2000-01-01T00:00:00Z');

/** What drawing needs to know while it goes over the pages. */
export interface Sheet {
  readonly pdf: PDFDocument;
  readonly fonts: Fonts;
  readonly faces: ReadonlyMap<Face, DocumentFace>;
  readonly contents: Map<Mark, MarkedContent[]>;
  readonly form: FormFields;
}

/**
 * Draws laid-out pages as a tagged PDF 1.7 (ISO 32000-1) that identifies itself as PDF/UA-1. The same pages give the same bytes,
 * whatever the process drew before.
 */
export function draw(laid: Laid, fonts: Fonts): Uint8Array {
  const pdf = openDocument(laid);
  const sheet: Sheet = { pdf, fonts, faces: registerFaces(pdf, fonts), contents: new Map(), form: new FormFields(pdf, fonts) };
  const order = fieldOrder(laid.root);
  for (const page of laid.pages) drawPage(sheet, page, order);
  buildStructure(sheet, laid);
  sheet.form.finish();
  for (const page of laid.pages) {
    for (const { title, y } of page.bookmarks) {
      pdf.outline.addItem(title, { pageNumber: page.number - 1, top: y, left: page.width });
    }
  }
  for (const face of sheet.faces.values()) face.embed();
  pdf.end();
  return Buffer.concat(pdf.chunks);
}

/** pdfkit's document is a stream; this one keeps what it would send. It has no form but ours, which needs no finishing touch. */
class KeptDocument extends PDFDocument {
  declare chunks: Uint8Array[];
  override push(chunk: Uint8Array | null): boolean {
    this.chunks ??= [];
    if (chunk) this.chunks.push(chunk);
    return true;
  }
  override endAcroForm(): void {}
}

function openDocument(laid: Laid): KeptDocument {
  const info = { Title: laid.title, Subject: laid.subject, Creator: 'couplet', Producer: 'couplet', CreationDate: CREATED };
  const pdf = new KeptDocument({
    pdfVersion: '1.7',
    lang: laid.language,
    tagged: true,
    displayTitle: true,
    subset: 'PDF/UA',
    autoFirstPage: false,
    font: null,
    info,
  });
  const endMetadata = pdf.endMetadata;
  // pdfkit pastes the info into XML as it stands
  pdf.endMetadata = () => {
    pdf.info = { ...info, Title: escapeXml(laid.title), Subject: escapeXml(laid.subject) };
    endMetadata.call(pdf);
  };
  return pdf;
}

function escapeXml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** All faces in a fixed order, so that font names in the file depend on nothing; a face without glyphs is not written. */
function registerFaces(pdf: PDFDocument, fonts: Fonts): Map<Face, DocumentFace> {
  return new Map(FACES.map((face, i) => [face, new DocumentFace(pdf, fonts, face, `F${i + 1}`)]));
}

/** Marks of fields, in the order in which the structure is read. */
function fieldOrder(root: Tag): ReadonlyMap<Mark, number> {
  const order = new Map<Mark, number>();
  const visit = (tag: Tag): void => {
    for (const kid of tag.kids) {
      if (isTag(kid)) visit(kid);
      else if (tag.type === 'Form') order.set(kid, order.size);
    }
  };
  visit(root);
  return order;
}

function drawPage(sheet: Sheet, page: Page, order: ReadonlyMap<Mark, number>): void {
  const { pdf } = sheet;
  pdf.addPage({ size: [page.width, page.height], margin: 0 });
  if (page.tint) drawBackground(sheet, page, page.tint);
  for (const group of groupByMark(page.items)) {
    const mark = group[0]!.mark;
    if (mark) {
      const content = pdf.markStructureContent(
        mark.actual === undefined ? mark.tag.type : 'Span',
        mark.actual === undefined ? {} : { actual: mark.actual },
      );
      const list = sheet.contents.get(mark);
      if (list) list.push(content);
      else sheet.contents.set(mark, [content]);
    } else {
      pdf.markContent('Artifact', { type: 'Layout' });
    }
    pdf.addContent(group.map((item) => drawItem(sheet, item, page.tint)).join('\n'));
    pdf.endMarkedContent();
  }
  sheet.form.place([...page.fields].sort((one, other) => (order.get(one.mark) ?? 0) - (order.get(other.mark) ?? 0)));
}

function drawBackground({ pdf }: Sheet, { width, height }: Page, tint: readonly number[]): void {
  pdf.markContent('Artifact', { type: 'Background' });
  pdf.addContent(`q ${tint.join(' ')} rg 0 0 ${width} ${height} re f Q`);
  pdf.endMarkedContent();
}

/** Neighbouring items of one mark, or neighbouring artifacts, share a marked-content sequence. */
function groupByMark(items: readonly Ink[]): Ink[][] {
  const groups: Ink[][] = [];
  for (const item of items) {
    const group = groups.at(-1);
    if (group && group[0]!.mark === item.mark) group.push(item);
    else groups.push([item]);
  }
  return groups;
}
