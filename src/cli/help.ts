import yargs, { type Argv } from 'yargs';
import { type Command, shownOperand } from './command.ts';
import { OPTIONS, typedName } from './options.ts';

/** One width for every terminal, so that the pages can be held by tests. */
const HELP_WIDTH = 100;

/** The page that lists the commands. */
export function overviewPage(commands: readonly Command[]): string {
  const about = 'Question sheets on redox and transition metals, with the mark scheme worked out beside each.';
  const parser = frame().usage(`couplet COMMAND [options]\n\n${about}`);
  for (const { name, summary } of commands) parser.command(name, summary);
  return pageOf(
    parser
      .epilogue('`couplet COMMAND --help` says more about one command.')
      .help('help', 'show this page')
      .version('version', 'show the version', '')
      .group(['help', 'version'], 'Help:'),
  );
}

/** A command's own page. */
export function commandPage({ name, summary, operand, options, example }: Command): string {
  const said = operand === undefined ? '' : `\n\n${operand.name}: ${operand.help}`;
  const parser = frame().usage(`couplet ${name}${shownOperand(operand)} [options]\n\n${sentence(summary)}${said}`);
  for (const option of options) {
    const { group, help, isSwitch } = OPTIONS[option] as { group: string; help: string; isSwitch?: true };
    // no type for options with a value: help would say [string] on every line
    parser.option(typedName(option), isSwitch ? { group, describe: help, type: 'boolean' } : { group, describe: help });
  }
  return pageOf(parser.example(example.line, example.does).version(false).help('help', 'show this page').group('help', 'Help:'));
}

function frame(): Argv {
  return yargs([]).scriptName('couplet').locale('en').wrap(HELP_WIDTH).exitProcess(false) as Argv;
}

/** That an option without a value is `[boolean]` helps no teacher; where a line is full, the word stands on one of its own. */
function pageOf(parser: Argv): string {
  let page = '';
  parser.showHelp((help: string) => {
    page = help;
  });
  return page.replace(/\n? +\[boolean\]$/gm, '').trimEnd();
}

function sentence(summary: string): string {
  return `${summary.charAt(0).toUpperCase()}${summary.slice(1)}.`;
}
