import { Fault, Faults, type Place } from '../exact/fault.ts';
import { missingOperand, type Operand } from './command.ts';
import type { Desk } from './desk.ts';

/** One thing to work on, as it was typed, and where it stands when that is a line of standard input. */
export interface Input {
  readonly text: string;
  readonly place: Place;
}

/**
 * The operands of a command, or the lines on standard input when there are none; empty lines are skipped.
 * @throws Fault `missing-operand` when there is neither
 */
export async function inputsOf(
  about: { readonly name: string; readonly operand: Operand },
  operands: readonly string[],
  desk: Desk,
): Promise<Input[]> {
  if (operands.length > 0) return operands.map((text) => ({ text, place: {} }));
  const lines = ((await desk.input()) ?? '').replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const inputs = lines.flatMap((line, at) =>
    line.trim() === '' ? [] : [{ text: line.trim(), place: { file: 'standard input', line: at + 1 } }],
  );
  if (inputs.length === 0) throw missingOperand(about);
  return inputs;
}

/**
 * Works on every input. The faults of all of them are told together, each underlined in its input.
 * @throws Fault, or Faults when several inputs have one
 */
export function answersTo<T>(inputs: readonly Input[], work: (text: string) => T): T[] {
  const faults: Fault[] = [];
  const answers = inputs.flatMap((input) => {
    try {
      return [work(input.text)];
    } catch (error) {
      faults.push(...faultsIn(error, input));
      return [];
    }
  });
  if (faults.length === 1) throw faults[0]!;
  if (faults.length > 1) throw new Faults(faults);
  return answers;
}

/** Faults with the place of their input. Anything else is a fault of ours and thrown on. */
function faultsIn(error: unknown, input: Input): Fault[] {
  if (error instanceof Faults) return error.faults.map((fault) => placed(fault, input));
  if (error instanceof Fault) return [placed(error, input)];
  throw error;
}

/** A fault that stands in no file and underlines nothing is the whole input's. */
function placed({ code, message, place }: Fault, input: Input): Fault {
  if (place.file !== undefined) return new Fault(code, message, place);
  const shown = place.text === undefined ? { text: input.text, at: 0, length: input.text.length } : {};
  return new Fault(code, message, { ...place, ...shown, ...input.place });
}
