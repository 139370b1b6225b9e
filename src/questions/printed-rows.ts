import type { ChoiceOption, Item, Row } from './question.ts';
import { rowsOf } from './rows.ts';
import { sameValue } from './same-value.ts';

/** A row that can be met on the printed page, and the place of its option, from zero, where there are options. */
export interface PrintedRow {
  readonly row: Row;
  readonly option?: number;
}

/**
 * The rows that somebody can answer with: all of a written item; of a choice, those whose value is an option, in the order of the
 * options. Two ways to one option are two rows.
 */
export function printedRows(item: Item): PrintedRow[] {
  const rows = rowsOf(item);
  const [part] = item.parts;
  if (!part?.options) return rows.map((row) => ({ row }));
  const step = item.steps.find(({ id }) => id === part.answers[0])!;
  const chooses = (row: Row, { value }: ChoiceOption): boolean =>
    row.seen.get(part.id)?.some((seen) => seen.step === step.id && sameValue(seen.value, value, step.printed)) ?? false;
  return part.options.flatMap((option, at) =>
    option.slip === undefined ? [] : rows.filter((row) => chooses(row, option)).map((row) => ({ row, option: at })),
  );
}
