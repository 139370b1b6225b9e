import { nearMatches } from '../exact/near-matches.ts';

/** `; did you mean …?`, or nothing when nothing that is known is near to what was found or holds it as a part. */
export function didYouMean(found: string, known: readonly string[]): string {
  const holding = known.filter((word) => found.length > 2 && (word.startsWith(found) || word.split('-').includes(found)));
  const words = [...new Set([...holding, ...nearMatches(found, known)])].slice(0, 3);
  return words.length === 0 ? '' : `; did you mean ${words.map((word) => `\`${word}\``).join(' or ')}?`;
}
