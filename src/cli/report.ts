import { Fault, Faults, type Place } from '../exact/fault.ts';
import { underline } from './underline.ts';

/** What is said of something that went wrong, and the exit status it ends with. */
export interface Report {
  readonly text: string;
  readonly status: 1 | 2;
}

/** What helps to find a fault of ours. */
export interface Circumstances {
  readonly version: string;
  readonly args: readonly string[];
  readonly seed: string | undefined;
  /** print where in the program it happened */
  readonly trace: boolean;
}

/** A mistake of the user's is told in words they can act on (status 2); anything else is ours (status 1). */
export function reportOf(error: unknown, circumstances: Circumstances): Report {
  const faults = error instanceof Faults ? error.faults : error instanceof Fault ? [error] : undefined;
  if (faults === undefined) return { text: ours(error, circumstances), status: 1 };
  const count = faults.length > 1 ? [`${faults.length} faults`] : [];
  const traces = circumstances.trace ? [stackOf(error)] : [];
  return { text: [...faults.map(tell), ...count, ...traces].join('\n'), status: 2 };
}

function tell(fault: Fault): string {
  const { text, at, length } = fault.place;
  const shown = text === undefined ? '' : `\n${underline(text, at, length)}`;
  return `${whereOf(fault.place)}: ${visible(fault.message)}${shown}`;
}

/** `file:line:column`, as editors open it; the program's name when the fault is in no file. */
function whereOf({ file, line, column }: Place): string {
  if (file === undefined) return 'couplet';
  return [visible(file), line, line === undefined ? undefined : column].filter((part) => part !== undefined).join(':');
}

function ours(error: unknown, { version, args, seed, trace }: Circumstances): string {
  const message = error instanceof Error ? error.message : String(error);
  const lines = [
    `couplet: this is a fault of couplet, not of what you gave it: ${visible(message)}`,
    'Please report it to whoever looks after couplet for you, with these lines:',
    `  version: couplet ${version}, Node ${process.versions.node}, ${process.platform} ${process.arch}`,
    `  command: couplet ${args.map(quoted).join(' ')}`,
    ...(seed === undefined ? [] : [`  seed: ${quoted(seed)}`]),
  ];
  const more = trace ? stackOf(error) : '  (COUPLET_TRACE=1 before the command shows where in the program it happened)';
  return [...lines, more].join('\n');
}

function stackOf(error: unknown): string {
  return error instanceof Error && error.stack !== undefined ? error.stack : String(error);
}

/** As it can be typed again. */
function quoted(word: string): string {
  return /^[\w./:=,+-]+$/.test(word) ? word : `'${visible(word).replaceAll("'", `'\\''`)}'`;
}

/** Control characters shown, not obeyed: a message may quote anything that a file held. */
function visible(text: string): string {
  return text.replace(/[^\P{Cc}\n]/gu, (character) => `\\x${character.charCodeAt(0).toString(16).padStart(2, '0')}`);
}
