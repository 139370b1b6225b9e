import type { Equation, Term } from '../chemistry/equation.ts';
import type { Formula } from '../chemistry/formula.ts';

/** A species as it stands in prose and in ionic answers: no state symbol. */
export function bare(formula: Formula): Formula {
  const { state: _, ...rest } = formula;
  return rest;
}

/** An equation without state symbols. */
export function bareEquation(equation: Equation): Equation {
  const side = (terms: readonly Term[]) => terms.map(({ coefficient, formula }) => ({ coefficient, formula: bare(formula) }));
  return { left: side(equation.left), right: side(equation.right) };
}
