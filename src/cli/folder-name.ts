import { badValue } from './option.ts';
import { plainText } from './plain-text.ts';

/** Names that one system or another keeps for itself. */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)(\..*)?$/i;
const LONGEST = 60;

/**
 * A set's name, which is also its folder's on any system.
 * @throws Fault `bad-option`
 */
export function folderName(text: string): string {
  const name = plainText('name', text);
  const expected =
    'a name that can also be a folder (letters, digits, spaces, `-`, `_`, `.`; not a dot or dash first, not a dot or space last)';
  if (!/^[\p{L}\p{N}_][\p{L}\p{M}\p{N} _.-]*$/u.test(name) || /[. ]$/.test(name) || RESERVED.test(name))
    throw badValue('name', name, expected);
  if ([...name].length > LONGEST) throw badValue('name', name, `at most ${LONGEST} characters`);
  return name;
}

/** A name made from a seed: its letters and digits, in small letters, joined by dashes. */
export function nameFromSeed(seed: string): string {
  const words = seed.toLowerCase().match(/[\p{L}\p{M}\p{N}]+/gu) ?? [];
  const name = [...words.join('-')].slice(0, LONGEST).join('').replace(/-$/, '');
  return name === '' || RESERVED.test(name) || /^\p{M}/u.test(name) ? `sheet-${name}`.replace(/-$/, '') : name;
}
