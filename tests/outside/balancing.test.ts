import { describe, expect, it } from 'vitest';
import { hydrogenIon, water } from '../../src/chemistry/common-species.ts';
import type { Equation } from '../../src/chemistry/equation.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { solveEquation } from '../../src/chemistry/solve-equation.ts';
import { cancelEquation, lowestTerms, sameEquation } from '../../src/chemistry/terms.ts';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { keyOf } from '../../src/chemistry/write-formula.ts';
import { checkedCases } from './left-out.ts';

/** H₃O⁺ is another way to write H⁺: where a source prints it, H⁺ and H₂O are compared. */
function withHydrogenIons(equation: Equation): Equation {
  const side = (terms: Equation['left']) =>
    terms.flatMap((term) =>
      keyOf(term.formula) === 'H3O^+'
        ? [
            { ...term, formula: hydrogenIon },
            { ...term, formula: water },
          ]
        : [term],
    );
  return lowestTerms(cancelEquation({ left: side(equation.left), right: side(equation.right) }));
}

interface Whole {
  readonly reactants: readonly string[];
  readonly products: readonly string[];
  readonly medium: 'acid' | 'base' | 'none';
  readonly type: string;
}

describe('published balanced equations', () => {
  it.each(checkedCases<Whole, { readonly equation: string }>('balance'))('are ours: $id, $source', ({ given, answer }) => {
    const text = `${given.reactants.join(' + ')} -> ${given.products.join(' + ')}`;
    const found = solveEquation(text, given.medium === 'base' ? 'alkali' : 'acid');
    if (found.kind === 'many') throw new Error(`${text} is not decided`);
    const [ours, printed] = [withHydrogenIons(found.equation), withHydrogenIons(parseEquation(answer.equation))];
    expect(writeEquation(ours)).toBe(sameEquation(ours, printed) ? writeEquation(ours) : writeEquation(printed));
    expect(found.kind === 'half').toBe(given.type === 'half');
  });
});

interface Agents {
  readonly ask?: string;
  readonly species?: string;
  readonly reaction?: string;
  readonly half_reaction?: string;
}

describe('published oxidising and reducing agents', () => {
  const cases = checkedCases<Agents, { readonly oxidised?: string; readonly reduced?: string; readonly process?: string }>(
    'oxidation-number',
  ).filter((each) => each.given.ask !== undefined && each.given.species === undefined);
  it.each(cases)('are ours: $id, $source', ({ given, answer }) => {
    const [, text, medium] = /^(.*?)(?: \((acid|base)\))?$/.exec((given.reaction ?? given.half_reaction)!)!;
    const found = solveEquation(text!, medium === 'base' ? 'alkali' : 'acid');
    if (found.kind === 'many') throw new Error(`${text} is not decided`);
    const [oxidised, reduced] = [found.oxidised.map(keyOf), found.reduced.map(keyOf)];
    if (answer.process) {
      expect(found.kind).toBe('half');
      expect(oxidised.length > 0 ? 'oxidation' : 'reduction').toBe(answer.process);
    } else {
      expect([oxidised, reduced]).toEqual([[answer.oxidised], [answer.reduced]]);
    }
  });
  it('number 11', () => {
    expect(cases).toHaveLength(11);
  });
});
