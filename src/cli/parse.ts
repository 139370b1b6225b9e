import { Parser } from 'yargs/helpers';
import { Fault } from '../exact/fault.ts';
import type { Command } from './command.ts';
import { didYouMean } from './did-you-mean.ts';
import { OPTIONS, typedName } from './options.ts';

/** What a command line asks for: a command to perform, or a page of help (of one command, or the list), or the version. */
export type Parsed =
  | { readonly command: Command; readonly typed: ReadonlyMap<string, readonly string[]>; readonly operands: readonly string[] }
  | { readonly helpOn: Command | 'all'; readonly asked: boolean }
  | 'version';

/** yargs left to itself turns `2.50` into 2.5, lets a list swallow operands, and reads dots and capitals into names. */
const PLAIN = {
  'boolean-negation': false,
  'camel-case-expansion': false,
  'dot-notation': false,
  'greedy-arrays': false,
  'parse-numbers': false,
  'parse-positional-numbers': false,
  'short-option-groups': false,
};

/**
 * Reads a command line. Only the parser of yargs is loaded for it: the rest, which writes pages of help, would take longer to load than a
 * calculator takes to answer.
 * @param commands by name, each loaded when it is called
 * @throws Fault for an unknown command or option, or an option without its value
 */
export async function parse(args: readonly string[], commands: ReadonlyMap<string, () => Promise<Command>>): Promise<Parsed> {
  const [word, ...rest] = args;
  if (word === undefined) return { helpOn: 'all', asked: false };
  const command = await commands.get(word)?.();
  if (command) return parseCommand(rest, command);
  const { help, version } = argvOf(args, ['version']);
  if (help === true) return { helpOn: 'all', asked: true };
  if (version === true) return 'version';
  const hint = didYouMean(word, [...commands.keys()]) || '; `couplet --help` lists them';
  throw new Fault('unknown-command', `expected a command first, such as \`sheet\`, found \`${word}\`${hint}`);
}

function parseCommand(args: readonly string[], command: Command): Parsed {
  const argv = argvOf(args, command.options.filter((option) => 'isSwitch' in OPTIONS[option]).map(typedName));
  return argv.help === true ? { helpOn: command, asked: true } : read(command, argv);
}

/** @param switches options that take no value, beside `help` */
function argvOf(args: readonly string[], switches: readonly string[]): Record<string, unknown> {
  return Parser([...args], { boolean: ['help', ...switches], configuration: PLAIN });
}

function read(command: Command, argv: Record<string, unknown>): Parsed {
  const typed = new Map<string, readonly string[]>();
  for (const [name, value] of Object.entries(argv)) {
    if (name === '_' || name === 'help') continue;
    const known = command.options.find((option) => typedName(option) === name);
    if (known === undefined) throw unknownOption(name, command);
    typed.set(name, textsOf(name, value, 'isSwitch' in OPTIONS[known]));
  }
  return { command, typed, operands: (argv._ as string[]).map(String) };
}

/** The parser gives a text, `true` for an option that nothing followed, or a list of these when it was repeated. */
function textsOf(name: string, value: unknown, isSwitch: boolean): string[] {
  const values = Array.isArray(value) ? value : [value];
  if (isSwitch) return values.filter((each) => each === true).map(() => '');
  if (values.some((each) => typeof each !== 'string' || each === '')) {
    throw new Fault(
      'missing-value',
      `expected a value after \`--${name}\`; a value that starts with a dash is written \`--${name}=-…\``,
    );
  }
  return values as string[];
}

function unknownOption(name: string, command: Command): Fault {
  const found = `${name.length === 1 ? '-' : '--'}${name}`;
  const hint = didYouMean(
    found,
    ['help', ...command.options.map(typedName)].map((option) => `--${option}`),
  );
  const message = `expected an option of \`couplet ${command.name}\`, found \`${found}\``;
  return new Fault('unknown-option', `${message}${hint || `; \`couplet ${command.name} --help\` lists them`}`);
}
