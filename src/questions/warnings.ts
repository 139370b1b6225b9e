import { Rational } from '../exact/rational.ts';
import { inlinesIn, plainText } from './gate/inlines-of.ts';
import type { ChoiceOption, Item, Part } from './question.ts';

/** Something an editor would look at again; it does not keep a question from printing. */
export interface Warning {
  readonly rule: 'long-sentence' | 'absolute-word' | 'option-stands-out' | 'absurd-option';
  readonly says: string;
}

const MOST_WORDS = 25;
const ABSOLUTE = /\b(?:always|never|all of|none of|completely|impossible|usually|often|sometimes)\b/i;
/** An option further from the key than this factor is absurd rather than wrong. */
const ABSURD = Rational.of(30);

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
  const key = options.find(({ slip }) => slip === undefined)!;
  return [
    ...(standsOut ? [{ rule: 'option-stands-out' as const, says: plainText(options[lengths.indexOf(longest)]!.content) }] : []),
    ...options
      .filter((option) => isAbsurd(option, key))
      .map(({ content }): Warning => ({ rule: 'absurd-option', says: plainText(content) })),
  ];
}

function isAbsurd({ value }: ChoiceOption, { value: key }: ChoiceOption): boolean {
  if (value.kind !== 'number' || key.kind !== 'number' || value.value.isZero() || key.value.isZero()) return false;
  const factor = value.value.over(key.value).abs();
  return factor.compare(ABSURD) > 0 || factor.compare(Rational.one.over(ABSURD)) < 0;
}
