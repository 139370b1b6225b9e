import { checkHalf } from '../chemistry/check-half.ts';
import type { Couple, Medium } from '../chemistry/couple.ts';
import type { HalfEquation } from '../chemistry/equation.ts';
import { isElectron } from '../chemistry/formula-parts.ts';
import { parseEquation } from '../chemistry/parse-equation.ts';
import { lowestTerms } from '../chemistry/terms.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { type Decimal, decimalAt, parseDecimal } from '../exact/decimal.ts';
import { Rational } from '../exact/rational.ts';
import { type Members, membersOf } from './couple-members.ts';
import { readFormula } from './read-formula.ts';
import type { SheetRow } from './sheet.ts';

/** Columns that the default table and a department's own have in common. */
export const HALF_EQUATION = 'half-equation';
export const POTENTIAL = 'E° / V';

/** A couple as its row gives it, before ids are given out, and the row for faults found later. */
export interface CoupleRow {
  readonly row: SheetRow;
  readonly element: string;
  readonly couple: Omit<Couple, 'id'>;
}

/** What a row says beside its half-equation and its potential. */
export type CoupleUse = Pick<Couple, 'usualOxidant' | 'usualReductant' | 'calculationOnly' | 'source' | 'note'>;

/**
 * Every fault of a row's half-equation and potential is kept; undefined when there is one.
 * @param multiple `any-multiple` takes ½Cl2 + e^- or 2Fe^3+ + 2e^- too and brings it to lowest terms
 */
export function readCoupleRow(
  row: SheetRow,
  use: CoupleUse,
  multiple: 'lowest-terms' | 'any-multiple' = 'lowest-terms',
): CoupleRow | undefined {
  const half = readHalf(row, multiple);
  const stored = readPotential(row);
  const members = half && row.attempt(() => membersOf(half));
  if (!half || !stored || !members) return undefined;
  return { row, element: members.element, couple: toCouple(half, members, stored, use) };
}

function readHalf(row: SheetRow, multiple: 'lowest-terms' | 'any-multiple'): HalfEquation | undefined {
  const text = row.required(HALF_EQUATION);
  if (text === '') return undefined;
  const read = row.attempt(() => parseEquation(text, readFormula));
  if (!read) return undefined;
  const equation = multiple === 'any-multiple' ? lowestTerms(read) : read;
  const faults = checkHalf(equation);
  for (const fault of faults) row.keep(fault);
  if (faults.length > 0) return undefined;
  const electrons = equation.left.find((term) => isElectron(term.formula))!.coefficient;
  return { ...equation, electrons };
}

/** Standard electrode potentials of this course lie well inside ±5 V; more is a slip of the pen, mV perhaps. */
const LARGEST = Rational.of(5);

function readPotential(row: SheetRow): Decimal | undefined {
  const text = row.required(POTENTIAL);
  const value = text === '' ? undefined : row.attempt(() => parseDecimal(text));
  if (value && value.value.abs().compare(LARGEST) > 0) {
    row.fault('out-of-range', `expected a potential between -5 and +5 volts, found \`${text}\``);
    return undefined;
  }
  return value;
}

function toCouple(half: HalfEquation, { oxidised, reduced }: Members, stored: Decimal, use: CoupleUse): Omit<Couple, 'id'> {
  return {
    oxidised,
    reduced,
    oxidisedKey: keyOf(oxidised),
    reducedKey: keyOf(reduced),
    half,
    stored,
    printed: decimalAt(stored.value, 2),
    medium: mediumOf(half),
    ...use,
  };
}

/** `acid` when H⁺ takes part, `alkali` when OH⁻ does, else `neutral`. */
export function mediumOf(half: HalfEquation): Medium {
  const keys = [...half.left, ...half.right].map((term) => keyOf(term.formula));
  return keys.includes('H^+') ? 'acid' : keys.includes('OH^-') ? 'alkali' : 'neutral';
}
