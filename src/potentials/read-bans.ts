import type { FaultList } from './fault-list.ts';
import type { Told } from './read-facts.ts';
import { keysIn } from './read-formula.ts';
import { readSheet } from './sheet.ts';
import type { Ban } from './tables.ts';
import { MEDIA } from './vocabulary.ts';

const COLUMNS = ['first', 'second', 'media', 'where', 'unless', 'because', 'source'];
const PLACES = ['reagents', 'salt bridge', 'procedure'] as const;

/** What is never put together, each with its row for faults found later. */
export function readBans(file: string, text: string, faults: FaultList): Told<Ban>[] {
  return readSheet(file, text, { needed: COLUMNS }, faults).flatMap((row) => {
    row.required('first');
    row.required('second');
    const where = row.oneOf('where', PLACES);
    const media = row.listOf('media', MEDIA);
    if (!where) return [];
    const fact: Ban = {
      first: keysIn(row, 'first'),
      second: keysIn(row, 'second', true),
      ...(media.length > 0 ? { media } : {}),
      where,
      unless: keysIn(row, 'unless'),
      because: row.required('because'),
      source: row.required('source'),
    };
    return { fact, row };
  });
}
