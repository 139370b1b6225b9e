import { decodePDFRawStream, PDFDict, PDFDocument, PDFName, type PDFRawStream, PDFTextField } from 'pdf-lib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { printPdf } from '../../src/printers/pdf/print-pdf.ts';
import { DEFAULT_SETTINGS, measure, type Print } from '../../src/printers/pdf/settings.ts';
import { SHEET } from './fixture.ts';
import { type Raster, rasterise } from './rasterise.ts';
import { FONTS } from './test-fonts.ts';

const fillable = (print: Print) => printPdf(SHEET, { ...DEFAULT_SETTINGS, print, fillable: true }, FONTS);
const sheet = fillable('standard');

/** left, bottom, right and top, in points from the foot of the page */
type Box = readonly [number, number, number, number];

async function boxOf(field: string): Promise<Box> {
  const pdf = await PDFDocument.load(sheet, { updateMetadata: false });
  const { x, y, width, height } = pdf.getForm().getTextField(field).acroField.getWidgets()[0]!.getRectangle();
  return [x, y, x + width, y + height];
}

describe('what is typed', () => {
  /** All of it stands in no code page: an equation, a unit, a value. */
  const TYPED = 'Cr₂O₇²⁻ + 14H⁺ + 6e⁻ → 2Cr³⁺ ≈ 0.25 mol dm⁻³ “é” ½ °C − Δ';

  /** The sheet with that in all its fields, by a library that writes what the fields then look like. */
  async function filled(bytes: Uint8Array): Promise<Uint8Array> {
    const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0, useSystemFonts: false });
    const pdf = await task.promise;
    for (let page = 1; page <= pdf.numPages; page++) {
      for (const { id, fieldType } of await (await pdf.getPage(page)).getAnnotations())
        if (fieldType === 'Tx') pdf.annotationStorage.setValue(id, { value: TYPED });
    }
    const saved = await pdf.saveDocument();
    await task.destroy();
    return saved;
  }

  it('is set by another program in the face of the page, every character of it', async () => {
    const pdf = await PDFDocument.load(await filled(sheet), { updateMetadata: false });
    const texts = pdf
      .getForm()
      .getFields()
      .filter((field) => field instanceof PDFTextField);
    expect(texts.length).toBeGreaterThan(10);
    for (const field of texts) {
      expect(field.getText()).toBe(TYPED);
      const look = field.acroField.getWidgets()[0]!.getAppearances()!.normal as PDFRawStream;
      const content = Buffer.from(decodePDFRawStream(look).decode()).toString('latin1');
      expect([...new Set(content.match(/\/\S+ (?=[\d.]+ Tf)/g))]).toEqual(['/Typed ']);
      const font = look.dict.lookup(PDFName.of('Resources'), PDFDict).lookup(PDFName.of('Font'), PDFDict);
      expect(font.lookup(PDFName.of('Typed'), PDFDict).get(PDFName.of('BaseFont'))).toBe(
        PDFName.of('COUPLZ+SourceSans3-Regular'),
      );
    }
  });

  it('is seen where its field is, though the machine has no font', async () => {
    const [empty, written] = await Promise.all(
      [sheet, await filled(sheet)].map(async (bytes) => (await rasterise(bytes, 72, [1]))[0]!),
    );
    const box = await boxOf('head-1');
    expect(darkIn(written!, box) - darkIn(empty!, box)).toBeGreaterThan(100);
  });

  it.each(['standard', 'clear', 'large', '24', '36'] as const)('is as large as what is printed, in print %s', async (print) => {
    const { size, floor } = measure({ ...DEFAULT_SETTINGS, print });
    const sizes = (await PDFDocument.load(fillable(print)))
      .getForm()
      .getFields()
      .flatMap(({ acroField }) => /Typed ([\d.]+) Tf/.exec(acroField.getDefaultAppearance() ?? '')?.[1] ?? []);
    expect(sizes.length).toBeGreaterThan(10);
    for (const each of sizes) expect(Number(each)).toBeGreaterThanOrEqual(Math.max(floor, size.text * 0.9));
  });
});

/** Pixels in a box, in points from the foot of the page, that are darker than grey. */
function darkIn({ width, height, pixels }: Raster, [left, bottom, right, top]: Box): number {
  let dark = 0;
  for (let y = Math.round(height - top); y < height - bottom; y++) {
    for (let x = Math.round(left); x < right; x++) if (pixels[4 * (y * width + x)]! < 128) dark++;
  }
  return dark;
}
