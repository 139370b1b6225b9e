import { Fault } from '../exact/fault.ts';
import { type Dict, Name, Ref, Text, type Value } from './value.ts';

const SPACE = /[\0\t\n\f\r ]/;
const DELIMITER = /[\0\t\n\f\r ()<>[\]{}/%]/;

/** An operator of a content stream, or a keyword such as `obj`. */
export class Keyword {
  readonly value: string;
  constructor(value: string) {
    this.value = value;
  }
}

/** Reads PDF syntax from text with one character for each byte. */
export class Scanner {
  readonly text: string;
  at: number;

  constructor(text: string, at = 0) {
    this.text = text;
    this.at = at;
  }

  /** Next value or keyword; undefined at the end. */
  next(): Value | Keyword | undefined {
    this.#skip();
    const character = this.text[this.at];
    if (character === undefined) return undefined;
    if (character === '/') return this.#name();
    if (character === '(') return this.#literal();
    if (character === '[') return this.#array();
    if (character === '<') return this.text[this.at + 1] === '<' ? this.#dict() : this.#hex();
    return this.#word();
  }

  /** Next value; a reference when an object number and a generation are followed by R. */
  value(): Value {
    const found = this.next();
    if (found === undefined || found instanceof Keyword)
      throw this.#bad(`expected a value, found ${found ? `\`${found.value}\`` : 'the end'}`);
    return found;
  }

  #skip(): void {
    for (;;) {
      while (SPACE.test(this.text[this.at] ?? 'x')) this.at++;
      if (this.text[this.at] !== '%') return;
      while (this.at < this.text.length && !/[\r\n]/.test(this.text[this.at]!)) this.at++;
    }
  }

  #name(): Name {
    const start = ++this.at;
    while (this.at < this.text.length && !DELIMITER.test(this.text[this.at]!)) this.at++;
    return new Name(
      this.text
        .slice(start, this.at)
        .replace(/#([0-9A-Fa-f]{2})/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16))),
    );
  }

  #word(): Value | Keyword {
    const start = this.at;
    while (this.at < this.text.length && !DELIMITER.test(this.text[this.at]!)) this.at++;
    if (this.at === start) throw this.#bad(`unexpected \`${this.text[this.at]}\``);
    const word = this.text.slice(start, this.at);
    if (/^[+-]?(\d+\.?\d*|\.\d+)$/.test(word)) return this.#numberOrRef(word);
    if (word === 'true' || word === 'false') return word === 'true';
    return word === 'null' ? null : new Keyword(word);
  }

  #numberOrRef(word: string): number | Ref {
    if (/^\d+$/.test(word)) {
      REST_OF_REF.lastIndex = this.at;
      const rest = REST_OF_REF.exec(this.text);
      if (rest) {
        this.at = REST_OF_REF.lastIndex;
        return new Ref(Number(word));
      }
    }
    return Number(word);
  }

  #literal(): Text {
    let depth = 0;
    let bytes = '';
    for (; this.at < this.text.length; this.at++) {
      const character = this.text[this.at]!;
      if (character === '\\') bytes += this.#escape();
      else {
        if (character === '(' && depth++ === 0) continue;
        if (character === ')' && --depth === 0) {
          this.at++;
          return new Text(bytes);
        }
        bytes += character;
      }
    }
    throw this.#bad('expected `)` at the end of a string');
  }

  /** The character after a backslash; leaves the place on its last character. */
  #escape(): string {
    const octal = /^[0-7]{1,3}/.exec(this.text.slice(this.at + 1, this.at + 4));
    if (octal) {
      this.at += octal[0].length;
      return String.fromCharCode(Number.parseInt(octal[0], 8) & 255);
    }
    const character = this.text[++this.at] ?? '';
    return ESCAPES[character] ?? character;
  }

  #hex(): Text {
    const end = this.text.indexOf('>', this.at);
    if (end < 0) throw this.#bad('expected `>` at the end of a string');
    const digits = this.text.slice(this.at + 1, end).replace(/\s/g, '');
    this.at = end + 1;
    const even = digits.length % 2 ? `${digits}0` : digits;
    let bytes = '';
    for (let i = 0; i < even.length; i += 2) bytes += String.fromCharCode(Number.parseInt(even.slice(i, i + 2), 16));
    return new Text(bytes);
  }

  #array(): readonly Value[] {
    this.at++;
    const values: Value[] = [];
    for (;;) {
      this.#skip();
      if (this.text[this.at] === ']') {
        this.at++;
        return values;
      }
      values.push(this.value());
    }
  }

  #dict(): Dict {
    this.at += 2;
    const entries = new Map<string, Value>();
    for (;;) {
      this.#skip();
      if (this.text.startsWith('>>', this.at)) {
        this.at += 2;
        return entries;
      }
      const key = this.value();
      if (!(key instanceof Name)) throw this.#bad('expected a name as a key');
      entries.set(key.value, this.value());
    }
  }

  #bad(message: string): Fault {
    return new Fault('bad-pdf', `${message} (byte ${this.at} of what was read)`);
  }
}

const REST_OF_REF = /\s+\d+\s+R(?![A-Za-z0-9])/y;

const ESCAPES: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f', '\n': '' };
