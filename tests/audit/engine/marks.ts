import { COLOUR_WORDS } from '../chemistry/colours.ts';
import { canonical } from '../chemistry/sides.ts';
import type { Token } from '../reading/tokens.ts';
import { numberMark } from './answer.ts';

/** What is looked for in plain words beside chemistry and figures, which are always seen. */
export interface Vocabulary {
  /** finds labels of things on the page; its first group is the label */
  readonly labels?: RegExp;
  readonly colours?: boolean;
  readonly numbers?: boolean;
  /** a word of the auditor's own for each way of saying a thing */
  readonly words?: Readonly<Record<string, RegExp>>;
}

const NUMBERS = /(?<![\w.^(-])[+\u2212]?(?:\d*[½⅓⅔]|\d+\/\d+|\d+(?:\.\d+)?)(?![\w%+-]|\.\d)/g;
const RATIO = /(\d+) : (\d+)/g;

/** Everything in a run that says something which can be computed, in reading order. */
export function marksIn(tokens: readonly Token[], vocabulary: Vocabulary = {}): string[] {
  return tokens.flatMap((token) => marksOfToken(token, vocabulary));
}

function marksOfToken(token: Token, vocabulary: Vocabulary): string[] {
  switch (token.kind) {
    case 'words':
      return marksInWords(token.text, vocabulary);
    case 'species':
      return [`species ${token.species.key}`];
    case 'equation':
      return [`equation ${canonical(token.equation)}`];
    case 'number':
      return [numberMark(token.number.text, token.unit)];
    case 'ratio':
      return [`ratio ${token.left} : ${token.right}`];
    case 'unit':
      return [`unit ${token.unit}`];
    case 'symbol':
      return marksIn(token.of, vocabulary);
    case 'fraction':
      return marksIn([...token.above, ...token.below], vocabulary);
    case 'unread':
      return [`unread ${token.text}`];
    case 'gap':
      return [];
  }
}

function marksInWords(text: string, { labels, colours, numbers, words }: Vocabulary): string[] {
  const found: { at: number; end: number; mark: string }[] = [];
  const look = (pattern: RegExp, mark: (match: RegExpMatchArray) => string) => {
    const global = pattern.global ? pattern : new RegExp(pattern.source, `${pattern.flags}g`);
    for (const match of text.matchAll(global)) {
      const [at, end] = [match.index, match.index + match[0].length];
      // What stands inside something already read is part of it: the 1 of `1 : 2`, the green of `blue-green`.
      if (!found.some((each) => at < each.end && each.at < end)) found.push({ at, end, mark: mark(match) });
    }
  };
  for (const [word, pattern] of Object.entries(words ?? {})) look(pattern, () => `word ${word}`);
  if (labels) look(labels, ([, label]) => `label ${label}`);
  if (colours) look(COLOUR_WORDS, ([colour]) => `colour ${colour.toLowerCase()}`);
  if (numbers) look(RATIO, ([, left, right]) => `ratio ${left} : ${right}`);
  if (numbers) look(NUMBERS, ([number]) => `number ${number}`);
  return found.sort((a, b) => a.at - b.at).map(({ mark }) => mark);
}

/** @returns in words what differs between the marks expected and those found; nothing when they agree */
export function difference(expected: readonly string[], found: readonly string[]): string | undefined {
  const agree = expected.length === found.length && expected.every((mark, at) => agrees(mark, found[at]!));
  return agree ? undefined : `expected ${told(expected)}, found ${told(found)}`;
}

export function agrees(expected: string, found: string): boolean {
  if (expected === found) return true;
  const [kind = '', ...rest] = expected.split(' ');
  return (
    expected.includes('|') &&
    found.startsWith(`${kind} `) &&
    rest
      .join(' ')
      .split('|')
      .includes(found.slice(kind.length + 1))
  );
}

const told = (marks: readonly string[]): string => (marks.length === 0 ? 'nothing' : marks.map((mark) => `[${mark}]`).join(' '));
