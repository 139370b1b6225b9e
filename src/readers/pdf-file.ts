import { inflateSync } from 'node:zlib';
import { Fault } from '../exact/fault.ts';
import { Keyword, Scanner } from './scanner.ts';
import { type Dict, isArray, isDict, Name, Ref, Stream, Text, type Value } from './value.ts';

/**
 * A PDF file in memory: its objects by number. Reads files with a plain cross-reference table, which is what the printer writes;
 * cross-reference streams, object streams and encryption are refused.
 */
export class PdfFile {
  /** first line, such as `%PDF-1.7` */
  readonly header: string;
  readonly trailer: Dict;
  readonly #text: string;
  readonly #bytes: Uint8Array;
  readonly #offsets: ReadonlyMap<number, number>;
  readonly #objects = new Map<number, Value>();

  /** @throws Fault `bad-pdf` when the bytes are no such file */
  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
    this.#text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
    this.header = /^[^\r\n]*/.exec(this.#text)![0];
    if (!this.header.startsWith('%PDF-'))
      throw new Fault('bad-pdf', `expected a PDF file, found one that begins with \`${this.header.slice(0, 20)}\``);
    const { offsets, trailer } = readTable(this.#text);
    this.#offsets = offsets;
    this.trailer = trailer;
    if (trailer.has('Encrypt')) throw new Fault('bad-pdf', 'expected a file that is not encrypted');
  }

  /** Numbers of all objects in the file. */
  get numbers(): readonly number[] {
    return [...this.#offsets.keys()];
  }

  /** Follows references to the value itself; a missing object is null. */
  get(value: Value | undefined): Value {
    let found = value ?? null;
    for (let depth = 0; found instanceof Ref && depth < 10; depth++) found = this.object(found.number);
    return found;
  }

  dict(value: Value | undefined): Dict | undefined {
    const found = this.get(value);
    if (found instanceof Stream) return found.dict;
    return isDict(found) ? found : undefined;
  }

  array(value: Value | undefined): readonly Value[] {
    const found = this.get(value);
    return isArray(found) ? found : [];
  }

  name(value: Value | undefined): string | undefined {
    const found = this.get(value);
    return found instanceof Name ? found.value : undefined;
  }

  text(value: Value | undefined): string | undefined {
    const found = this.get(value);
    return found instanceof Text ? found.unicode : undefined;
  }

  number(value: Value | undefined): number | undefined {
    const found = this.get(value);
    return typeof found === 'number' ? found : undefined;
  }

  /** Bytes of a stream, inflated. */
  stream(value: Value | undefined): Uint8Array | undefined {
    const found = this.get(value);
    if (!(found instanceof Stream)) return undefined;
    const filter = this.name(found.dict.get('Filter'));
    if (filter === undefined) return found.raw;
    if (filter === 'FlateDecode') return inflateSync(found.raw);
    throw new Fault('bad-pdf', `expected streams that are plain or deflated, found \`${filter}\``);
  }

  get catalog(): Dict {
    return this.dict(this.trailer.get('Root')) ?? new Map();
  }

  /** An object by its number; null when there is none. */
  object(number: number): Value {
    const known = this.#objects.get(number);
    if (known !== undefined) return known;
    const offset = this.#offsets.get(number);
    const value = offset === undefined ? null : this.#read(offset);
    this.#objects.set(number, value);
    return value;
  }

  #read(offset: number): Value {
    const scanner = new Scanner(this.#text, offset);
    scanner.next();
    scanner.next();
    const opening = scanner.next();
    if (!(opening instanceof Keyword) || opening.value !== 'obj')
      throw new Fault('bad-pdf', `expected an object at byte ${offset}`);
    const value = scanner.value();
    const end = scanner.at;
    const keyword = scanner.next();
    if (!isDict(value) || !(keyword instanceof Keyword) || keyword.value !== 'stream') return value;
    const start = this.#text.indexOf('stream', end) + 'stream'.length;
    const from = start + (this.#text[start] === '\r' ? 2 : 1);
    const length = this.number(value.get('Length')) ?? 0;
    return new Stream(value, this.#bytes.subarray(from, from + length));
  }
}

/** Offsets of objects and the trailer, newest part of the file first. */
function readTable(text: string): { offsets: Map<number, number>; trailer: Dict } {
  const offsets = new Map<number, number>();
  let trailer: Dict | undefined;
  let at: number | undefined = Number(/startxref\s+(\d+)\s+%%EOF\s*$/.exec(text)?.[1] ?? Number.NaN);
  for (let parts = 0; at !== undefined && parts < 20; parts++) {
    if (!text.startsWith('xref', at)) throw new Fault('bad-pdf', 'expected a plain cross-reference table at the end of the file');
    const end = text.indexOf('trailer', at);
    readSections(text.slice(at + 4, end), offsets);
    const found = new Scanner(text, end + 'trailer'.length).value();
    if (!isDict(found)) throw new Fault('bad-pdf', 'expected a trailer dictionary');
    trailer ??= found;
    const previous = found.get('Prev');
    at = typeof previous === 'number' ? previous : undefined;
  }
  return { offsets, trailer: trailer ?? new Map() };
}

function readSections(table: string, offsets: Map<number, number>): void {
  const words = table.split(/\s+/).filter(Boolean);
  for (let i = 0; i + 1 < words.length; ) {
    const [start, count] = [Number(words[i]), Number(words[i + 1])];
    i += 2;
    for (let n = 0; n < count; n++, i += 3) {
      if (words[i + 2] === 'n' && !offsets.has(start + n)) offsets.set(start + n, Number(words[i]));
    }
  }
}
