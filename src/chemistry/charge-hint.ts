import type { Fault } from '../exact/fault.ts';
import { elementOf, isMetal } from './elements.ts';
import type { FormulaUnit } from './formula.ts';
import type { FormulaReader } from './formula-reader.ts';
import { roman } from './roman.ts';

/**
 * The fault for a charge typed without its caret (`Fe3+`, `SO42-`, `MnO4-`): says how to write it. The last digit is the
 * charge when two stand together, after a space, or in a single atom such as `Fe3+`; otherwise the number counts atoms.
 */
export function hintForCharge(reader: FormulaReader, units: readonly FormulaUnit[]): Fault {
  const typed = reader.ahead(200).trimEnd();
  const end = reader.position();
  const body = plainBefore(reader, end);
  const single = /^([A-Z][a-z]?)\s*(\d)?$/.exec(body);
  const [, stem, digit] = (single ? single : /^(.*[\d\s])(\d)$/.exec(body)) ?? [undefined, body, undefined];
  const number = digit && digit !== '1' ? digit : '';
  const sign = typed[0]!;
  const meant = `${stem!.replace(/\s+/g, '')}^${number}${sign}`;
  return reader.faultAt(`for ${ionMeant(single?.[1], number, sign, units)} write \`${meant}\``, 0, end + typed.length);
}

/** The plain notation of everything read so far. */
function plainBefore(reader: FormulaReader, end: number): string {
  reader.skip(-end);
  const body = reader.ahead(end).trim();
  reader.skip(end);
  return body;
}

function ionMeant(symbol: string | undefined, number: string, sign: string, units: readonly FormulaUnit[]): string {
  if (symbol && sign === '+' && isMetal(symbol)) return `the ${elementOf(symbol).name}(${roman(Number(number || 1))}) ion`;
  return `${units.length > 0 ? 'an' : 'the'} ion of charge ${number || '1'}${sign}`;
}
