import type { Draws } from './draws.ts';

const STARTS = ['b', 'd', 'f', 'g', 'h', 'k', 'l', 'm', 'n', 'p', 'r', 's', 't', 'v', 'w', 'z'];
const VOWELS = ['a', 'e', 'i', 'o', 'u'];
const ENDS = ['l', 'm', 'n', 'r', 's', 't'];

/** A short word that can be said over the telephone, such as `tavolin`: three open syllables and a closing consonant. */
export function pronounceable(draws: Draws): string {
  const syllables = Array.from({ length: 3 }, () => draws.pick(STARTS) + draws.pick(VOWELS));
  return syllables.join('') + draws.pick(ENDS);
}
