import { type Canvas, createCanvas, loadImage } from '@napi-rs/canvas';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A page as pixels: red, green, blue and alpha, one byte each, row by row. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8ClampedArray;
  /** the same as a PNG file */
  readonly png: () => Uint8Array;
}

/**
 * Draws pages of a PDF with pdfjs on a Skia canvas, on white. Both packages are pinned by the lock file, so that the same file gives the
 * same pixels on the same kind of machine.
 * @param dpi pixels an inch
 * @param wanted numbers of pages from 1; all when absent
 */
export async function rasterise(bytes: Uint8Array, dpi: number, wanted?: readonly number[]): Promise<Raster[]> {
  const task = getDocument({ data: Uint8Array.from(bytes), useSystemFonts: false, disableFontFace: true, verbosity: 0 });
  const pdf = await task.promise;
  const numbers = wanted ?? Array.from({ length: pdf.numPages }, (_, at) => at + 1);
  const rasters: Raster[] = [];
  for (const number of numbers) {
    const page = await pdf.getPage(number);
    const viewport = page.getViewport({ scale: dpi / 72 });
    const canvas = createCanvas(Math.round(viewport.width), Math.round(viewport.height));
    const canvasContext = canvas.getContext('2d') as never;
    await page.render({ canvas: null, canvasContext, viewport, background: 'white' }).promise;
    rasters.push(rasterOf(canvas));
  }
  await task.destroy();
  return rasters;
}

function rasterOf(canvas: Canvas): Raster {
  const { width, height } = canvas;
  const pixels = canvas.getContext('2d').getImageData(0, 0, width, height).data;
  return { width, height, pixels, png: () => canvas.toBuffer('image/png') };
}

/** Reads a PNG file. */
export async function readPng(bytes: Uint8Array): Promise<Raster> {
  const image = await loadImage(Buffer.from(bytes));
  const canvas = createCanvas(image.width, image.height);
  canvas.getContext('2d').drawImage(image, 0, 0);
  return rasterOf(canvas);
}
