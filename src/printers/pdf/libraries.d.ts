/** The parts of pdfkit and fontkit that are used here; neither ships types for them. */
declare module 'fontkit' {
  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly bbox: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };
  }
  export interface Subset {
    includeGlyph(id: number): number;
  }
  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
    layout(text: string): unknown;
  }
  export function create(bytes: Uint8Array): Font;
}

declare module 'pdfkit' {
  import type { Font, Subset } from 'fontkit';

  /** A font as it stands in one document: its subset grows as glyphs are taken in. */
  export interface DocumentFont {
    readonly id: string;
    readonly subset: Subset;
    /** code points of each glyph of the subset, for ToUnicode */
    readonly unicode: (readonly number[])[];
    /** advance of each glyph of the subset, in thousandths of an em */
    readonly widths: number[];
    ref(): unknown;
  }
  export interface MarkedContent {
    readonly refs: readonly { readonly mcid: number }[];
  }
  export interface StructureElement {
    add(child: StructureElement | MarkedContent): StructureElement;
    end(): void;
    readonly dictionary: { readonly data: Record<string, unknown> };
  }
  export interface StructureOptions {
    readonly alt?: string;
    readonly actual?: string;
    readonly title?: string;
    readonly scope?: string;
    readonly bbox?: readonly number[];
    readonly placement?: string;
  }
  export interface DocumentOptions {
    readonly pdfVersion: '1.7';
    readonly lang: string;
    readonly tagged: boolean;
    readonly displayTitle: boolean;
    readonly subset: 'PDF/UA';
    readonly autoFirstPage: false;
    readonly compress?: boolean;
    readonly font: Font;
    readonly info: Record<string, string | Date>;
  }
  export default class PDFDocument {
    constructor(options: DocumentOptions);
    info: Record<string, string | Date>;
    readonly page: { readonly height: number; readonly fonts: Record<string, unknown> };
    readonly outline: {
      addItem(title: string, options: { pageNumber: number; top: number; left: number }): unknown;
    };
    _font: DocumentFont;
    font(font: Font): this;
    addPage(options: { size: readonly [number, number]; margin: number }): this;
    addContent(operators: string): this;
    markContent(tag: 'Artifact', options: { type: string }): this;
    markStructureContent(tag: string, options?: { actual?: string }): MarkedContent;
    endMarkedContent(): this;
    struct(type: string, options?: StructureOptions): StructureElement;
    addStructure(element: StructureElement): this;
    endMetadata(): void;
    end(): void;
    read(): Uint8Array;
  }
}
