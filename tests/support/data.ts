import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Wording, wordingOf } from '../../src/document/wording.ts';
import { readTables } from '../../src/potentials/read-tables.ts';
import type { Tables } from '../../src/potentials/tables.ts';
import { digestOf } from '../../src/random/code.ts';

/** A folder of the project's root. */
export const inProject = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));

/** The tables that come with the product. */
export const tables: Tables = readTables(inProject('potentials'));

/** The wording that comes with the product. */
export const wording: Wording = (() => {
  const files = readdirSync(inProject('templates')).sort();
  const templates = new Map(files.map((file) => [file, readFileSync(inProject(`templates/${file}`), 'utf8')]));
  return wordingOf(templates, digestOf([...templates].flat().join('\n')));
})();

/** Seeds to try: few by default, many with COUPLET_FULL=1 (soak). */
export const seeds = (few: number): string[] =>
  Array.from({ length: process.env.COUPLET_FULL ? few * 10 : few }, (_, at) => `seed ${at}`);
