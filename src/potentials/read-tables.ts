import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { parseTables } from './parse-tables.ts';
import { TABLE_FILES } from './read-parts.ts';
import { readOverlayFile, readText } from './read-text.ts';
import type { Tables } from './tables.ts';
import { withPaths } from './with-paths.ts';

/**
 * Reads the tables from a folder.
 * @param folder holds `couples.csv` and the other data files
 * @param overlayFile a department's own table, named on sheets by its file name
 * @throws Faults, each with the path of its file; Fault `unreadable-file`
 */
export function readTables(folder: string, overlayFile?: string): Tables {
  const present = TABLE_FILES.filter((name) => existsSync(join(folder, name)));
  const files = new Map<string, string>(present.map((name) => [name, readText(join(folder, name))]));
  const overlay = overlayFile === undefined ? undefined : readOverlayFile(overlayFile);
  return withPaths(folder, overlayFile, () => parseTables(files, overlay));
}
