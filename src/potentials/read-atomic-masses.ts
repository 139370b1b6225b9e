import { elementOf, isElement } from '../chemistry/elements.ts';
import { decimalAt, decimalText, parseDecimal } from '../exact/decimal.ts';
import { didYouMean } from './did-you-mean.ts';
import type { FaultList } from './fault-list.ts';
import { readSheet } from './sheet.ts';
import type { Tables } from './tables.ts';

const COLUMNS = ['symbol', 'name', 'published', 'printed', 'source'];

type Masses = Tables['atomicMasses'];

/** Relative atomic masses by symbol. What is printed is what is published to one decimal, halves rounded up. */
export function readAtomicMasses(file: string, text: string, faults: FaultList): Masses {
  const found = new Map<string, NonNullable<ReturnType<Masses['get']>>>();
  for (const row of readSheet(file, text, { needed: COLUMNS }, faults)) {
    const symbol = row.required('symbol');
    row.required('source');
    const published = row.attempt(() => parseDecimal(row.required('published')));
    const printed = row.attempt(() => parseDecimal(row.required('printed')));
    if (!isElement(symbol)) {
      row.fault('unknown-element', `no element has the symbol \`${symbol}\`${didYouMean(symbol, found.keys())}`);
      continue;
    }
    const { name } = elementOf(symbol);
    if (row.text('name') !== name)
      row.fault('wrong-name', `expected the name \`${name}\` for ${symbol}, found \`${row.text('name')}\``);
    if (found.has(symbol)) row.fault('doubled-element', `${symbol} stands in \`${file}\` already`);
    if (!published || !printed) continue;
    const expected = decimalText(decimalAt(published.value, 1));
    if (decimalText(printed) !== expected)
      row.fault('wrong-rounding', `expected ${expected} as printed, found ${decimalText(printed)}`);
    found.set(symbol, { published, printed });
  }
  return found;
}
