import { canonical, type Sides } from '../chemistry/sides.ts';
import type { Fraction } from '../exact/fraction.ts';
import { writeNumber } from '../exact/printed-number.ts';
import type { Figures } from '../exact/rounding.ts';

/** What the auditor finds at a step. */
export type Answer =
  | { readonly kind: 'number'; readonly value: Fraction; readonly unit: string }
  | { readonly kind: 'equation'; readonly sides: Sides }
  | { readonly kind: 'species'; readonly key: string }
  | { readonly kind: 'ratio'; readonly left: Fraction; readonly right: Fraction }
  /** words: what they must hold, in order, as marks */
  | { readonly kind: 'said'; readonly marks: readonly string[] };

/**
 * The marks that an answer leaves on paper: `number +1.56 V`, `species V^2+`, `equation …`, `label A`, `word wire`, `colour yellow`.
 * Alternatives stand with bars between them: `colour violet|purple`.
 */
export function marksOf(answer: Answer, figures: Figures, signed = false): string[] {
  switch (answer.kind) {
    case 'number':
      return [numberMark(writeNumber(answer.value, figures, signed), answer.unit)];
    case 'equation':
      return [`equation ${canonical(answer.sides)}`];
    case 'species':
      return [`species ${answer.key}`];
    case 'ratio':
      return [`ratio ${answer.left} : ${answer.right}`];
    case 'said':
      return [...answer.marks];
  }
}

export const numberMark = (text: string, unit: string): string => `number ${text}${unit === '' ? '' : ` ${unit}`}`;
