import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import { misfit } from './balanced.ts';
import { CHARGE } from './composition.ts';
import type { Equation, HalfEquation } from './equation.ts';
import { isElectron } from './formula-parts.ts';
import { factorToLowest } from './terms.ts';
import { writeEquation } from './write-equation.ts';
import { keyOf } from './write-formula.ts';

/**
 * Everything that keeps an equation from being a half-equation as stored: a reduction, electrons on the left only, balanced,
 * nothing on both sides, whole coefficients in lowest terms. An empty list when it is one.
 */
export function checkHalf(equation: Equation): Fault[] {
  const text = writeEquation(equation);
  const fault = (code: string, message: string) =>
    new Fault(code, `${message}: \`${text}\``, { text, at: 0, length: text.length });
  const faults: Fault[] = [];
  const onLeft = equation.left.some((term) => isElectron(term.formula));
  if (equation.right.some((term) => isElectron(term.formula)))
    faults.push(fault('not-a-reduction', 'a half-equation is written as a reduction, with electrons on the left only'));
  else if (!onLeft) faults.push(fault('not-a-reduction', 'a half-equation has electrons on the left'));
  const off = [...misfit(equation)].map(([component, by]) => describe(component, by));
  if (off.length > 0) faults.push(fault('unbalanced', `the half-equation does not balance (${off.join('; ')})`));
  const twice = repeated(equation);
  if (twice.length > 0)
    faults.push(fault('not-cancelled', `${twice.map((key) => `\`${key}\``).join(', ')} stands more than once`));
  if (!factorToLowest(equation).equals(Rational.one))
    faults.push(fault('not-lowest', 'coefficients are whole numbers without a common divisor'));
  return faults;
}

/** The equation as a half-equation. @throws Fault, the first that `checkHalf` finds */
export function asHalf(equation: Equation): HalfEquation {
  const [first] = checkHalf(equation);
  if (first) throw first;
  const electrons = equation.left.find((term) => isElectron(term.formula))!.coefficient;
  return { left: equation.left, right: equation.right, electrons };
}

function describe(component: string, by: Rational): string {
  const what = component === CHARGE ? 'charge' : component;
  return `${what}: ${by.sign() > 0 ? 'right' : 'left'} has ${by.abs()} more`;
}

function repeated(equation: Equation): string[] {
  const keys = [...equation.left, ...equation.right].map((term) => keyOf(term.formula));
  return [...new Set(keys)].filter((key) => keys.indexOf(key) !== keys.lastIndexOf(key));
}
