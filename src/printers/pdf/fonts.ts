import type { Font } from 'fontkit';
import { type FieldFont, fieldFont } from './field-font.ts';
import type { Coded, FaceMetrics, FontProgram } from './font-program.ts';
import { missingGlyph } from './missing-glyph.ts';
import { OpenFace, openSource } from './open-face.ts';
import { type PreparedFace, prepareFace } from './prepared-face.ts';

/** The cuts of the text family, and the symbol font that steps in where they have no glyph. */
export const FACES = ['regular', 'medium', 'strong', 'italic', 'strongItalic', 'light', 'lightItalic', 'symbol'] as const;
export type Face = (typeof FACES)[number];

/** Files that are read: one for each face, and the text face with the outlines that fields to type into need. */
export type FontFile = Face | 'typed';

/** Where the packages of the product keep each face, below `node_modules`; whoever opens the fonts reads these files. */
export const FONT_FILES: Readonly<Record<FontFile, string>> = {
  regular: 'source-sans/OTF/SourceSans3-Regular.otf',
  medium: 'source-sans/OTF/SourceSans3-Medium.otf',
  strong: 'source-sans/OTF/SourceSans3-Semibold.otf',
  italic: 'source-sans/OTF/SourceSans3-It.otf',
  strongItalic: 'source-sans/OTF/SourceSans3-SemiboldIt.otf',
  light: 'source-sans/OTF/SourceSans3-Light.otf',
  lightItalic: 'source-sans/OTF/SourceSans3-LightIt.otf',
  symbol: '@expo-google-fonts/stix-two-math/400Regular/STIXTwoMath_400Regular.ttf',
  typed: 'source-sans/TTF/SourceSans3-Regular.ttf',
};

/** A word in one face: glyphs with their code points, and kerning, in thousandths of an em. */
export interface Shape {
  readonly glyphs: readonly number[];
  readonly codePoints: readonly number[];
  /** kerning after each glyph; 0 after the last */
  readonly kerns: readonly number[];
  readonly width: number;
  /** the operand that shows it with the codes of the face's repertoire; absent when it has a rarer glyph */
  readonly show?: string;
}

/** Fonts opened once for a process and shared by its documents. Shapes are kept for every word met. */
export interface Fonts {
  has(face: Face, codePoint: number): boolean;
  shape(face: Face, text: string): Shape;
  metrics(face: Face): FaceMetrics;
  /** glyphs under codes 1, 2, … in every subset of the face */
  repertoire(face: Face): readonly Coded[];
  /** the subset that holds the repertoire and, behind it, these glyphs */
  program(face: Face, extras: readonly Coded[]): FontProgram;
  /** the face of text that is typed into fields */
  typed(): FieldFont;
  /** the opened font file, for measuring against */
  font(face: Face): Font;
}

/** Faces worked out beforehand, as JSON holds them. */
export type PreparedFonts = Readonly<Partial<Record<Face, PreparedFace>>>;

/**
 * Opens faces at their first use, so that a document pays only for those it needs.
 * @param read gives the bytes of a font file (OTF or TTF); the printer touches no file itself
 * @param prepared what `prepareFonts` worked out of the same files: then a file is read only for characters outside the repertoire
 */
export function openFonts(read: (file: FontFile) => Uint8Array, prepared: PreparedFonts = {}): Fonts {
  const opened = new Map<Face, OpenFace>();
  const open = (face: Face): OpenFace => {
    const found = opened.get(face) ?? new OpenFace(face, () => read(face), prepared[face]);
    opened.set(face, found);
    return found;
  };
  let typed: FieldFont | undefined;
  return {
    has: (face, codePoint) => open(face).has(codePoint),
    shape: (face, text) => open(face).shape(text),
    metrics: (face) => open(face).metrics,
    repertoire: (face) => open(face).repertoire,
    program: (face, extras) => open(face).program(extras),
    typed: () => {
      typed ??= fieldFont(openSource(read('typed')));
      return typed;
    },
    font: (face) => open(face).source.font,
  };
}

/** Works out beforehand what most documents need of each face; the result goes through JSON unchanged. */
export function prepareFonts(read: (face: Face) => Uint8Array): PreparedFonts {
  return Object.fromEntries(FACES.map((face) => [face, prepareFace(new OpenFace(face, () => read(face)))]));
}

/** Cuts text into stretches by the face that draws them: the wanted face, or the symbol font where that has no glyph. */
export function faceRuns(fonts: Fonts, wanted: Face, text: string): readonly { face: Face; text: string }[] {
  const runs: { face: Face; text: string }[] = [];
  for (const character of text) {
    const codePoint = character.codePointAt(0) ?? 0;
    const face = fonts.has(wanted, codePoint) ? wanted : 'symbol';
    if (face === 'symbol' && !fonts.has('symbol', codePoint)) throw missingGlyph(codePoint, wanted);
    const last = runs.at(-1);
    if (last?.face === face) last.text += character;
    else runs.push({ face, text: character });
  }
  return runs;
}
