import type { Raster } from './rasterise.ts';

/** A channel that differs by less is the rounding of edges, not a change that anyone sees. */
export const LEAST_SEEN = 40;

/** Share of pixels that may differ before a page counts as changed: one letter of a title on a small image is a little more. */
export const TOLERANCE = 0.0001;

/** The share of pixels that are seen to differ; 1 when the sizes do. */
export function shareChanged(one: Raster, other: Raster): number {
  if (one.width !== other.width || one.height !== other.height) return 1;
  let changed = 0;
  for (let at = 0; at < one.pixels.length; at += 4) {
    const seen = [0, 1, 2].some((channel) => Math.abs(one.pixels[at + channel]! - other.pixels[at + channel]!) >= LEAST_SEEN);
    if (seen) changed++;
  }
  return changed / (one.width * one.height);
}

/** How many pixels are no grey: their channels differ by more than rounding. */
export function colouredPixels({ pixels }: Raster): number {
  let coloured = 0;
  for (let at = 0; at < pixels.length; at += 4) {
    const [red, green, blue] = [pixels[at]!, pixels[at + 1]!, pixels[at + 2]!];
    if (Math.max(red, green, blue) - Math.min(red, green, blue) > 2) coloured++;
  }
  return coloured;
}
