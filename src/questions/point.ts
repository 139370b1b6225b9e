import type { Inline } from '../document/inline.ts';
import type { Point } from './question.ts';
import type { NodeId } from './value.ts';

type Runs = readonly (readonly Inline[])[];

interface PointSpec {
  readonly step: NodeId;
  readonly earns: readonly Inline[];
  readonly also?: Runs;
  readonly refuse?: Runs;
  readonly ignore?: Runs;
  readonly carries?: boolean;
}

/** One mark of a kind; its id is its step's with the kind, so that a step can carry one of each. */
function pointOf(kind: Point['kind'], spec: PointSpec): Point {
  return {
    id: `${spec.step}:${kind}`,
    step: spec.step,
    marks: 1,
    carries: spec.carries ?? false,
    kind,
    accept: [spec.earns, ...(spec.also ?? [])],
    refuse: spec.refuse ?? [],
    ignore: spec.ignore ?? [],
  };
}

export const methodPoint = (spec: PointSpec): Point => pointOf('method', spec);
export const valuePoint = (spec: PointSpec): Point => pointOf('value', spec);
export const statementPoint = (spec: PointSpec): Point => pointOf('statement', spec);
