import { badValue } from './option.ts';

/** Longest seed, name or title, in characters. */
const LONGEST = 120;

/**
 * A text of the user's that is printed or kept: nothing unprintable in it. Private-use characters are refused because templates mark
 * chemistry with them.
 * @param name of the option it was given by
 * @throws Fault `bad-option`
 */
export function plainText(name: string, text: string): string {
  if (text.trim() === '') throw badValue(name, text, 'at least one character');
  if ([...text].length > LONGEST) throw badValue(name, text, `at most ${LONGEST} characters`);
  const strange = /[\p{Cc}\p{Co}\p{Cs}\p{Cn}\p{Zl}\p{Zp}]/u.exec(text);
  if (strange)
    throw badValue(
      name,
      text,
      `printable characters (U+${strange[0].codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')} is none)`,
    );
  return text;
}
