import { Fault } from '../exact/fault.ts';
import { didYouMean } from './did-you-mean.ts';

/** What the command line knows of one option: a row of the options table. Help and parsing both follow from it. */
export interface Option<T> {
  /** for the help page; says the values and what holds when the option is absent */
  readonly help: string;
  /** heading it stands under in the help page */
  readonly group: string;
  /** an option that is there or not, and takes no value */
  readonly isSwitch?: true;
  /** as it is typed, where that is not the name of its row: two commands may read one option in two ways */
  readonly typed?: string;
  /**
   * @param given the texts that followed the option, in order; none when it is absent
   * @param name of the option, for what is said of a fault
   */
  read(given: readonly string[], name: string): T;
}

/** The start of an option's row: where and how help shows it. */
interface About {
  readonly group: string;
  readonly help: string;
}

export function text(about: About): Option<string | undefined> {
  return { ...about, read: (given, name) => readOnce(given, name) };
}

/** There or not there. */
export function flag(about: About): Option<boolean> {
  return { ...about, isSwitch: true, read: (given) => given.length > 0 };
}

/** One word of a few; the first is taken when the option is absent. The record holds what each word means, where it needs saying. */
export function oneOf<V extends string>(
  about: About,
  words: Readonly<Record<V, string>>,
  known: readonly V[] = Object.keys(words) as V[],
): Option<V> {
  const meanings = known.map((word) => (words[word] === '' ? word : `${word} (${words[word]})`));
  return {
    ...about,
    help: `${about.help}: ${inWords(meanings)}; ${known[0]} unless said`,
    read: (given, name) => oneWord(readOnce(given, name) ?? known[0]!, name, known),
  };
}

/** Words from a few, the option repeated or the words parted by commas. */
export function someOf<V extends string>(about: About, words: Readonly<Record<V, string>>): Option<V[]> {
  const known = Object.keys(words) as V[];
  const { read } = listOf(about);
  return {
    ...about,
    help: `${about.help}: ${known.join(', ')}`,
    read: (given, name) => read(given, name).map((word) => oneWord(word, name, known)),
  };
}

/** Any words, the option repeated or the words parted by commas; each once. */
export function listOf(about: About): Option<string[]> {
  return {
    ...about,
    read: (given, name) => {
      const words = given.flatMap((each) => each.split(',').map((word) => word.trim()));
      if (words.includes('')) throw badValue(name, given.join(','), 'a word', '');
      return [...new Set(words)];
    },
  };
}

/** A whole number within limits. */
export function whole(about: About, least: number, most: number): Option<number | undefined> {
  return {
    ...about,
    read: (given, name) => {
      const found = readOnce(given, name);
      if (found === undefined) return undefined;
      if (/^\d{1,9}$/.test(found) && Number(found) >= least && Number(found) <= most) return Number(found);
      throw badValue(name, found, `a whole number from ${least} to ${most}`);
    },
  };
}

/** A share from 0 to 1, such as 0.25; 0 when the option is absent. */
export function share(about: About): Option<number> {
  return {
    ...about,
    read: (given, name) => {
      const found = readOnce(given, name) ?? '0';
      if (/^(0(\.\d+)?|\.\d+|1(\.0+)?)$/.test(found)) return Number(found);
      throw badValue(name, found, 'a share from 0 to 1, such as 0.25');
    },
  };
}

/** A fault in an option's value, underlined as it was typed. */
export function badValue(name: string, found: string, expected: string, hint = ''): Fault {
  const typed = `--${name} ${found}`;
  const place = { text: typed, at: name.length + 3, length: found.length };
  return new Fault('bad-option', `after \`--${name}\`, expected ${expected}, found \`${found}\`${hint}`, place);
}

function oneWord<V extends string>(found: string, name: string, known: readonly V[]): V {
  const word = known.find((each) => each === found);
  if (word === undefined) throw badValue(name, found, inWords(known), didYouMean(found, known));
  return word;
}

function readOnce(given: readonly string[], name: string): string | undefined {
  if (given.length > 1) throw new Fault('doubled-option', `expected \`--${name}\` once, found it ${given.length} times`);
  return given[0];
}

/** `a, b or c` */
function inWords(words: readonly string[]): string {
  return [words.slice(0, -1).join(', '), words.at(-1)].filter((part) => part !== '').join(' or ');
}
