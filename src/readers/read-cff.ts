/**
 * Advances of the glyphs of a compact font program, in thousandths of an em.
 * @see Adobe Technical Notes 5176 (Compact Font Format) and 5177 (Type 2 charstrings)
 */
export function readCff(bytes: Uint8Array): number[] {
  const names = readIndex(bytes, bytes[2] ?? 4);
  const tops = readIndex(bytes, names.end);
  const strings = readIndex(bytes, tops.end);
  const globals = readIndex(bytes, strings.end).items;
  const top = readDict(tops.items[0] ?? new Uint8Array());
  const charStrings = readIndex(bytes, top.get(17)?.[0] ?? 0).items;
  const fonts = top.has(0x0c24) ? readIndex(bytes, top.get(0x0c24)![0]!).items.map(readDict) : [top];
  const privates = fonts.map((font) => readPrivate(bytes, font));
  const select = top.has(0x0c25) ? readSelect(bytes, top.get(0x0c25)![0]!, charStrings.length) : [];
  const scale = 1000 * (top.get(0x0c07)?.[0] ?? 0.001);
  return charStrings.map((code, glyph) => {
    const own = privates[select[glyph] ?? 0]!;
    const width = leadingWidth(code, own.subrs, globals);
    return (width === undefined ? own.standard : own.nominal + width) * scale;
  });
}

interface Index {
  readonly items: readonly Uint8Array[];
  readonly end: number;
}

function readIndex(bytes: Uint8Array, at: number): Index {
  const count = bytes[at]! * 256 + bytes[at + 1]!;
  if (count === 0) return { items: [], end: at + 2 };
  const size = bytes[at + 2]!;
  const base = at + 3 + (count + 1) * size - 1;
  const offset = (i: number): number => {
    let value = 0;
    for (let n = 0; n < size; n++) value = value * 256 + bytes[at + 3 + i * size + n]!;
    return value;
  };
  const items = Array.from({ length: count }, (_, i) => bytes.subarray(base + offset(i), base + offset(i + 1)));
  return { items, end: base + offset(count) };
}

/** Operands by operator; two-byte operators are 0x0c00 and the second byte. */
function readDict(bytes: Uint8Array): Map<number, number[]> {
  const dict = new Map<number, number[]>();
  let operands: number[] = [];
  for (let at = 0; at < bytes.length; ) {
    const byte = bytes[at]!;
    if (byte <= 21) {
      const operator = byte === 12 ? 0x0c00 + bytes[at + 1]! : byte;
      at += byte === 12 ? 2 : 1;
      dict.set(operator, operands);
      operands = [];
    } else {
      const [value, next] = byte === 30 ? readReal(bytes, at) : readNumber(bytes, at);
      operands.push(value);
      at = next;
    }
  }
  return dict;
}

function readNumber(bytes: Uint8Array, at: number): [number, number] {
  const byte = bytes[at]!;
  if (byte >= 32 && byte <= 246) return [byte - 139, at + 1];
  if (byte >= 247 && byte <= 250) return [(byte - 247) * 256 + bytes[at + 1]! + 108, at + 2];
  if (byte >= 251 && byte <= 254) return [-(byte - 251) * 256 - bytes[at + 1]! - 108, at + 2];
  if (byte === 28) return [((bytes[at + 1]! << 24) >> 16) + bytes[at + 2]!, at + 3];
  const long = (bytes[at + 1]! << 24) + (bytes[at + 2]! << 16) + (bytes[at + 3]! << 8) + bytes[at + 4]!;
  return [byte === 255 ? long / 65536 : long, at + 5];
}

const NIBBLES = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.', 'e', 'e-', '', '-'];

function readReal(bytes: Uint8Array, at: number): [number, number] {
  let text = '';
  for (let i = at + 1; i < bytes.length; i++) {
    for (const nibble of [bytes[i]! >> 4, bytes[i]! & 15]) {
      if (nibble === 15) return [Number(text), i + 1];
      text += NIBBLES[nibble];
    }
  }
  return [Number(text), bytes.length];
}

interface Private {
  readonly standard: number;
  readonly nominal: number;
  readonly subrs: readonly Uint8Array[];
}

function readPrivate(bytes: Uint8Array, font: Map<number, number[]>): Private {
  const [size = 0, at = 0] = font.get(18) ?? [];
  const dict = readDict(bytes.subarray(at, at + size));
  const subrs = dict.has(19) ? readIndex(bytes, at + dict.get(19)![0]!).items : [];
  return { standard: dict.get(20)?.[0] ?? 0, nominal: dict.get(21)?.[0] ?? 0, subrs };
}

/** Which private dictionary each glyph uses: formats 0 and 3. */
function readSelect(bytes: Uint8Array, at: number, count: number): number[] {
  if (bytes[at] === 0) return Array.from({ length: count }, (_, glyph) => bytes[at + 1 + glyph]!);
  const ranges = bytes[at + 1]! * 256 + bytes[at + 2]!;
  const select: number[] = [];
  for (let i = 0; i < ranges; i++) {
    const record = at + 3 + 3 * i;
    const next = bytes[record + 3]! * 256 + bytes[record + 4]!;
    for (let glyph = select.length; glyph < next; glyph++) select.push(bytes[record + 2]!);
  }
  return select;
}

/** Operands that an operator takes when no width stands before them; undefined for those that take pairs. */
const TAKES: ReadonlyMap<number, number> = new Map([
  [4, 1],
  [14, 0],
  [21, 2],
  [22, 1],
]);
const PAIRS: ReadonlySet<number> = new Set([1, 3, 18, 19, 20, 23]);

/** The width that leads a charstring, as a difference from the nominal width; undefined when it has the standard width. */
function leadingWidth(code: Uint8Array, subrs: readonly Uint8Array[], globals: readonly Uint8Array[]): number | undefined {
  const stack: number[] = [];
  const run = (program: Uint8Array): { width: number | undefined } | undefined => {
    for (let at = 0; at < program.length; ) {
      const byte = program[at]!;
      if (byte >= 32 || byte === 28) {
        const [value, next] = readNumber(program, at);
        stack.push(value);
        at = next;
        continue;
      }
      at++;
      if (byte === 10 || byte === 29) {
        const list = byte === 10 ? subrs : globals;
        const bias = list.length < 1240 ? 107 : list.length < 33900 ? 1131 : 32768;
        const found = run(list[stack.pop()! + bias] ?? new Uint8Array());
        if (found) return found;
      } else if (byte === 11) return undefined;
      else if (PAIRS.has(byte)) return { width: stack.length % 2 ? stack[0] : undefined };
      else return { width: stack.length > (TAKES.get(byte) ?? stack.length) ? stack[0] : undefined };
    }
    return undefined;
  };
  return run(code)?.width;
}
