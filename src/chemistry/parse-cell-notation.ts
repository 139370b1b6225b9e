import { Fault } from '../exact/fault.ts';
import type { Phase } from './cell-notation.ts';
import { elementsIn } from './composition.ts';
import type { HalfEquation } from './equation.ts';
import type { Formula } from './formula.ts';
import { halfEquation } from './half-equation.ts';
import { averageOxidationNumber } from './oxidation-numbers.ts';
import { relocated } from './parse-equation.ts';
import { parseFormula } from './parse-formula.ts';
import { keyOf } from './write-formula.ts';

/** A cell representation as read: phases of each half-cell from left to right. */
export interface ReadCell {
  readonly left: readonly Phase[];
  readonly right: readonly Phase[];
}

/**
 * Reads `Zn(s) | Zn^2+(aq) ‖ Cu^2+(aq) | Cu(s)`; the bridge may be typed `||`.
 * @throws Fault `bad-cell` or `bad-formula`, whose place underlines what is wrong
 */
export function parseCellNotation(text: string): ReadCell {
  const bridges = [...text.matchAll(/‖|\|\|/g)];
  const [bridge, second] = bridges;
  if (!bridge)
    throw new Fault('bad-cell', 'expected a salt bridge `||` between two half-cells', {
      text,
      at: 0,
      length: Math.max(1, text.length),
    });
  if (second)
    throw new Fault('bad-cell', 'a cell has one salt bridge, found another', {
      text,
      at: second.index,
      length: second[0].length,
    });
  const after = bridge.index + bridge[0].length;
  return { left: readPhases(text, 0, bridge.index), right: readPhases(text, after, text.length) };
}

function readPhases(text: string, from: number, to: number): Phase[] {
  let at = from;
  return text
    .slice(from, to)
    .split('|')
    .map((phase) => {
      const start = at;
      at += phase.length + 1;
      let within = start;
      return phase.split(',').map((species) => {
        const here = within;
        within += species.length + 1;
        return relocated(() => parseFormula(species), text, here);
      });
    });
}

/**
 * The half-equation that runs in a half-cell: of its two species that share an element in two oxidation states.
 * @throws Fault `bad-cell` when there is no such pair
 */
export function halfOf(phases: readonly Phase[]): HalfEquation {
  const species = phases.flat().filter((formula) => keyOf(formula) !== 'Pt' || formula.charge !== 0);
  const medium = species.some((formula) => keyOf(formula) === 'OH^-') ? 'alkali' : 'acid';
  const late = (formula: Formula) => (keyOf(formula) === 'H^+' || keyOf(formula) === 'OH^-' ? 1 : 0);
  const order = species.toSorted((one, other) => late(one) - late(other));
  for (const oxidised of order) {
    for (const reduced of order) {
      const element = elementsIn(oxidised).find((symbol) => falls(oxidised, reduced, symbol));
      if (element === undefined) continue;
      const extras = species.filter((formula) => formula !== oxidised && formula !== reduced && late(formula) === 0);
      return halfEquation(oxidised, reduced, medium, extras);
    }
  }
  throw new Fault('bad-cell', 'expected two oxidation states of one element in a half-cell', {});
}

function falls(oxidised: Formula, reduced: Formula, symbol: string): boolean {
  const [before, after] = [averageOxidationNumber(oxidised, symbol), averageOxidationNumber(reduced, symbol)];
  return before !== undefined && after !== undefined && before.compare(after) > 0;
}
