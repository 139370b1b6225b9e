import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { Fault } from '../exact/fault.ts';
import type { Overlay } from './overlay.ts';

/** Text of a file in UTF-8. @throws Fault `unreadable-file` */
export function readText(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    const because = (error as NodeJS.ErrnoException).code === 'ENOENT' ? 'there is no such file' : 'it cannot be read';
    throw new Fault('unreadable-file', `expected to read \`${path}\`, but ${because}`, { file: path });
  }
}

/** A department's own table, named by its file name. @throws Fault `unreadable-file` */
export function readOverlayFile(path: string): Overlay {
  return { name: basename(path), text: readText(path) };
}
