import { Fault } from '../exact/fault.ts';
import type { State } from './formula.ts';
import { type Mark, scanFormula } from './scan-formula.ts';

const STATES: readonly State[] = ['aq', 's', 'l', 'g'];

/** Walks through the marks of a formula; makes faults that underline the text as it was typed. */
export class FormulaReader {
  readonly text: string;
  readonly #marks: readonly Mark[];
  #at = 0;

  constructor(text: string) {
    this.text = text;
    this.#marks = scanFormula(text);
  }

  position(): number {
    return this.#at;
  }
  ended(): boolean {
    return this.#at >= this.#marks.length;
  }
  peek(offset = 0): string | undefined {
    return this.#marks[this.#at + offset]?.char;
  }
  take(): void {
    this.#at += 1;
  }
  skip(length: number): void {
    this.#at += length;
  }
  /** The next characters, as plain notation. */
  ahead(length: number): string {
    let text = '';
    for (let offset = 0; offset < length; offset += 1) text += this.peek(offset) ?? '';
    return text;
  }
  digitsAhead(): number {
    return this.#run(0, /\d/);
  }
  spacesAhead(): number {
    return this.#run(0, /\s/);
  }
  /** A letter and the small letters that follow it. */
  lettersAhead(): number {
    return /[A-Za-z]/.test(this.peek() ?? '') ? 1 + this.#run(1, /[a-z]/) : 0;
  }
  skipSpaces(): void {
    this.skip(this.spacesAhead());
  }
  /** The state in brackets that stands here, if one does. */
  stateAhead(): State | undefined {
    return STATES.find((state) => this.ahead(state.length + 2) === `(${state})`);
  }
  /** What stands here, in words. */
  found(): string {
    const char = this.peek();
    return char === undefined ? 'the end' : /\s/.test(char) ? 'a space' : `\`${this.text[this.#marks[this.#at]!.at]}\``;
  }

  /** A fault over the whole text from a mark to another, or to the end. */
  fault(message: string, from: number, length = this.#marks.length): Fault {
    return this.faultAt(message, from, length);
  }
  faultHere(message: string, length = 1): Fault {
    return this.faultAt(message, this.#at, length);
  }
  faultAt(message: string, from: number, length: number): Fault {
    const start = this.#marks[from]?.at ?? this.text.length;
    const last = this.#marks[Math.min(from + Math.max(length, 1), this.#marks.length) - 1]?.at ?? start;
    return new Fault('bad-formula', message, { text: this.text, at: start, length: Math.max(1, last - start + 1) });
  }

  #run(offset: number, kind: RegExp): number {
    let length = 0;
    while (kind.test(this.peek(offset + length) ?? '')) length += 1;
    return length;
  }
}
