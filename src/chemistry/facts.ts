import type { Rational } from '../exact/rational.ts';
import type { Medium } from './couple.ts';
import type { SpeciesKey } from './formula.ts';

/** A condition that a question, or `react --given`, can declare. */
export type Condition = 'warm' | 'time' | 'catalyst' | 'oxide-removed' | 'excess-oxidant';

/** What is known of two species together, beyond their potentials. `*` stands for any species. */
export interface PairFact {
  readonly oxidant: SpeciesKey;
  readonly reductant: SpeciesKey;
  /** media in which it holds; all when absent */
  readonly media?: readonly Medium[];
  /**
   * conditional: reacts only when `needs` is declared · not-observed: E° allows it, nothing is seen · passive: a coating stops it ·
   * precipitates: the two cannot stand in one solution · slow: reported apart as a parallel reaction
   */
  readonly verdict: 'conditional' | 'not-observed' | 'passive' | 'precipitates' | 'slow';
  /** any one of these makes a conditional pair react */
  readonly needs?: readonly Condition[];
  readonly because: string;
  readonly source: string;
}

/**
 * A couple that acts in a role only with the partners named. With those partners no other couple of the same species competes:
 * thiosulfate goes to tetrathionate only with iodine, copper(II) to copper(I) iodide only with iodide.
 */
export interface Restriction {
  readonly couple: string;
  readonly as: 'oxidant' | 'reductant';
  /** the reduced (oxidised) forms it acts on when it is the oxidant (reductant) */
  readonly partners: readonly SpeciesKey[];
  readonly media?: readonly Medium[];
  readonly needs?: readonly Condition[];
  readonly because: string;
  readonly source: string;
}

/** Species that never enter the ordering (H⁺, O₂, H₂O, dilute SO₄²⁻, counter-ions) unless named as a reactant. */
export interface Bystander {
  readonly species: SpeciesKey;
  readonly as: 'oxidant' | 'reductant';
  /** true when naming it as a reactant lets it take part */
  readonly unlessNamed: boolean;
  readonly because: string;
  readonly source: string;
}

/** How a species stands in a medium before any redox step: dichromate in alkali is chromate. */
export interface Speciation {
  readonly species: SpeciesKey;
  readonly medium: Medium;
  readonly becomes: SpeciesKey;
  /** formula units of `becomes` for one of `species`: ½ for chromate that becomes dichromate */
  readonly count: Rational;
  readonly source: string;
}

export interface Facts {
  readonly pairs: readonly PairFact[];
  readonly restrictions: readonly Restriction[];
  readonly bystanders: readonly Bystander[];
  readonly speciations: readonly Speciation[];
}
