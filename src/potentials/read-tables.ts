import { existsSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { Fault, Faults } from '../exact/fault.ts';
import type { Overlay } from './overlay.ts';
import { parseTables } from './parse-tables.ts';
import { TABLE_FILES } from './read-parts.ts';
import type { Tables } from './tables.ts';

/**
 * Reads the tables from a folder.
 * @param folder holds `couples.csv` and the other data files
 * @param overlayFile a department's own table, named on sheets by its file name
 * @throws Faults, each with the path of its file; Fault `unreadable-file`
 */
export function readTables(folder: string, overlayFile?: string): Tables {
  const present = TABLE_FILES.filter((name) => existsSync(join(folder, name)));
  const files = new Map<string, string>(present.map((name) => [name, readText(join(folder, name))]));
  const overlay: Overlay | undefined =
    overlayFile === undefined ? undefined : { name: basename(overlayFile), text: readText(overlayFile) };
  try {
    return parseTables(files, overlay);
  } catch (error) {
    if (!(error instanceof Faults)) throw error;
    throw new Faults(error.faults.map((fault) => withPath(fault, folder, overlay?.name, overlayFile)));
  }
}

/** Faults tell the path as it was given, not the bare file name. */
function withPath({ code, message, place }: Fault, folder: string, overlayName?: string, overlayFile?: string): Fault {
  if (place.file === undefined) return new Fault(code, message, place);
  const path = place.file === overlayName && overlayFile !== undefined ? overlayFile : join(folder, place.file);
  return new Fault(code, message, { ...place, file: path });
}

/** Text of a file in UTF-8. @throws Fault `unreadable-file` */
export function readText(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    const because = (error as NodeJS.ErrnoException).code === 'ENOENT' ? 'there is no such file' : 'it cannot be read';
    throw new Fault('unreadable-file', `expected to read \`${path}\`, but ${because}`, { file: path });
  }
}
