import type { Fault, Place } from '../exact/fault.ts';
import { type CsvRecord, readCsv } from './csv.ts';
import { didYouMean } from './did-you-mean.ts';
import type { FaultList } from './fault-list.ts';

/** A row of a data file: its cells by column, and where it stands. */
export class SheetRow {
  readonly place: Place;
  private readonly cells: ReadonlyMap<string, string>;
  private readonly faults: FaultList;

  constructor(place: Place, cells: ReadonlyMap<string, string>, faults: FaultList) {
    this.place = place;
    this.cells = cells;
    this.faults = faults;
  }

  /** The cell as it stands, empty when there is none. */
  text(column: string): string {
    return this.cells.get(column) ?? '';
  }

  /** A cell that must not be empty; the fault is kept and the empty text returned when it is. */
  required(column: string): string {
    const text = this.text(column);
    if (text === '') this.fault('missing', `expected something in column \`${column}\`, found nothing`);
    return text;
  }

  /** Parts of a cell between semicolons. */
  list(column: string): string[] {
    return this.text(column)
      .split(';')
      .map((part) => part.trim())
      .filter((part) => part !== '');
  }

  /** A cell that holds one of the words allowed. */
  oneOf<W extends string>(column: string, allowed: readonly W[]): W | undefined {
    return this.word(column, this.required(column), allowed);
  }

  /** Parts of a cell, each one of the words allowed. */
  listOf<W extends string>(column: string, allowed: readonly W[]): W[] {
    return this.list(column).flatMap((part) => this.word(column, part, allowed) ?? []);
  }

  /** True for `yes`, false for an empty cell or `no`. */
  yes(column: string): boolean {
    return this.text(column) !== '' && this.word(column, this.text(column), ['yes', 'no']) === 'yes';
  }

  attempt<T>(read: () => T): T | undefined {
    return this.faults.attempt(read, this.place);
  }

  fault(code: string, message: string): void {
    this.faults.add(code, message, this.place);
  }

  /** Takes over a fault told of the text of a cell. */
  keep(fault: Fault): void {
    this.faults.keep(fault, this.place);
  }

  private word<W extends string>(column: string, text: string, allowed: readonly W[]): W | undefined {
    const found = allowed.find((word) => word === text);
    if (found === undefined && text !== '') {
      const words = allowed.map((word) => `\`${word}\``).join(', ');
      this.fault('bad-word', `column \`${column}\` holds one of ${words}, found \`${text}\`${didYouMean(text, allowed)}`);
    }
    return found;
  }
}

/** What the header of a data file holds. */
export interface SheetColumns {
  readonly needed: readonly string[];
  /** columns that may be left out */
  readonly optional?: readonly string[];
  /** other spellings of a column, in lower case */
  readonly aliases?: ReadonlyMap<string, string>;
}

/** The rows of a CSV file under its header. Missing, unknown and doubled columns are faults. */
export function readSheet(file: string, text: string, columns: SheetColumns, faults: FaultList): SheetRow[] {
  const records = faults.attempt(() => readCsv(text), { file });
  if (!records) return [];
  const [first, ...rest] = records;
  if (!first) {
    faults.add('empty-file', `expected a header with the columns ${columns.needed.join(', ')}; the file is empty`, {
      file,
      line: 1,
    });
    return [];
  }
  const header = first.cells.map((name) => columns.aliases?.get(name.toLowerCase()) ?? name);
  checkHeader(header, columns, { file, line: first.line }, faults);
  return rest.flatMap((record) => toRow(file, header, record, faults));
}

function checkHeader(header: readonly string[], { needed, optional = [] }: SheetColumns, place: Place, faults: FaultList): void {
  const known = [...needed, ...optional];
  for (const column of needed) {
    if (!header.includes(column)) faults.add('missing-column', `expected a column \`${column}\``, place);
  }
  for (const [at, name] of header.entries()) {
    if (!known.includes(name)) faults.add('unknown-column', `no column is called \`${name}\`${didYouMean(name, known)}`, place);
    else if (header.indexOf(name) !== at) faults.add('doubled-column', `column \`${name}\` stands twice`, place);
  }
}

function toRow(file: string, header: readonly string[], record: CsvRecord, faults: FaultList): SheetRow[] {
  const place = { file, line: record.line };
  if (record.cells.length > header.length) {
    const message = `expected ${header.length} cells, found ${record.cells.length}: a cell with a comma in it needs quotes`;
    faults.add('too-many-cells', message, place);
    return [];
  }
  return [new SheetRow(place, new Map(header.map((name, at) => [name, record.cells[at] ?? ''])), faults)];
}
