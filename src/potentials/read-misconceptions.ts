import type { FaultList } from './fault-list.ts';
import type { Misconception } from './tables.ts';

const MOST_WORDS = 30;
const TEXTS = ['id', 'name', 'reasoning', 'feedback'] as const;

/**
 * The named misconceptions. Each gives `id`, `name`, `reasoning`, `feedback` of at most 30 words and `evidence`, a list of ids
 * of the file's `sources`; ids are not repeated.
 */
export function readMisconceptions(file: string, text: string, faults: FaultList): Map<string, Misconception> {
  const found = new Map<string, Misconception>();
  const data = parse(file, text, faults);
  if (!data) return found;
  for (const [index, entry] of data.misconceptions.entries()) {
    const id = typeof entry.id === 'string' ? entry.id : undefined;
    const place = { file, line: id === undefined ? 1 : lineOf(text, `"${id}"`) };
    const told = id ?? `number ${index + 1}`;
    for (const key of TEXTS) {
      if (typeof entry[key] !== 'string' || entry[key] === '')
        faults.add('missing', `misconception ${told}: expected a text \`${key}\``, place);
    }
    const evidence = Array.isArray(entry.evidence) ? entry.evidence.filter((part) => typeof part === 'string') : [];
    if (evidence.length === 0) faults.add('missing', `misconception ${told}: expected at least one piece of evidence`, place);
    for (const key of evidence) {
      if (!(key in data.sources)) faults.add('unknown-source', `misconception ${told}: no source is called \`${key}\``, place);
    }
    const misconception = {
      id: told,
      name: `${entry.name}`,
      reasoning: `${entry.reasoning}`,
      feedback: `${entry.feedback}`,
      evidence,
    };
    const words = misconception.feedback.trim().split(/\s+/).length;
    if (words > MOST_WORDS)
      faults.add('long-feedback', `misconception ${told}: feedback has at most ${MOST_WORDS} words, found ${words}`, place);
    if (found.has(told)) faults.add('doubled-misconception', `misconception ${told} stands twice`, place);
    found.set(told, misconception);
  }
  return found;
}

interface Data {
  readonly sources: Readonly<Record<string, unknown>>;
  readonly misconceptions: readonly Readonly<Record<string, unknown>>[];
}

function parse(file: string, text: string, faults: FaultList): Data | undefined {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    const at = Number(/position (\d+)/.exec(`${error}`)?.[1] ?? 0);
    const line = text.slice(0, at).split('\n').length;
    faults.add('bad-json', 'expected JSON; look for a missing comma, quote or bracket here', { file, line });
    return undefined;
  }
  const { sources, misconceptions } = (typeof data === 'object' && data !== null ? data : {}) as Partial<Data>;
  if (
    typeof sources === 'object' &&
    Array.isArray(misconceptions) &&
    misconceptions.every((entry) => typeof entry === 'object' && entry)
  ) {
    return { sources, misconceptions };
  }
  faults.add('bad-json', 'expected `sources`, and `misconceptions`, a list', { file, line: 1 });
  return undefined;
}

/** The line (1-based) on which a piece of text last begins: an id stands once as the value of `id`. */
function lineOf(text: string, piece: string): number {
  const at = text.search(new RegExp(`"id":\\s*${piece.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`));
  return text.slice(0, Math.max(at, 0)).split('\n').length;
}
