import type { Place } from '../exact/fault.ts';
import type { FaultList } from './fault-list.ts';
import type { Misconception } from './tables.ts';

const MOST_WORDS = 30;
const TEXTS = ['id', 'name', 'reasoning', 'feedback'] as const;

/** What is kept of a study: the reference, and how much of it was read. */
interface Source {
  readonly reference: string;
  readonly read: string;
}

interface Data {
  readonly sources: Readonly<Record<string, Source>>;
  readonly misconceptions: readonly Entry[];
}

type Entry = Readonly<Record<string, unknown>>;

/**
 * The named misconceptions. Each gives `id`, `name`, `reasoning`, `feedback` of at most 30 words and `evidence`, a list of ids
 * of the file's `sources` (read as their references); ids are not repeated.
 */
export function readMisconceptions(file: string, text: string, faults: FaultList): Map<string, Misconception> {
  const found = new Map<string, Misconception>();
  const data = parse(file, text, faults);
  const lines = linesOfIds(text);
  for (const [index, entry] of data?.misconceptions.entries() ?? []) {
    const told = typeof entry.id === 'string' && entry.id !== '' ? entry.id : `number ${index + 1}`;
    const place = { file, line: lines.get(told) ?? 1 };
    const misconception = toMisconception(told, entry, data!.sources, place, faults);
    if (found.has(told)) faults.add('doubled-misconception', `misconception ${told} stands twice`, place);
    if (misconception) found.set(told, misconception);
  }
  return found;
}

function toMisconception(told: string, entry: Entry, sources: Data['sources'], place: Place, faults: FaultList) {
  const fault = (code: string, message: string): void => faults.add(code, `misconception ${told}: ${message}`, place);
  const [id = '', name = '', reasoning = '', feedback = ''] = TEXTS.map((key) => {
    const value = entry[key];
    if (typeof value === 'string' && value !== '') return value;
    fault('missing', `expected a text \`${key}\``);
    return '';
  });
  const keys = Array.isArray(entry.evidence) ? entry.evidence.filter((part) => typeof part === 'string') : [];
  if (keys.length === 0) fault('missing', 'expected at least one piece of evidence');
  const evidence = keys.flatMap((key) => {
    const source = Object.hasOwn(sources, key) ? sources[key] : undefined;
    if (!source) fault('unknown-source', `no source is called \`${key}\``);
    return source ? `${source.reference} (${source.read})` : [];
  });
  const words = feedback.trim().split(/\s+/).length;
  if (words > MOST_WORDS) fault('long-feedback', `feedback has at most ${MOST_WORDS} words, found ${words}`);
  return id === '' ? undefined : { id, name, reasoning, feedback, evidence };
}

function parse(file: string, text: string, faults: FaultList): Data | undefined {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    const at = Number(/position (\d+)/.exec(`${error}`)?.[1] ?? text.length);
    const line = text.slice(0, at).split('\n').length;
    faults.add('bad-json', 'expected JSON; look for a missing comma, quote or bracket here', { file, line });
    return undefined;
  }
  if (isData(data)) return data;
  faults.add('bad-json', 'expected `sources`, each with `reference` and `read`, and `misconceptions`, a list', { file, line: 1 });
  return undefined;
}

function isData(data: unknown): data is Data {
  if (typeof data !== 'object' || data === null) return false;
  const { sources, misconceptions } = data as Partial<Data>;
  const record = (value: unknown): value is Entry => typeof value === 'object' && value !== null;
  if (!record(sources) || !Array.isArray(misconceptions) || !misconceptions.every(record)) return false;
  return Object.values(sources).every(
    (source) => record(source) && typeof source.reference === 'string' && typeof source.read === 'string',
  );
}

/** The line (1-based) on which each id stands. */
function linesOfIds(text: string): Map<string, number> {
  const lines = text.split('\n').map((line, index) => [/"id":\s*"([^"]*)"/.exec(line)?.[1], index + 1] as const);
  return new Map(lines.flatMap(([id, line]) => (id === undefined ? [] : [[id, line] as const])));
}
