import type { WorkingLine } from '../document/block.ts';
import type { Inline } from '../document/inline.ts';
import type { Rounding } from '../exact/rounding.ts';
import { type Expression, evaluate, nodesOf, printExpression } from './expression.ts';
import { numberOf } from './number-of.ts';
import type { PartId, Step } from './question.ts';
import { showNumber, showValue } from './show-value.ts';
import type { NodeId, Value, Values } from './value.ts';

interface NumberStep {
  readonly id: NodeId;
  readonly part: PartId;
  readonly principle: string;
  readonly expression: Expression;
  /** the same arithmetic as it is written out, where a factor of one is left away; the gate recomputes it */
  readonly written?: Expression;
  readonly unit: string;
  readonly signed?: boolean;
  readonly printed: Rounding;
  /** what stands left of the equals sign: `n(Fe²⁺)` */
  readonly left: readonly Inline[];
  /** how each node that is read is printed */
  readonly shown: (id: NodeId) => Rounding;
}

/** A step that is arithmetic: its work and its printed line come from one expression, so that they cannot differ. */
export function numberStep(spec: NumberStep): Step {
  const work = (values: Values): Value => numberValue(evaluate(spec.expression, values), spec);
  return {
    id: spec.id,
    part: spec.part,
    needs: nodesOf(spec.expression),
    principle: spec.principle,
    printed: spec.printed,
    work,
    line: (values): WorkingLine => ({
      left: spec.left,
      right: [
        ...printExpression(spec.written ?? spec.expression, (id) => showNumber(numberOf(values, id), spec.shown(id))),
        { kind: 'text', text: ' = ' },
        ...showValue(work(values), spec.printed, spec.id),
      ],
    }),
  };
}

/** The value a number step gives for another expression: for slips. */
export function numberValue(
  value: ReturnType<typeof evaluate>,
  spec: { readonly unit: string; readonly signed?: boolean },
): Value {
  return { kind: 'number', value, unit: spec.unit, ...(spec.signed ? { signed: true } : {}) };
}
