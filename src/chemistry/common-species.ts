import type { Formula, State } from './formula.ts';
import { element } from './formula-parts.ts';

const plain = {
  water: { units: [{ count: 1, nodes: [element('H', 2), element('O')] }], charge: 0 },
  hydrogenIon: { units: [{ count: 1, nodes: [element('H')] }], charge: 1 },
  hydroxide: { units: [{ count: 1, nodes: [element('O'), element('H')] }], charge: -1 },
} as const satisfies Record<string, Formula>;

/** `H2O` */
export const water: Formula = plain.water;
/** `H^+` */
export const hydrogenIon: Formula = plain.hydrogenIon;
/** `OH^-` */
export const hydroxide: Formula = plain.hydroxide;

const withState = (formula: Formula, state: State): Formula => ({ ...formula, state });
const STATED = {
  water: withState(water, 'l'),
  hydrogenIon: withState(hydrogenIon, 'aq'),
  hydroxide: withState(hydroxide, 'aq'),
};

/** Water, H⁺ and OH⁻ as they stand beside species that carry states, or beside species that carry none. */
export function solventSpecies(states: boolean): typeof STATED {
  return states ? STATED : { water, hydrogenIon, hydroxide };
}
