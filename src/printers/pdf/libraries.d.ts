/** The parts of pdfkit and fontkit that are used here; neither ships types for them. */
declare module 'fontkit' {
  export interface Glyph {
    readonly id: number;
  }
  export interface Subset {
    /** set for fonts with CFF outlines */
    readonly cff?: unknown;
    includeGlyph(id: number): number;
    encode(): Uint8Array;
  }
  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    readonly capHeight: number;
    readonly italicAngle: number;
    readonly bbox: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
    createSubset(): Subset;
  }
  export function create(bytes: Uint8Array): Font;
}

declare module 'pdfkit' {
  /** An indirect object. Ended with content it becomes a stream. */
  export interface Reference {
    data: Record<string, unknown>;
    end(content?: Uint8Array | string): void;
  }
  export interface MarkedContent {
    readonly refs: readonly { readonly mcid: number }[];
  }
  export interface StructureElement {
    add(child: StructureElement | MarkedContent): StructureElement;
    end(): void;
    readonly dictionary: Reference;
    /** not public: what it holds, and how each of them is written */
    readonly _children: unknown[];
    _flushChild: (child: unknown) => void;
  }
  export interface Page {
    readonly height: number;
    readonly fonts: Record<string, unknown>;
    readonly annotations: Reference[];
    readonly dictionary: Reference;
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
    /** null: no font is opened beforehand, none of the standard ones is looked for */
    readonly font: null;
    readonly info: Record<string, string | Date>;
  }
  export default class PDFDocument {
    constructor(options: DocumentOptions);
    info: Record<string, string | Date>;
    readonly page: Page;
    /** not public: the catalog */
    readonly _root: Reference;
    readonly outline: {
      addItem(title: string, options: { pageNumber: number; top: number; left: number }): unknown;
    };
    ref(data: Record<string, unknown>): Reference;
    addPage(options: { size: readonly [number, number]; margin: number }): this;
    addContent(operators: string): this;
    markContent(tag: 'Artifact', options: { type: string }): this;
    markStructureContent(tag: string, options?: { actual?: string }): MarkedContent;
    endMarkedContent(): this;
    struct(type: string, options?: StructureOptions): StructureElement;
    addStructure(element: StructureElement): this;
    createStructParentTreeNextKey(): number;
    getStructParentTree(): { add(key: number, value: Reference): void };
    endMetadata(): void;
    /** not public: finishes the forms that pdfkit makes itself */
    endAcroForm(): void;
    end(): void;
    push(chunk: Uint8Array | null): boolean;
  }
}
