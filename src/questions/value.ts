import type { Equation } from '../chemistry/equation.ts';
import type { Formula } from '../chemistry/formula.ts';
import type { Arrow, Inline } from '../document/inline.ts';
import type { Rational } from '../exact/rational.ts';

/** What a datum or a step holds. Numbers are exact; how they are printed is the datum's or the step's affair. */
export type Value =
  | { readonly kind: 'number'; readonly value: Rational; readonly unit: string; readonly signed?: boolean }
  /** `couples`: ids of the couple reduced and of the couple oxidised, for the gate's second method; half-equations have none */
  | {
      readonly kind: 'equation';
      readonly equation: Equation;
      readonly arrow: Arrow;
      readonly couples?: readonly [string, string];
    }
  | { readonly kind: 'species'; readonly formula: Formula }
  /** a ratio of amounts: `5 : 1` of the two species */
  | { readonly kind: 'ratio'; readonly left: Rational; readonly right: Rational; readonly of: readonly [Formula, Formula] }
  /** a choice or a statement; two are the same when their keys are; `each` is what goes on several short lines, where it is asked so */
  | {
      readonly kind: 'words';
      readonly key: string;
      readonly content: readonly Inline[];
      readonly each?: readonly (readonly Inline[])[];
    }
  | { readonly kind: 'list'; readonly values: readonly Value[]; readonly joiner: 'then' | 'and' };

/** Id of a datum or a step, unique in its question: `E-positive`, `emf`. */
export type NodeId = string;

/** Every datum and every step of a question that has been worked. */
export type Values = ReadonlyMap<NodeId, Value>;
