import { combine } from '../chemistry/combine.ts';
import type { Couple } from '../chemistry/couple.ts';
import type { Equation } from '../chemistry/equation.ts';
import type { Value } from './value.ts';
import { bareEquation } from './without-states.ts';

/** The overall equation of two couples, without states, with the couples named for the gate's second method. */
export function combinedValue(reduced: Couple, oxidised: Couple): Value {
  return {
    kind: 'equation',
    equation: bareEquation(combine(reduced.half, oxidised.half).equation),
    arrow: 'forward',
    couples: [reduced.id, oxidised.id],
  };
}

/** A wrong equation as a value. */
export function wrongEquation(equation: Equation): Value {
  return { kind: 'equation', equation: bareEquation(equation), arrow: 'forward' };
}
