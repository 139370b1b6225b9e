import type { Rational } from '../exact/rational.ts';
import type { NodeId, Value, Values } from './value.ts';

/** The value of a node. A missing one is a fault of the family that asks. */
export function valueAt(values: Values, id: NodeId): Value {
  const value = values.get(id);
  if (!value) throw new Error(`no value stands at \`${id}\`; there are: ${[...values.keys()].join(', ')}`);
  return value;
}

/** The number at a node. Another kind of value is a fault of the family that asks. */
export function numberOf(values: Values, id: NodeId): Rational {
  const value = valueAt(values, id);
  if (value.kind !== 'number') throw new Error(`expected a number at \`${id}\`, found ${value.kind}`);
  return value.value;
}
