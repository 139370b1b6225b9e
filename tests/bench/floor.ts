import PDFDocument from 'pdfkit';
import type { Segment } from '../../src/document/figure.ts';
import { FACES, type Face, type Fonts } from '../../src/printers/pdf/fonts.ts';
import type { Ink } from '../../src/printers/pdf/item.ts';
import type { Laid } from '../../src/printers/pdf/page.ts';
import { isTag, type Mark, type Tag } from '../../src/printers/pdf/tag.ts';

/** The parts of pdfkit that only the floor uses. */
interface PlainPdf {
  _font: { layoutCache: object };
  registerFont(name: string, font: unknown): this;
  font(name: string): this;
  fontSize(size: number): this;
  fillColor(colour: readonly number[]): this;
  text(text: string, x: number, y: number, options: object): this;
  markContent(tag: string, options?: object): this;
  markStructureContent(tag: string, options?: object): object;
  endMarkedContent(): this;
  struct(type: string, options: object): { add(child: object): void; end(): void };
  addStructure(element: object): void;
  addPage(options: object): this;
  save(): this;
  restore(): this;
  translate(x: number, y: number): this;
  lineWidth(width: number): this;
  moveTo(x: number, y: number): this;
  lineTo(x: number, y: number): this;
  bezierCurveTo(...numbers: number[]): this;
  closePath(): this;
  stroke(colour: readonly number[]): this;
  end(): void;
  read(): Uint8Array;
}

const CACHES = new Map<Face, object>();

/**
 * The floor of the bench: the runs, rules and tags of a finished layout written straight with pdfkit's own calls, nothing laid out.
 * Compression on, fonts opened once and shared, words shaped once for all documents.
 */
export function floorDocument(laid: Laid, fonts: Fonts): Uint8Array {
  const pdf = new (PDFDocument as unknown as new (options: object) => PlainPdf)({
    pdfVersion: '1.7',
    lang: laid.language,
    tagged: true,
    displayTitle: true,
    subset: 'PDF/UA',
    autoFirstPage: false,
    font: fonts.font('regular'),
    info: { Title: laid.title, CreationDate: new Date(0) },
  });
  for (const face of FACES) pdf.registerFont(face, fonts.font(face));
  const contents = new Map<Mark, object[]>();
  for (const page of laid.pages) {
    pdf.addPage({ size: [page.width, page.height], margin: 0 });
    drawItems(pdf, page.items, contents);
  }
  pdf.addStructure(element(pdf, laid.root, contents));
  pdf.end();
  return pdf.read();
}

function drawItems(pdf: PlainPdf, items: readonly Ink[], contents: Map<Mark, object[]>): void {
  let open: Mark | 'artifact' | undefined;
  for (const item of items) {
    const mark = item.mark ?? 'artifact';
    if (mark !== open) {
      if (open) pdf.endMarkedContent();
      open = mark;
      if (mark === 'artifact') pdf.markContent('Artifact', { type: 'Layout' });
      else contents.set(mark, [...(contents.get(mark) ?? []), pdf.markStructureContent(mark.tag.type)]);
    }
    if (item.kind === 'text') drawText(pdf, item);
    else drawPath(pdf, item);
  }
  if (open) pdf.endMarkedContent();
}

function drawText(pdf: PlainPdf, item: Extract<Ink, { kind: 'text' }>): void {
  pdf.font(item.face);
  const cache = CACHES.get(item.face) ?? Object.create(null);
  CACHES.set(item.face, cache);
  pdf._font.layoutCache = cache;
  pdf.fontSize(item.size).fillColor([0, 0, 0]);
  pdf.text(item.text, item.x, item.y, { lineBreak: false, baseline: 'alphabetic' });
}

function drawPath(pdf: PlainPdf, item: Extract<Ink, { kind: 'path' }>): void {
  pdf.save().translate(item.x, item.y).lineWidth(item.line);
  for (const part of item.path) drawSegment(pdf, part);
  pdf.stroke([0, 0, 0]).restore();
}

function drawSegment(pdf: PlainPdf, part: Segment): void {
  if (part.to === 'move') pdf.moveTo(part.x, part.y);
  else if (part.to === 'line') pdf.lineTo(part.x, part.y);
  else if (part.to === 'curve') pdf.bezierCurveTo(part.x1, part.y1, part.x2, part.y2, part.x, part.y);
  else pdf.closePath();
}

function element(pdf: PlainPdf, tag: Tag, contents: ReadonlyMap<Mark, object[]>): object {
  const made = pdf.struct(tag.type, tag.alt ? { alt: tag.alt } : {});
  for (const kid of tag.kids) {
    if (isTag(kid)) made.add(element(pdf, kid, contents));
    else for (const content of contents.get(kid) ?? []) made.add(content);
  }
  made.end();
  return made;
}
