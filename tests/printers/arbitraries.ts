import fc from 'fast-check';
import type { Equation, Term } from '../../src/chemistry/equation.ts';
import type { Formula, FormulaNode, State } from '../../src/chemistry/formula.ts';
import { Rational } from '../../src/exact/rational.ts';

const count = fc.oneof(fc.constant(1), fc.integer({ min: 1, max: 12 }));
const symbol = fc.constantFrom('H', 'C', 'Co', 'O', 'Cl', 'Fe', 'S', 'I', 'Cr', 'Mn', 'V', 'N', 'Ni', 'Cu', 'Sn', 'K', 'Zn');
const element = fc.record({ kind: fc.constant('element' as const), symbol, count });

const { nodes } = fc.letrec<{ nodes: readonly FormulaNode[]; node: FormulaNode }>((tie) => ({
  nodes: fc.array(tie('node'), { minLength: 1, maxLength: 3 }),
  node: fc.oneof(
    { maxDepth: 2 },
    element,
    fc.record({
      kind: fc.constant('group' as const),
      bracket: fc.constantFrom('(' as const, '[' as const),
      nodes: tie('nodes'),
      count,
    }),
  ),
}));

/** Formulas of any shape: brackets in brackets, hydrates, charges, states, and the electron. */
export const formulas: fc.Arbitrary<Formula> = fc.oneof(
  { weight: 1, arbitrary: fc.constant<Formula>({ units: [], charge: -1 }) },
  {
    weight: 12,
    arbitrary: fc
      .record({
        first: nodes,
        rest: fc.array(fc.record({ count, nodes }), { maxLength: 1 }),
        charge: fc.integer({ min: -4, max: 4 }),
        state: fc.constantFrom<State | undefined>('s', 'l', 'g', 'aq', undefined),
      })
      .map(({ first, rest, charge, state }) => ({
        units: [{ count: 1, nodes: first }, ...rest],
        charge,
        ...(state ? { state } : {}),
      })),
  },
);

const coefficient = fc.oneof(
  fc.integer({ min: 1, max: 20 }).map((n) => Rational.of(n)),
  fc.constantFrom(Rational.of(1, 2), Rational.of(5, 2)),
);
const term: fc.Arbitrary<Term> = fc.record({ coefficient, formula: formulas });
const side = fc.array(term, { minLength: 1, maxLength: 5 });

/** Equations of any species, balanced or not. */
export const equations: fc.Arbitrary<Equation> = fc.record({ left: side, right: side });
