import type { Couple } from '../../chemistry/couple.ts';
import { writeEquation } from '../../chemistry/write-equation.ts';
import { decimalText } from '../../exact/decimal.ts';
import type { TableCheck } from '../../potentials/check-table.ts';
import type { FlippedPair, TableComparison } from '../../potentials/compare-tables.ts';

/** What `couplet table --json` prints of one couple. The potential has its digits as published, in V. */
export interface TableRow {
  readonly couple: string;
  readonly halfEquation: string;
  readonly potential: string;
  readonly medium: Couple['medium'];
  readonly source: string;
}

export function tableRow({ id, half, stored, medium, source }: Couple): TableRow {
  return {
    couple: id,
    halfEquation: writeEquation(half, '<=>', { state: true }),
    potential: decimalText(stored),
    medium,
    source,
  };
}

/** What `couplet table check --json` prints. Lines count from 1; 0 when a fault is the whole file's. */
export interface CheckAnswer {
  readonly file: string;
  readonly rows: number;
  readonly faults: readonly { readonly line: number; readonly code: string; readonly reason: string }[];
  readonly warnings: readonly { readonly line: number; readonly reason: string }[];
}

export function checkAnswer(file: string, { rows, faults, warnings }: TableCheck): CheckAnswer {
  return {
    file,
    rows,
    faults: faults.map(({ code, message, place }) => ({ line: place.line ?? 0, code, reason: message })),
    warnings: warnings.map(({ line, message }) => ({ line, reason: message })),
  };
}

/** What `couplet table compare --json` prints. */
export function comparisonAnswer({ values, onlyFirst, onlySecond, pairs, ladders }: TableComparison) {
  const side = ({ emf, outcome }: FlippedPair['first']) => ({ emf: decimalText(emf), outcome });
  return {
    values: values.map(({ id, first, second }) => ({ couple: id, first: decimalText(first), second: decimalText(second) })),
    onlyFirst,
    onlySecond,
    pairs: pairs.map(({ oxidant, reductant, first, second }) => ({
      oxidant,
      reductant,
      first: side(first),
      second: side(second),
    })),
    ladders: ladders.map(({ start, reagent, first, second }) => ({ start, reagent, first, second })),
  };
}
