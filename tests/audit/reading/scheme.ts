import type { PlainDocument, PlainInline, PlainPoint, PlainScheme, PlainSeen } from '../plain.ts';
import { runText } from './inline-text.ts';
import { readLine } from './sheet.ts';
import { type Token, tokensOf } from './tokens.ts';

export interface ReadPoint {
  /** the step that the point marks and its kind: `equation:value` */
  readonly role: string;
  readonly step: string;
  readonly earns: readonly Token[];
  readonly text: string;
  readonly also: readonly (readonly Token[])[];
  readonly not: readonly (readonly Token[])[];
  readonly ignore: readonly (readonly Token[])[];
  readonly carries: boolean;
  readonly given: readonly string[];
}

export interface ReadRow {
  /** misconceptions that lead to the figure, first the one that stands in the words */
  readonly slips: readonly string[];
  readonly wrote: readonly Token[];
  readonly wroteText: string;
  readonly happened: string;
  readonly told: readonly Token[];
  readonly earns: string;
}

export interface ReadScheme {
  readonly label: string;
  readonly letter: string;
  readonly question: number;
  readonly marks: number;
  readonly answers: readonly (readonly Token[])[];
  /** the step that each answer is the value of */
  readonly roles: readonly string[];
  readonly points: readonly ReadPoint[];
  readonly worked: readonly { readonly left: readonly Token[]; readonly right: readonly Token[] }[];
  readonly rows: readonly ReadRow[];
}

export interface ReadMarkScheme {
  readonly facts: readonly string[];
  readonly strip: ReadonlyMap<string, string>;
  /** what the sheet can show: the name of an idea and the parts */
  readonly reveals: readonly { readonly name: string; readonly parts: readonly string[] }[];
  readonly blocks: readonly ReadScheme[];
  /** staff lines about hazards */
  readonly hazards: readonly string[];
  readonly support: string;
  readonly level: string;
  /** numbers of the questions as their headings say */
  readonly headings: readonly number[];
  /** family and code of each question, by its number */
  readonly codes: ReadonlyMap<number, { readonly family: string; readonly code: string }>;
}

export function readMarkScheme({ blocks }: PlainDocument): ReadMarkScheme {
  const head = blocks.find((block) => block.kind === 'head');
  const strip = blocks.find((block) => block.kind === 'strip');
  const small = blocks.flatMap((block) => (block.kind === 'small-print' ? block.paragraphs.map(runText) : [])).join('\n');
  const table = blocks.find((block) => block.kind === 'table');
  return {
    facts: head?.facts ?? [],
    strip: new Map(strip?.facts.map(({ label, value }) => [label, runText(value)])),
    reveals: (table?.rows ?? []).map(([name, parts]) => ({ name: runText(name!), parts: runText(parts!).split(', ') })),
    blocks: blocks.flatMap((block) => (block.kind === 'scheme' ? [readScheme(block)] : [])),
    hazards: blocks.flatMap((block) =>
      block.kind === 'list'
        ? block.items.map((item) => item.map((each) => ('content' in each ? runText(each.content) : '')).join(' '))
        : [],
    ),
    headings: blocks.flatMap((block) => {
      const number = block.kind === 'heading' ? /^Question (\d+)\b/.exec(runText(block.content))?.[1] : undefined;
      return number === undefined ? [] : [Number(number)];
    }),
    support: /\bsupport (\S+)/.exec(small)?.[1] ?? '',
    level: /\blevel (\S+)/.exec(small)?.[1] ?? '',
    codes: new Map(
      [...small.matchAll(/(\d+) ([a-z-]+) ([0-9A-Z]{8})/g)].map(([, at, family, code]) => [
        Number(at),
        { family: family!, code: code! },
      ]),
    ),
  };
}

function readScheme({ label, marks, answer, roles, points, worked, seen }: PlainScheme): ReadScheme {
  const [, question = '0', letter = ''] = /^(\d+)([a-z]?)$/.exec(label) ?? [];
  return {
    label,
    letter,
    question: Number(question),
    marks,
    answers: answer.map(tokensOf),
    roles: roles ?? [],
    points: points.map(readPoint),
    worked: worked.flatMap((block) => (block.kind === 'working' ? block.lines.map(readLine) : [])),
    rows: seen.map(readRow),
  };
}

function readPoint({ role, earns, also, not, ignore, carries, given }: PlainPoint): ReadPoint {
  const runs = (each: readonly (readonly PlainInline[])[]) => each.map(tokensOf);
  return {
    role: role ?? '',
    step: (role ?? '').replace(/:[a-z]+$/, ''),
    earns: tokensOf(earns),
    text: runText(earns),
    also: runs(also),
    not: runs(not),
    ignore: runs(ignore),
    carries,
    given: given ?? [],
  };
}

function readRow({ slips, wrote, happened, earns }: PlainSeen): ReadRow {
  return {
    slips: slips ?? [],
    wrote: tokensOf(wrote),
    wroteText: runText(wrote),
    happened: runText(happened),
    told: tokensOf(happened),
    earns: runText(earns),
  };
}
