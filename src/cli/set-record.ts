import { readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Fault } from '../exact/fault.ts';
import { readRecord } from '../papers/read-record.ts';
import type { PaperRecord } from '../papers/record.ts';
import { DEFAULT_SETTINGS, type Settings } from '../printers/pdf/settings.ts';
import { EXTRA_NAMES, type Extra } from './extra-names.ts';
import { PAGES, PRINT_ORDER, SIDES, TINTS } from './options.ts';
import { systemFault } from './system-fault.ts';

/** What `record.json` holds: the paper's record, and how its pages were set. */
export interface SetRecord extends PaperRecord {
  readonly page: Settings;
  readonly extras: readonly Extra[];
}

export function writtenRecord(record: SetRecord): string {
  return `${JSON.stringify(record, undefined, 2)}\n`;
}

/**
 * Reads a record.
 * @param path of the file, or of the folder of its set
 * @throws Fault or Faults naming the file when it cannot be read or is no record
 */
export function readSetRecord(path: string): SetRecord {
  const file = isFolder(path) ? join(path, 'record.json') : path;
  const record = readRecord(textOf(file), file);
  const page: unknown = 'page' in record ? record.page : {};
  if (typeof page !== 'object' || page === null) throw new Fault('bad-record', '`page`: expected an object', { file });
  const settings = { ...DEFAULT_SETTINGS, ...page } as Settings;
  checkPage(settings, file);
  const { withoutColourRecall }: { withoutColourRecall?: unknown } = record.request;
  if (withoutColourRecall !== undefined && typeof withoutColourRecall !== 'boolean')
    throw new Fault('bad-record', '`request.withoutColourRecall`: expected true or false', { file });
  const extras: unknown = 'extras' in record ? record.extras : [];
  if (!Array.isArray(extras) || !extras.every(isExtra)) {
    throw new Fault('bad-record', `\`extras\`: expected a list of ${EXTRA_NAMES.join(', ')}`, { file });
  }
  return { ...record, page: settings, extras };
}

/** @throws Fault for a setting that pages cannot be made with */
function checkPage(settings: Settings, file: string): void {
  const words = { paper: Object.keys(PAGES), print: PRINT_ORDER, sides: Object.keys(SIDES), tint: Object.keys(TINTS) };
  for (const [name, known] of Object.entries(words)) {
    const found: unknown = settings[name as keyof typeof words] ?? known[0];
    if (!known.some((word) => word === found))
      throw new Fault('bad-record', `\`page.${name}\`: expected ${known.join(' or ')}, found \`${found}\``, { file });
  }
}

function isExtra(word: unknown): word is Extra {
  return EXTRA_NAMES.some((name) => name === word);
}

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    throw systemFault('cannot-read', `to read the record \`${file}\``, error);
  }
}

/** The folder in which a record lies, given the record or the folder itself. */
export function folderOfRecord(path: string): string {
  return isFolder(path) ? path : dirname(path);
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}
