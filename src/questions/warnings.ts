import { inlinesIn, plainText } from './gate/inlines-of.ts';
import type { Item, Part } from './question.ts';

/** Something an editor would look at again; it does not keep a question from printing. */
export interface Warning {
  readonly rule: 'long-sentence' | 'absolute-word' | 'option-stands-out';
  readonly says: string;
}

const MOST_WORDS = 25;
const ABSOLUTE = /\b(?:always|never|all of|none of|completely|impossible|usually|often|sometimes)\b/i;

/** Soft rules of item writing (after Haladyna, Downing & Rodriguez 2002), for a report. */
export function warningsOf(item: Item): Warning[] {
  const prose = [
    ...item.stem.filter(({ kind }) => kind === 'paragraph').map((block) => inlinesIn([block])),
    ...item.parts.map(({ prompt }) => prompt),
  ].map(plainText);
  return [...prose.flatMap(proseWarnings), ...item.parts.flatMap(optionWarnings)];
}

function proseWarnings(prose: string): Warning[] {
  const long = prose.split(/[.?!:;]\s+/).filter((sentence) => sentence.split(/\s+/).length > MOST_WORDS);
  const absolute = ABSOLUTE.exec(prose);
  return [
    ...long.map((sentence): Warning => ({ rule: 'long-sentence', says: sentence })),
    ...(absolute ? [{ rule: 'absolute-word' as const, says: absolute[0] }] : []),
  ];
}

function optionWarnings({ options }: Part): Warning[] {
  if (!options) return [];
  const lengths = options.map(({ content }) => plainText(content).length);
  const longest = Math.max(...lengths);
  const next = Math.max(...lengths.filter((length) => length !== longest), 0);
  const standsOut = lengths.filter((length) => length === longest).length === 1 && longest > next * 1.6 && longest > 12;
  return standsOut ? [{ rule: 'option-stands-out', says: plainText(options[lengths.indexOf(longest)]!.content) }] : [];
}
