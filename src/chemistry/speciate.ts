import { balanceByNullSpace } from './balance-by-null-space.ts';
import type { BeakerState } from './beaker-state.ts';
import { hydrogenIon, hydroxide, water } from './common-species.ts';
import type { Medium } from './couple.ts';
import type { FactIndex } from './couple-index.ts';
import type { Equation } from './equation.ts';
import type { Speciation } from './facts.ts';
import type { Formula } from './formula.ts';
import { parseFormula } from './parse-formula.ts';

const EQUATIONS = new WeakMap<Speciation, Equation>();
/** Chains such as VO₂⁺ → VO₃⁻ → VO₄³⁻ are short; more would be a circle in the data. */
const LONGEST_CHAIN = 4;

/**
 * Lets every species take the form it has in the medium: dichromate in acid, chromate in alkali. Not a redox step.
 * @returns the rows that were used, in order
 */
export function speciate(state: BeakerState, medium: Medium, facts: FactIndex): Speciation[] {
  const used: Speciation[] = [];
  for (const { formula, key } of state.present()) {
    let row = facts.speciations.get(`${medium} ${key}`);
    let from: Formula = formula;
    for (let link = 0; row && link < LONGEST_CHAIN; link += 1) {
      const equation = speciationEquation(row, from);
      const amount = state.amountOf(row.species);
      from = equation.right.find((term) => term.formula !== water)!.formula; // `becomes`, the first product
      if (amount === 'excess') replaceExcess(state, equation);
      else state.runAll(equation);
      used.push(row);
      row = facts.speciations.get(`${medium} ${row.becomes}`);
    }
  }
  return used;
}

/** An excess of one form is an excess of the other: nothing is counted. */
function replaceExcess(state: BeakerState, equation: Equation): void {
  state.remove(equation.left[0]!.formula);
  state.put(equation.right[0]!.formula, 'excess');
}

/** The balanced equation of a speciation: the row's species first on its side, H⁺ in acid, OH⁻ in alkali, water. */
export function speciationEquation(row: Speciation, from: Formula = parseFormula(row.species)): Equation {
  let equation = EQUATIONS.get(row);
  if (!equation) {
    const found = balanceByNullSpace(
      [from],
      [parseFormula(row.becomes)],
      [row.medium === 'acid' ? hydrogenIon : hydroxide, water],
    );
    if (found.kind !== 'unique')
      throw new Error(`the speciation ${row.species} to ${row.becomes} in ${row.medium} does not balance`);
    equation = found.equation;
    EQUATIONS.set(row, equation);
  }
  return equation;
}

/** What a speciation says, in words. */
export function speciationText(row: Speciation): string {
  const where = row.medium === 'strong-alkali' ? 'strong alkali' : row.medium;
  return `in ${where} ${row.species} stands as ${row.becomes}`;
}
