import { Fault } from '../exact/fault.ts';
import type { Desk } from './desk.ts';
import { type Given, OPTIONS, type OptionName } from './options.ts';

/** What a command takes besides options, such as the record of `again`. */
export interface Operand {
  /** as help shows it, in capitals */
  readonly name: string;
  readonly help: string;
  readonly count: 'one' | 'at most one';
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
  run(given: Given<K>, operand: string | undefined, desk: Desk): Promise<void>;
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
      const values = spec.options.map((name) => [name, OPTIONS[name].read(typed.get(name) ?? [], name)] as const);
      return run(Object.fromEntries(values) as Given<K>, operandOf(spec, operands), desk);
    },
  };
}

function operandOf(spec: Pick<Command, 'name' | 'operand'>, operands: readonly string[]): string | undefined {
  const most = spec.operand === undefined ? 0 : 1;
  const extra = operands[most];
  if (extra !== undefined) {
    const expected = most === 0 ? 'only options' : `one ${spec.operand!.name}`;
    throw new Fault('too-many-operands', `expected ${expected} after \`couplet ${spec.name}\`, found \`${extra}\` as well`);
  }
  if (spec.operand?.count === 'one' && operands.length === 0) {
    throw new Fault('missing-operand', `expected ${spec.operand.name} after \`couplet ${spec.name}\`: ${spec.operand.help}`);
  }
  return operands[0];
}
