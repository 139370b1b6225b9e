import { nearMatches } from '../exact/near-matches.ts';

/** ` (did you mean `a` or `b`?)` to end a message with, or nothing. */
export function didYouMean(word: string, candidates: Iterable<string>): string {
  const near = nearMatches(word, [...candidates]);
  return near.length === 0 ? '' : ` (did you mean ${near.map((name) => `\`${name}\``).join(' or ')}?)`;
}
