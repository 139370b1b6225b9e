import { inflateSync } from 'node:zlib';

/** A PDF taken apart into its objects, to be changed in one place and put together again with a right cross-reference table. */
export class OpenPdf {
  /** raw text of each object, one character a byte, from after `n 0 obj` to before `endobj` */
  readonly objects = new Map<number, string>();
  header: string;
  trailer: string;

  constructor(bytes: Uint8Array) {
    const text = Buffer.from(bytes).toString('latin1');
    const at = Number(/startxref\s+(\d+)/.exec(text)![1]);
    const table = text.slice(at);
    this.header = /^[^\n]*/.exec(text)![0];
    this.trailer = /trailer\n([\s\S]*?)\nstartxref/.exec(table)![1]!;
    for (const [n, line] of [...table.matchAll(/^(\d{10}) \d{5} n/gm)].entries()) {
      const body = text.slice(Number(line[1]));
      const start = body.indexOf('obj\n') + 4;
      this.objects.set(n + 1, body.slice(start, body.indexOf('\nendobj', streamEnd(body))));
    }
  }

  /** Numbers of the objects whose text matches. */
  find(pattern: RegExp): number[] {
    const found = [...this.objects].filter(([, text]) => pattern.test(dictOf(text))).map(([number]) => number);
    if (found.length === 0) throw new Error(`no object matches ${pattern}`);
    return found;
  }

  /** Changes an object's text; a change that changes nothing is a mistake of the test. */
  edit(number: number, from: string | RegExp, to: string): this {
    const before = this.objects.get(number)!;
    const after = before.replace(from, to);
    if (after === before) throw new Error(`object ${number} does not hold ${from}`);
    this.objects.set(number, after);
    return this;
  }

  editFirst(pattern: RegExp, from: string | RegExp, to: string): this {
    return this.edit(this.find(pattern)[0]!, from, to);
  }

  editAll(pattern: RegExp, from: string | RegExp, to: string): this {
    for (const number of this.find(pattern)) this.edit(number, from, to);
    return this;
  }

  /** Adds an entry to the dictionary of an object. */
  entry(pattern: RegExp, entry: string): this {
    return this.editFirst(pattern, '<<', `<<\n${entry}`);
  }

  /** Number of the object that an object names under a key. */
  named(number: number, key: string): number {
    return Number(new RegExp(`/${key} (\\d+) 0 R`).exec(this.objects.get(number)!)![1]);
  }

  add(text: string): number {
    const number = this.objects.size + 1;
    this.objects.set(number, text);
    return number;
  }

  /** Rewrites a stream as plain text. */
  stream(pattern: RegExp, rewrite: (text: string) => string): this {
    return this.streamOf(this.find(pattern)[0]!, rewrite);
  }

  /** The same for the stream of a number. */
  streamOf(number: number, rewrite: (text: string) => string): this {
    const text = this.objects.get(number)!;
    const start = text.indexOf('stream\n') + 7;
    const raw = Buffer.from(text.slice(start, text.lastIndexOf('\nendstream')), 'latin1');
    const before = (/FlateDecode/.test(dictOf(text)) ? inflateSync(raw) : raw).toString('latin1');
    const after = rewrite(before);
    if (after === before) throw new Error(`rewriting the stream of object ${number} changes nothing`);
    const dict = dictOf(text)
      .replace('/Filter /FlateDecode\n', '')
      .replace(/\/Length \d+/, `/Length ${after.length}`);
    this.objects.set(number, `${dict}\nstream\n${after}\nendstream`);
    return this;
  }

  /** The content of the first page, which the pages' order puts first in the file. */
  content(rewrite: (text: string) => string): this {
    const page = this.objects.get(this.find(/\/Type \/Page\n/)[0]!)!;
    const number = Number(/\/Contents (\d+)/.exec(page)![1]);
    const text = this.objects.get(number)!;
    const name = `/Mark${number} true`;
    this.objects.set(number, text.replace('<<', `<<\n${name}`));
    return this.stream(new RegExp(name), rewrite);
  }

  bytes(): Uint8Array {
    let text = `${this.header}\n%\u00ff\u00ff\u00ff\u00ff\n`;
    const offsets: number[] = [];
    for (const [number, body] of this.objects) {
      offsets[number] = text.length;
      text += `${number} 0 obj\n${body}\nendobj\n`;
    }
    const at = text.length;
    const lines = [...this.objects.keys()].map((number) => `${String(offsets[number]).padStart(10, '0')} 00000 n \n`);
    const trailer = this.trailer.replace(/\/Size \d+/, `/Size ${this.objects.size + 1}`);
    text += `xref\n0 ${this.objects.size + 1}\n0000000000 65535 f \n${lines.join('')}trailer\n${trailer}\nstartxref\n${at}\n%%EOF\n`;
    return Buffer.from(text, 'latin1');
  }
}

function dictOf(text: string): string {
  const at = text.indexOf('\nstream\n');
  return at < 0 ? text : text.slice(0, at);
}

function streamEnd(body: string): number {
  const object = body.indexOf('\nendobj');
  const stream = body.indexOf('\nstream\n');
  if (stream < 0 || stream > object) return 0;
  const length = Number(/\/Length (\d+)/.exec(body)![1]);
  return stream + 8 + length;
}
