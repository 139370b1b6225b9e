import yargs, { type Argv } from 'yargs';
import { Fault } from '../exact/fault.ts';
import { type Command, shownOperand } from './command.ts';
import { didYouMean } from './did-you-mean.ts';
import { OPTIONS, typedName } from './options.ts';

/** What a command line asks for: a command to perform, or a page to show. */
export type Parsed =
  | { readonly command: Command; readonly typed: ReadonlyMap<string, readonly string[]>; readonly operands: readonly string[] }
  | { readonly page: string; readonly asked: boolean };

/** One width for every terminal, so that the pages can be held by tests. */
const HELP_WIDTH = 100;

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
 * Reads a command line.
 * @throws Fault for an unknown command or option, or an option without its value
 */
export function parse(args: readonly string[], commands: readonly Command[], version: string): Parsed {
  const [word, ...rest] = args;
  const command = commands.find(({ name }) => name === word);
  // The command's word is taken off here: yargs would set up every command, and write the help page of the one it runs, unasked.
  if (command) return parseCommand(rest, command);
  const parser = overview(commands, version);
  if (word === undefined) return { page: plain(helpOf(parser)), asked: false };
  const { page } = args.some(inheritedName) ? { page: '' } : parsed(parser, args);
  if (page !== '') return { page, asked: true };
  const names = commands.map(({ name }) => name);
  const hint = didYouMean(word, names) || '; `couplet --help` lists them';
  throw new Fault('unknown-command', `expected a command first, such as \`sheet\`, found \`${word}\`${hint}`);
}

function parseCommand(args: readonly string[], command: Command): Parsed {
  const inherited = args.map(inheritedName).find((name) => name !== undefined);
  if (inherited !== undefined) throw unknownOption(inherited, command);
  const { page, argv } = parsed(describe(command), args);
  return page === '' ? read(command, argv) : { page, asked: true };
}

/** `--constructor`, which yargs would look up among its own tables and find there: the name, or undefined for any other word. */
function inheritedName(arg: string): string | undefined {
  const name = /^--?([^=]+)/.exec(arg)?.[1];
  return name !== undefined && name in Object.prototype ? name : undefined;
}

function parsed(parser: Argv, args: readonly string[]): { page: string; argv: Record<string, unknown> } {
  let page = '';
  let argv: Record<string, unknown> = {};
  parser.parse([...args], (_error: unknown, found: Record<string, unknown>, output: string) => {
    [page, argv] = [plain(output), found];
  });
  return { page, argv };
}

function frame(): Argv {
  return yargs([]).scriptName('couplet').locale('en').wrap(HELP_WIDTH).exitProcess(false).parserConfiguration(PLAIN) as Argv;
}

/** The page that lists the commands. */
function overview(commands: readonly Command[], version: string): Argv {
  const about = 'Question sheets on redox and transition metals, with the mark scheme worked out beside each.';
  const parser = frame().usage(`couplet COMMAND [options]\n\n${about}`);
  for (const { name, summary } of commands) parser.command(name, summary);
  return parser
    .epilogue('`couplet COMMAND --help` says more about one command.')
    .help('help', 'show this page')
    .version('version', 'show the version', version)
    .group(['help', 'version'], 'Help:');
}

/** A command's own page, and which of its options take no value. */
function describe({ name, summary, operand, options, example }: Command): Argv {
  const said = operand === undefined ? '' : `\n\n${operand.name}: ${operand.help}`;
  const parser = frame().usage(`couplet ${name}${shownOperand(operand)} [options]\n\n${sentence(summary)}${said}`);
  for (const option of options) {
    const { group, help, isSwitch } = OPTIONS[option] as { group: string; help: string; isSwitch?: true };
    // no type for options with a value: help would say [string] on every line, and texts stay texts without it
    parser.option(typedName(option), isSwitch ? { group, describe: help, type: 'boolean' } : { group, describe: help });
  }
  return parser.example(example.line, example.does).version(false).help('help', 'show this page').group('help', 'Help:');
}

function read(command: Command, argv: Record<string, unknown>): Parsed {
  const typed = new Map<string, readonly string[]>();
  for (const [name, value] of Object.entries(argv)) {
    if (['_', '$0', 'help', 'version'].includes(name)) continue;
    const known = command.options.find((option) => typedName(option) === name);
    if (known === undefined) throw unknownOption(name, command);
    typed.set(name, textsOf(name, value, 'isSwitch' in OPTIONS[known]));
  }
  return { command, typed, operands: (argv._ as string[]).map(String) };
}

/** yargs gives a text, `true` for an option that nothing followed, or a list of these when it was repeated. */
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

function helpOf(parser: Argv): string {
  let page = '';
  parser.showHelp((help: string) => {
    page = help;
  });
  return page;
}

/** That an option without a value is `[boolean]` helps no teacher. */
function plain(page: string): string {
  return page.replace(/ +\[boolean\]$/gm, '').trimEnd();
}

function sentence(summary: string): string {
  return `${summary.charAt(0).toUpperCase()}${summary.slice(1)}.`;
}
