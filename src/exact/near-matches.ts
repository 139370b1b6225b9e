/**
 * Up to three candidates that a mistyped word may have meant, nearest first: by edit distance, at most a third of the longer word away,
 * or sharing its beginning.
 */
export function nearMatches(word: string, candidates: readonly string[]): string[] {
  const typed = word.toLowerCase();
  return candidates
    .map((candidate) => ({ candidate, distance: nearness(typed, candidate.toLowerCase()) }))
    .filter(({ candidate, distance }) => distance * 3 <= Math.max(candidate.length, typed.length))
    .sort((a, b) => a.distance - b.distance || (a.candidate < b.candidate ? -1 : 1))
    .slice(0, 3)
    .map(({ candidate }) => candidate);
}

function nearness(typed: string, candidate: string): number {
  return typed.length >= 3 && candidate.startsWith(typed) ? 1 : editDistance(typed, candidate);
}

/** Levenshtein distance by rows. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const swap = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}
