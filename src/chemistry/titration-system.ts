import type { Formula } from './formula.ts';

/** A pair of couples that a class titrates: one clean step, a known ratio, a visible end point. */
export interface TitrationSystem {
  /** id of the couple of the solution in the burette */
  readonly titrant: string;
  /** id of the couple of the solution in the flask */
  readonly analyte: string;
  readonly level: 'core' | 'stretch';
  /** substances the two solutions are made from, as weighed */
  readonly titrantSalt: Formula;
  readonly analyteSalt: Formula;
  /** `dilute sulfuric acid`; absent when none is added */
  readonly acid?: string;
  /** `warmed to about 65 °C` */
  readonly condition?: string;
  /** `self` for a titrant that shows its own end point */
  readonly indicator: string;
  /** colours in the flask just before and at the end point */
  readonly before: string;
  readonly after: string;
  readonly alsoAccepted: readonly string[];
  /** why the colour changes just then */
  readonly because: string;
  readonly source: string;
}
