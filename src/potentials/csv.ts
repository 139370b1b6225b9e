import { Fault } from '../exact/fault.ts';

/** A record of a CSV file and the line (1-based) on which it begins. */
export interface CsvRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

/**
 * Reads comma-separated values as RFC 4180 has them: quotes around a cell that holds commas, line breaks or doubled quotes. A
 * byte
 * order mark, CRLF and empty lines are accepted, cells are trimmed, and a semicolon separates when the first line holds no comma.
 * @throws Fault `bad-csv` with the line
 */
export function readCsv(text: string): CsvRecord[] {
  const body = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const first = body.slice(0, body.indexOf('\n') < 0 ? body.length : body.indexOf('\n'));
  const separator = !first.includes(',') && first.includes(';') ? ';' : ',';
  const records: CsvRecord[] = [];
  let at = 0;
  let line = 1;
  while (at < body.length) {
    const record = readRecord(body, at, line, separator);
    if (record.cells.some((cell) => cell !== '')) records.push({ line, cells: record.cells });
    for (let index = body.indexOf('\n', at); index >= 0 && index < record.end; index = body.indexOf('\n', index + 1)) line += 1;
    at = record.end;
  }
  return records;
}

function readRecord(body: string, start: number, line: number, separator: string): { cells: string[]; end: number } {
  const newline = body.indexOf('\n', start);
  const plain = body.slice(start, newline < 0 ? body.length : newline);
  if (!plain.includes('"')) return { cells: plain.split(separator).map((cell) => cell.trim()), end: start + plain.length + 1 };
  const cells: string[] = [];
  let at = start;
  for (;;) {
    const cell = readCell(body, at, line, separator);
    cells.push(cell.text.trim());
    at = cell.end;
    if (body[at] !== separator) return { cells, end: at + 1 };
    at += 1;
  }
}

/** One cell; `end` is the index of what follows it: a separator, a line break or the end of the text. */
function readCell(body: string, start: number, line: number, separator: string): { text: string; end: number } {
  let at = start;
  while (body[at] === ' ' || body[at] === '\t') at += 1;
  if (body[at] !== '"') {
    while (at < body.length && body[at] !== separator && body[at] !== '\n') at += 1;
    return { text: body.slice(start, at), end: at };
  }
  const opened = at + 1;
  let closed = body.indexOf('"', opened);
  while (closed >= 0 && body[closed + 1] === '"') closed = body.indexOf('"', closed + 2);
  if (closed < 0) throw new Fault('bad-csv', 'a quote is opened and never closed', { line });
  const text = body.slice(opened, closed).replaceAll('""', '"');
  at = closed + 1;
  while (body[at] === ' ' || body[at] === '\t') at += 1;
  if (at < body.length && body[at] !== separator && body[at] !== '\n') {
    throw new Fault('bad-csv', `expected \`${separator}\` or a new line after a closing quote, found \`${body[at]}\``, { line });
  }
  return { text, end: at };
}
