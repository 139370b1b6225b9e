import type { Inline } from '../document/inline.ts';
import { Rational } from '../exact/rational.ts';
import { numberOf } from './number-of.ts';
import type { NodeId, Values } from './value.ts';

/** Arithmetic of a step: what is computed and, in the same shape, what is printed. */
export type Expression =
  | { readonly op: 'node'; readonly id: NodeId }
  /** a number that stands for itself: `1000` */
  | { readonly op: 'number'; readonly text: string }
  | { readonly op: 'plus' | 'minus' | 'times' | 'over'; readonly left: Expression; readonly right: Expression };

export const node = (id: NodeId): Expression => ({ op: 'node', id });
export const number = (text: string): Expression => ({ op: 'number', text });
export const plus = (left: Expression, right: Expression): Expression => ({ op: 'plus', left, right });
export const minus = (left: Expression, right: Expression): Expression => ({ op: 'minus', left, right });
export const times = (left: Expression, right: Expression): Expression => ({ op: 'times', left, right });
export const over = (left: Expression, right: Expression): Expression => ({ op: 'over', left, right });

/** The exact value of an expression. */
export function evaluate(expression: Expression, values: Values): Rational {
  if (expression.op === 'node') return numberOf(values, expression.id);
  if (expression.op === 'number') return Rational.parse(expression.text);
  const [left, right] = [evaluate(expression.left, values), evaluate(expression.right, values)];
  switch (expression.op) {
    case 'plus':
      return left.plus(right);
    case 'minus':
      return left.minus(right);
    case 'times':
      return left.times(right);
    case 'over':
      return left.over(right);
  }
}

/** The nodes an expression reads, each once. */
export function nodesOf(expression: Expression): NodeId[] {
  if (expression.op === 'node') return [expression.id];
  if (expression.op === 'number') return [];
  return [...new Set([...nodesOf(expression.left), ...nodesOf(expression.right)])];
}

const SIGNS = { plus: ' + ', minus: ' \u2212 ', times: ' × ' } as const;

/**
 * An expression as it is written out, divisions as stacked fractions and negative numbers after a sign in brackets.
 * @param show how the number of a node is printed, without its unit
 */
export function printExpression(expression: Expression, show: (id: NodeId) => string): Inline[] {
  if (expression.op === 'node') return [text(show(expression.id))];
  if (expression.op === 'number') return [text(expression.text)];
  if (expression.op === 'over') {
    return [{ kind: 'fraction', above: printExpression(expression.left, show), below: printExpression(expression.right, show) }];
  }
  return [
    ...operand(expression.left, expression.op, 'left', show),
    text(SIGNS[expression.op]),
    ...operand(expression.right, expression.op, 'right', show),
  ];
}

function operand(
  inner: Expression,
  outer: 'plus' | 'minus' | 'times',
  side: 'left' | 'right',
  show: (id: NodeId) => string,
): Inline[] {
  const printed = printExpression(inner, show);
  const isSum = inner.op === 'plus' || inner.op === 'minus';
  const first = printed[0];
  const startsNegative = first?.kind === 'text' && first.text.startsWith('\u2212');
  const bracket =
    (isSum && (outer === 'times' || (outer === 'minus' && side === 'right'))) || (startsNegative && side === 'right');
  return bracket ? [text('('), ...printed, text(')')] : printed;
}

/** Powers of ten in a shown number are raised: the printer sets the caret of a quantity, not of plain text. */
function text(shown: string): Inline {
  return shown.includes('^') ? { kind: 'quantity', number: shown, unit: '' } : { kind: 'text', text: shown };
}
