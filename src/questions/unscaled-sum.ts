import type { Equation, HalfEquation } from '../chemistry/equation.ts';
import { isElectron } from '../chemistry/formula-parts.ts';
import { addEquations, cancelEquation, coefficientOf, reverseEquation, scaleEquation } from '../chemistry/terms.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { Rational } from '../exact/rational.ts';

/** Both half-equations added by given factors with the electrons simply left out: what a pupil writes who does not match them. */
export function sumWithoutElectrons(
  reduction: HalfEquation,
  oxidation: HalfEquation,
  timesReduction: Rational,
  timesOxidation: Rational,
  cancel = true,
): Equation {
  const sum = addEquations(
    scaleEquation(dropElectrons(reduction), timesReduction),
    reverseEquation(scaleEquation(dropElectrons(oxidation), timesOxidation)),
  );
  return cancel ? cancelEquation(sum) : { left: gathered(sum.left), right: gathered(sum.right) };
}

/** Equal species of one side as one term: nobody writes the same product twice. */
function gathered(terms: Equation['left']): Equation['left'] {
  const keys = [...new Set(terms.map(({ formula }) => keyOf(formula)))];
  return keys.map((key) => ({
    formula: terms.find(({ formula }) => keyOf(formula) === key)!.formula,
    coefficient: coefficientOf(terms, key),
  }));
}

/** HE-ADD-UNSCALED: added as they stand. */
export function addedUnscaled(reduction: HalfEquation, oxidation: HalfEquation): Equation {
  return sumWithoutElectrons(reduction, oxidation, Rational.one, Rational.one);
}

/** HE-SCALE-OWN: each multiplied by its own electrons. */
export function scaledByOwn(reduction: HalfEquation, oxidation: HalfEquation): Equation {
  return sumWithoutElectrons(reduction, oxidation, reduction.electrons, oxidation.electrons);
}

function dropElectrons(half: HalfEquation): Equation {
  const keep = (terms: Equation['left']) => terms.filter(({ formula }) => !isElectron(formula));
  return { left: keep(half.left), right: keep(half.right) };
}
