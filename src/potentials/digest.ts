import { createHash } from 'node:crypto';

/** First 12 hex digits of SHA-256 over file names and contents, in order of name: another table, another digest. */
export function digestOf(files: ReadonlyMap<string, string>): string {
  const hash = createHash('sha256');
  for (const name of [...files.keys()].sort()) hash.update(JSON.stringify([name, files.get(name)]));
  return hash.digest('hex').slice(0, 12);
}
