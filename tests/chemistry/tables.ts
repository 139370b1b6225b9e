import { fileURLToPath } from 'node:url';
import { readTables } from '../../src/potentials/read-tables.ts';

/** The default table, read once for a test file. */
export const tables = readTables(fileURLToPath(new URL('../../potentials', import.meta.url)));
