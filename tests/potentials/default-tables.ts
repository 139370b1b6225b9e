import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { TABLE_FILES } from '../../src/potentials/read-parts.ts';
import { readTables } from '../../src/potentials/read-tables.ts';

/** The folder of the data files that come with the product. */
export const FOLDER = new URL('../../potentials', import.meta.url).pathname;

/** Text of every data file, by name. */
export const FILES: ReadonlyMap<string, string> = new Map(
  TABLE_FILES.map((name) => [name, readFileSync(join(FOLDER, name), 'utf8')]),
);

/** The default tables. */
export const TABLES = readTables(FOLDER);

/** The files with one text replaced in one of them; the text has to be there. */
export function filesWith(name: string, from: string, to: string): Map<string, string> {
  const text = FILES.get(name) ?? '';
  if (!text.includes(from)) throw new Error(`${name} does not hold ${from}`);
  return new Map(FILES).set(
    name,
    text.replace(from, () => to),
  );
}

/** Line (1-based) of a file on which a text stands first. */
export function lineOf(name: string, piece: string): number {
  const at = (FILES.get(name) ?? '').indexOf(piece);
  if (at < 0) throw new Error(`${name} does not hold ${piece}`);
  return (FILES.get(name) ?? '').slice(0, at).split('\n').length;
}
