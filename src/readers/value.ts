/** A value of PDF syntax (ISO 32000-1:2008, 7.3). */
export type Value = null | boolean | number | Name | Text | Ref | Dict | Stream | readonly Value[];

export class Name {
  readonly value: string;
  constructor(value: string) {
    this.value = value;
  }
}

/** A string, one character for each byte. */
export class Text {
  readonly bytes: string;
  constructor(bytes: string) {
    this.bytes = bytes;
  }
  /** As a text string: UTF-16 with a byte order mark, else Latin-1 (which PDFDocEncoding equals for what is printed here). */
  get unicode(): string {
    if (!this.bytes.startsWith('\u00fe\u00ff')) return this.bytes;
    let text = '';
    for (let i = 2; i + 1 < this.bytes.length; i += 2)
      text += String.fromCharCode(this.bytes.charCodeAt(i) * 256 + this.bytes.charCodeAt(i + 1));
    return text;
  }
}

/** A reference to an indirect object. */
export class Ref {
  readonly number: number;
  constructor(number: number) {
    this.number = number;
  }
}

export type Dict = ReadonlyMap<string, Value>;

export class Stream {
  readonly dict: Dict;
  readonly raw: Uint8Array;
  constructor(dict: Dict, raw: Uint8Array) {
    this.dict = dict;
    this.raw = raw;
  }
}

export function isDict(value: Value | undefined): value is Dict {
  return value instanceof Map;
}

export function isArray(value: Value | undefined): value is readonly Value[] {
  return Array.isArray(value);
}
