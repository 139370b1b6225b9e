import type { Inline } from '../document/inline.ts';
import type { PartId, Step } from './question.ts';
import type { NodeId, Value, Values } from './value.ts';

/** A value of words: two are the same when their keys are. */
export const wordsValue = (key: string, content: readonly Inline[], each?: readonly (readonly Inline[])[]): Value => ({
  kind: 'words',
  key,
  content,
  ...(each ? { each } : {}),
});

/** The key of a words value at a node. Another kind is a fault of the family that asks. */
export function keyAt(values: Values, id: NodeId): string {
  const value = values.get(id);
  if (value?.kind !== 'words') throw new Error(`expected words at \`${id}\`, found ${value?.kind ?? 'nothing'}`);
  return value.key;
}

/** A step that gives something other than a number: an equation, a species, a statement. */
export function plainStep(
  id: NodeId,
  part: PartId,
  needs: readonly NodeId[],
  principle: string,
  work: (values: Values) => Value,
): Step {
  return { id, part, needs, principle, work, printed: 'exact' };
}
