import type { Equation, Term } from './equation.ts';
import { writeFormula } from './write-formula.ts';

export type Arrow = '->' | '<=>' | '=';

/**
 * Plain text of an equation, `2Fe^3+ + 2I^- -> 2Fe^2+ + I2`; parses back to the same terms.
 * @param options.state whether states that the formulas carry are written; not unless this is true
 */
export function writeEquation(equation: Equation, arrow: Arrow = '->', options: { readonly state?: boolean } = {}): string {
  return `${writeSide(equation.left, options)} ${arrow} ${writeSide(equation.right, options)}`;
}

function writeSide(terms: readonly Term[], options: { readonly state?: boolean }): string {
  return terms
    .map((term) => `${coefficientText(term)}${writeFormula(term.formula, { state: options.state === true })}`)
    .join(' + ');
}

function coefficientText({ coefficient }: Term): string {
  return coefficient.n === 1n && coefficient.d === 1n ? '' : coefficient.toString();
}
