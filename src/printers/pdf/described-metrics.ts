import type { FaceMetrics } from './font-program.ts';

/** What a font descriptor tells of a face's measures, in thousandths of an em (ISO 32000-1, table 122). */
export function describedMetrics({ unitsPerEm, bbox, italicAngle, ascent, descent, capHeight }: FaceMetrics) {
  const scale = (value: number): number => Math.round((value * 1000) / unitsPerEm);
  return {
    FontBBox: bbox.map(scale),
    ItalicAngle: italicAngle,
    Ascent: scale(ascent),
    Descent: scale(descent),
    CapHeight: scale(capHeight),
    StemV: 0,
  };
}
