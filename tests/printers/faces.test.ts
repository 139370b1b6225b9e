import { createCanvas, Path2D } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { FACES, type Face } from '../../src/printers/pdf/fonts.ts';
import { FONTS } from '../pages/test-fonts.ts';

const EM = 200;

/** What the declarations that the printer needs leave out of a glyph. */
interface Outlined {
  readonly bbox: { readonly minX: number };
  readonly path: { toSVG(): string };
}

/** Which pixels of an em square a character's outline fills, its left edge at the left. */
function inkOf(face: Face, character: string): boolean[] {
  const font = FONTS.font(face);
  const glyph = font.glyphForCodePoint(character.codePointAt(0)!) as unknown as Outlined;
  const canvas = createCanvas(EM, EM);
  const context = canvas.getContext('2d');
  const scale = (EM * 0.7) / font.unitsPerEm;
  context.setTransform(scale, 0, 0, -scale, -glyph.bbox.minX * scale, EM * 0.75);
  context.fill(new Path2D(glyph.path.toSVG()));
  const { data } = context.getImageData(0, 0, EM, EM);
  return Array.from({ length: EM * EM }, (_, at) => data[4 * at + 3]! > 127);
}

/** Share of the ink of two characters that is of one of them only, laid over each other. */
function difference(face: Face, one: string, other: string): number {
  const [a, b] = [inkOf(face, one), inkOf(face, other)];
  const all = a.filter((ink, at) => ink || b[at]).length;
  expect(all).toBeGreaterThan(100);
  return a.filter((ink, at) => ink !== b[at]).length / all;
}

describe.each(FACES.filter((face) => face !== 'symbol'))('the cut %s', (face) => {
  it.each(['lI', 'l1', 'I1', 'O0', '+\u2212'])('tells the two of %s apart at a glance', (pair) => {
    const [one, other] = [...pair] as [string, string];
    expect(difference(face, one, other)).toBeGreaterThan(0.1);
  });
});

describe('the measure of difference', () => {
  it('finds none between a letter and itself, and little between a Latin and a Cyrillic O', () => {
    expect(difference('regular', 'l', 'l')).toBe(0);
    expect(difference('regular', 'O', 'О')).toBeLessThan(0.05);
  });
});
