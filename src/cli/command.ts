import { Fault } from '../exact/fault.ts';
import type { Desk } from './desk.ts';
import { type Given, OPTIONS, type OptionName, typedName } from './options.ts';

/** What a command takes besides options, such as the record of `again`. */
export interface Operand {
  /** as help shows it, in capitals; as many names as are wanted: `NEGATIVE POSITIVE` */
  readonly name: string;
  readonly help: string;
  /** `some` are none when lines on standard input stand in for them */
  readonly count: keyof typeof COUNTS;
}

/** How many operands a command takes, and how help shows them. */
const COUNTS = {
  one: { least: 1, most: 1, shown: (name: string) => name },
  'at most one': { least: 0, most: 1, shown: (name: string) => `[${name}]` },
  'at most two': { least: 0, most: 2, shown: (name: string) => `[${name}]` },
  'at most three': { least: 0, most: 3, shown: (name: string) => `[${name}]` },
  some: { least: 0, most: Number.POSITIVE_INFINITY, shown: (name: string) => `[${name}…]` },
};

/** The operands as a usage line shows them; empty for none. */
export function shownOperand(operand: Operand | undefined): string {
  return operand === undefined ? '' : ` ${COUNTS[operand.count].shown(operand.name)}`;
}

/** What a command's file holds. */
export interface CommandSpec<K extends OptionName> {
  readonly name: string;
  /** one line for the list of commands */
  readonly summary: string;
  readonly operand?: Operand;
  readonly options: readonly K[];
  readonly example: { readonly line: string; readonly does: string };
  /** Heavy rooms are imported inside, so that other commands start without them. */
  run(given: Given<K>, operands: readonly string[], desk: Desk): Promise<void>;
}

/** A command with its options' types sealed inside, so that the list of commands holds all of one type. */
export interface Command extends Omit<CommandSpec<OptionName>, 'run'> {
  /** @param typed texts that followed each option */
  perform(typed: ReadonlyMap<string, readonly string[]>, operands: readonly string[], desk: Desk): Promise<void>;
}

export function command<K extends OptionName>(spec: CommandSpec<K>): Command {
  const { run, ...about } = spec;
  return {
    ...about,
    perform: (typed, operands, desk) => {
      const values = spec.options.map(
        (name) => [name, OPTIONS[name].read(typed.get(typedName(name)) ?? [], typedName(name))] as const,
      );
      return run(Object.fromEntries(values) as Given<K>, counted(spec, operands), desk);
    },
  };
}

function counted({ name, operand }: Pick<Command, 'name' | 'operand'>, operands: readonly string[]): readonly string[] {
  const { least, most } = operand === undefined ? { least: 0, most: 0 } : COUNTS[operand.count];
  const extra = operands[most];
  if (extra !== undefined) {
    const expected = most === 0 ? 'only options' : most === 1 ? `one ${operand!.name}` : operand!.name;
    throw new Fault('too-many-operands', `expected ${expected} after \`couplet ${name}\`, found \`${extra}\` as well`);
  }
  if (operands.length < least) throw missingOperand({ name, operand: operand! });
  return operands;
}

/** That a command was typed without what it works on. */
export function missingOperand({ name, operand }: { readonly name: string; readonly operand: Operand }): Fault {
  return new Fault('missing-operand', `expected ${operand.name} after \`couplet ${name}\`: ${operand.help}`);
}
