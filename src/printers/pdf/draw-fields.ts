import type PDFDocument from 'pdfkit';
import type { Page as PdfPage, Reference, StructureElement } from 'pdfkit';
import { embedFieldFont } from './field-font.ts';
import type { Fonts } from './fonts.ts';
import type { FieldItem } from './item.ts';
import type { Mark } from './tag.ts';

/** Prints with the page, is not hidden (ISO 32000-1, table 165). */
const PRINTS = 4;
/** Bits of field flags (ISO 32000-1, tables 226 and 228). */
const SEVERAL_LINES = 1 << 12;
const RADIO = 1 << 15;

interface Widget {
  readonly ref: Reference;
  readonly page: PdfPage;
}

/**
 * The interactive form of a document: widgets on its pages, each under a Form element of the structure. pdfkit has form fields of its own,
 * which lose their tooltip and their place in the structure; so the annotations are written here.
 */
export class FormFields {
  readonly #pdf: PDFDocument;
  readonly #fonts: Fonts;
  readonly #widgets = new Map<Mark, Widget>();
  readonly #groups = new Map<string, Reference>();
  readonly #fields: Reference[] = [];
  #typed: Record<string, Reference> | undefined;

  constructor(pdf: PDFDocument, fonts: Fonts) {
    this.#pdf = pdf;
    this.#fonts = fonts;
  }

  /** Puts fields on the page that is being drawn. Their order here is the order of the tab key for viewers that go by the page. */
  place(fields: readonly FieldItem[]): void {
    const { page } = this.#pdf;
    for (const field of fields) {
      const ref = this.#pdf.ref({});
      page.annotations.push(ref);
      this.#widgets.set(field.mark, { ref, page });
      ref.data = { Type: 'Annot', Subtype: 'Widget', Rect: rectOf(field, page.height), F: PRINTS, P: page.dictionary };
      Object.assign(ref.data, { TU: new String(field.tip), Border: [0, 0, 0] });
      if (field.option) this.#option(field, field.option, ref);
      else this.#text(field, ref);
    }
  }

  #text(field: FieldItem, ref: Reference): void {
    Object.assign(ref.data, {
      FT: 'Tx',
      T: new String(field.name),
      ...(field.lines === 'several' ? { Ff: SEVERAL_LINES } : {}),
      DA: new String(appearance(field.size)),
      AP: { N: this.#form(field, '/Tx BMC\nEMC', { Font: this.#fontOfFields }) },
    });
    this.#fields.push(ref);
  }

  /** One of a group of options: chosen, a firm ring goes round its letter. */
  #option(field: FieldItem, option: NonNullable<FieldItem['option']>, ref: Reference): void {
    const group = this.#groups.get(option.group) ?? this.#newGroup(option);
    (group.data.Kids as Reference[]).push(ref);
    const chosen = this.#form(field, ring(field));
    Object.assign(ref.data, {
      Parent: group,
      AS: 'Off',
      AP: { N: { [option.letter]: chosen, Off: this.#form(field, '') } },
      MK: { CA: new String('l') },
    });
  }

  #newGroup({ group, groupTip }: NonNullable<FieldItem['option']>): Reference {
    const data = { FT: 'Btn', Ff: RADIO, T: new String(group), TU: new String(groupTip), V: 'Off', Kids: [] };
    const ref = this.#pdf.ref(data);
    this.#groups.set(group, ref);
    this.#fields.push(ref);
    return ref;
  }

  #form({ width, height }: FieldItem, content: string, resources = {}): Reference {
    const box = [0, 0, round(width), round(height)];
    const ref = this.#pdf.ref({ Type: 'XObject', Subtype: 'Form', BBox: box, Resources: resources });
    ref.end(`${content}\n`);
    return ref;
  }

  /** Embedded when the first field asks for it. */
  get #fontOfFields(): Record<string, Reference> {
    this.#typed ??= { [TYPED]: embedFieldFont(this.#pdf, this.#fonts.typed()) };
    return this.#typed;
  }

  /** Ties the widget of a mark to its Form element; nothing when the mark is no field's. */
  attach(mark: Mark, element: StructureElement): boolean {
    const widget = this.#widgets.get(mark);
    if (!widget) return false;
    const key = this.#pdf.createStructParentTreeNextKey();
    widget.ref.data.StructParent = key;
    this.#pdf.getStructParentTree().add(key, element.dictionary);
    widget.ref.end();
    // pdfkit would name its current page, which is the last one
    const reference = { Type: 'OBJR', Obj: widget.ref, Pg: widget.page.dictionary };
    element._children.push(reference);
    element._flushChild = (child) => (element.dictionary.data.K as unknown[]).push(child);
    return true;
  }

  /** Writes the form into the catalog, if there is a field. */
  finish(): void {
    if (this.#fields.length === 0) return;
    for (const group of this.#groups.values()) group.end();
    const form = this.#pdf.ref({ Fields: this.#fields, DR: { Font: this.#fontOfFields } });
    form.end();
    this.#pdf._root.data.AcroForm = form;
  }
}

/** Name of the face of typed text among the resources of the form. */
const TYPED = 'Typed';

/** How typed text looks: the text face of the page, black. */
function appearance(size: number): string {
  return `/${TYPED} ${round(size)} Tf 0 g`;
}

/** A ring that fills its box, with Bézier quarters. */
function ring({ width, height }: FieldItem): string {
  const line = 1.6;
  const [x, y] = [width / 2, height / 2];
  const [a, b] = [x - line / 2, y - line / 2];
  const k = 0.5523;
  const curve = (...points: number[]) => `${points.map(round).join(' ')} c`;
  return [
    `${line} w 0 G ${round(x + a)} ${round(y)} m`,
    curve(x + a, y + k * b, x + k * a, y + b, x, y + b),
    curve(x - k * a, y + b, x - a, y + k * b, x - a, y),
    curve(x - a, y - k * b, x - k * a, y - b, x, y - b),
    curve(x + k * a, y - b, x + a, y - k * b, x + a, y),
    'S',
  ].join('\n');
}

function rectOf({ x, y, width, height }: FieldItem, pageHeight: number): number[] {
  return [x, pageHeight - y - height, x + width, pageHeight - y].map(round);
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
