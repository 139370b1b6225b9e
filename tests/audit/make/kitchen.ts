import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Wording, wordingOf } from '../../../src/document/wording.ts';
import { readTables } from '../../../src/potentials/read-tables.ts';
import type { Tables } from '../../../src/potentials/tables.ts';

/** What papers are made from. This folder is the maker's: it alone takes more from the program than types. */
export interface Kitchen {
  readonly tables: Tables;
  readonly wording: Wording;
}

/** @param root folder of the package */
export function kitchenIn(root: string): Kitchen {
  const folder = join(root, 'templates');
  const templates = new Map(readdirSync(folder).map((file) => [file, readFileSync(join(folder, file), 'utf8')] as const));
  return { tables: readTables(join(root, 'potentials')), wording: wordingOf(templates, 'audit') };
}
