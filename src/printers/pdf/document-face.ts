import type PDFDocument from 'pdfkit';
import type { Reference } from 'pdfkit';
import { describedMetrics } from './described-metrics.ts';
import type { Coded, FontProgram } from './font-program.ts';
import type { Face, Fonts, Shape } from './fonts.ts';
import { showCodes } from './open-face.ts';

/** A face as it is used in one document: its resource name, and the codes given to glyphs outside the shared repertoire. */
export class DocumentFace {
  readonly id: string;
  readonly #pdf: PDFDocument;
  readonly #face: Face;
  readonly #fonts: Fonts;
  readonly #extras: Coded[] = [];
  readonly #codes = new Map<number, number>();
  #ref: Reference | undefined;

  constructor(pdf: PDFDocument, fonts: Fonts, face: Face, id: string) {
    this.id = id;
    this.#pdf = pdf;
    this.#face = face;
    this.#fonts = fonts;
  }

  /** The font's object, made when a page first uses it. */
  get ref(): Reference {
    this.#ref ??= this.#pdf.ref({});
    return this.#ref;
  }

  /** The operand that shows a word; rare glyphs are taken into the document's subset, with the character they were asked for. */
  show(shape: Shape): string {
    if (shape.show !== undefined) return shape.show;
    const codes = shape.glyphs.map((glyph, i) => this.#code(glyph, shape.codePoints[i]!));
    return showCodes(codes, shape.kerns);
  }

  #code(glyph: number, codePoint: number): number {
    const repertoire = this.#fonts.repertoire(this.#face);
    if (this.#codes.size === 0) for (const [i, coded] of repertoire.entries()) this.#codes.set(coded.glyph, i + 1);
    const found = this.#codes.get(glyph);
    if (found !== undefined) return found;
    this.#extras.push({ glyph, codePoint });
    const code = repertoire.length + this.#extras.length;
    this.#codes.set(glyph, code);
    return code;
  }

  /** Writes the font into the file, if a page used it. */
  embed(): void {
    if (!this.#ref) return;
    const program = this.#fonts.program(this.#face, this.#extras);
    const name = `${subsetTag(this.id)}+${this.#fonts.metrics(this.#face).name}`;
    this.#ref.data = {
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: name,
      Encoding: 'Identity-H',
      DescendantFonts: [this.#descendant(program, name)],
      ToUnicode: this.#stream({ Filter: 'FlateDecode' }, program.toUnicode),
    };
    this.#ref.end();
  }

  #descendant(program: FontProgram, name: string): Reference {
    const truetype = program.outlines === 'truetype';
    return this.#object({
      Type: 'Font',
      Subtype: truetype ? 'CIDFontType2' : 'CIDFontType0',
      BaseFont: name,
      CIDSystemInfo: { Registry: new String('Adobe'), Ordering: new String('Identity'), Supplement: 0 },
      FontDescriptor: this.#descriptor(program, name),
      W: [0, program.widths],
      ...(truetype ? { CIDToGIDMap: 'Identity' } : {}),
    });
  }

  #descriptor({ file, length, outlines }: FontProgram, name: string): Reference {
    const metrics = this.#fonts.metrics(this.#face);
    const cff = outlines === 'cff';
    const stream = this.#stream({ Filter: 'FlateDecode', ...(cff ? { Subtype: 'CIDFontType0C' } : { Length1: length }) }, file);
    return this.#object({
      Type: 'FontDescriptor',
      FontName: name,
      // symbolic: codes are the subset's own (ISO 32000-1, table 123)
      Flags: metrics.italicAngle === 0 ? 4 : 4 + 64,
      ...describedMetrics(metrics),
      [cff ? 'FontFile3' : 'FontFile2']: stream,
    });
  }

  #object(data: Record<string, unknown>): Reference {
    const ref = this.#pdf.ref(data);
    ref.end();
    return ref;
  }

  #stream(data: Record<string, unknown>, content: Uint8Array): Reference {
    const ref = this.#pdf.ref(data);
    ref.end(content);
    return ref;
  }
}

/** Six capitals that mark a subset (ISO 32000-1, 9.6.4), from the resource name: `F3` is `COUPLC`. */
function subsetTag(id: string): string {
  return `COUPL${String.fromCharCode(64 + Number(id.slice(1)))}`;
}
