import type { Decimal } from '../exact/decimal.ts';
import type { Rational } from '../exact/rational.ts';
import type { Values } from './cell.ts';
import type { Combined } from './combine.ts';
import type { Couple, Medium } from './couple.ts';
import type { Equation } from './equation.ts';
import type { Condition } from './facts.ts';
import type { Formula, SpeciesKey } from './formula.ts';

/** Moles, exact, or more than can be used up. */
export type Amount = Rational | 'excess';

/** Something that is put into the beaker. */
export interface Reactant {
  readonly formula: Formula;
  readonly amount: Amount;
  /** true for an ion that only came along with a salt */
  readonly counterIon?: boolean;
}

/**
 * What is put together. H⁺ in acid and OH⁻ in alkali are in excess unless they are given as reactants with an amount. The first
 * reactant is the subject: its lineage gives the ladder.
 */
export interface Beaker {
  readonly reactants: readonly Reactant[];
  readonly medium: Medium;
  /** sheets react by printed potentials, calculators by stored ones */
  readonly values: Values;
  /** conditions that are declared: warm, time, catalyst … */
  readonly given?: readonly Condition[];
}

/** Two couples that may react: an oxidant that is reduced, a reductant that is oxidised. */
export interface Pairing {
  readonly oxidant: Couple;
  readonly reductant: Couple;
  /** V, E°(oxidant) − E°(reductant) */
  readonly emf: Decimal;
}

/** One reaction of the sequence, run until a species is used up. */
export interface Step extends Pairing {
  /** overall equation and electrons */
  readonly combined: Combined;
  /** mol of the equation as written */
  readonly extent: Rational;
  /** what was used up, the first in the equation when several were */
  readonly limiting: SpeciesKey;
  /** what the subject's lineage does in this step */
  readonly from: SpeciesKey;
  readonly to: SpeciesKey;
  /** true when `from` → `to` is a reduction */
  readonly reduction: boolean;
  /** solutes and solids present before and after, H⁺, OH⁻ and water left out */
  readonly before: readonly SpeciesKey[];
  readonly after: readonly SpeciesKey[];
}

/** Steps that run again and again: printed once, with their sum. */
export interface Loop {
  /** places in `steps` */
  readonly steps: readonly number[];
  readonly sum: Equation;
  /** the catalyst: species of the steps that the sum does not hold */
  readonly carriers: readonly SpeciesKey[];
}

/** A reaction that is told apart from the sequence. */
export interface Apart extends Pairing {
  readonly combined: Combined;
  /**
   * parallel: hydrogen, a counter-ion, air and slow reactions beside the sequence ·
   * held: E° allows it, but it needs a condition, is not observed, is passive or is calculation only
   */
  readonly kind:
    | 'hydrogen'
    | 'counter-ion'
    | 'air'
    | 'slow'
    | 'conditional'
    | 'not-observed'
    | 'passive'
    | 'calculation-only'
    | 'precipitates';
  /** conditions any one of which would let it run */
  readonly needs: readonly Condition[];
  readonly because: string;
}

/** A species at the end. */
export interface Present {
  readonly key: SpeciesKey;
  readonly formula: Formula;
  readonly amount: Amount;
}

/** Something to tell that is not a reaction of two couples. */
export interface MixtureNote {
  readonly kind: 'speciation' | 'precipitates' | 'medium-used-up' | 'medium-changed';
  readonly text: string;
}

/** What happens in the beaker: the engine's answer, from which questions and explanations are made. */
export interface Mixture {
  readonly steps: readonly Step[];
  readonly loops: readonly Loop[];
  /** water, H⁺ and OH⁻ left out */
  readonly final: readonly Present[];
  /** what happens beside the sequence */
  readonly parallel: readonly Apart[];
  /** what E° allows and yet does not happen */
  readonly held: readonly Apart[];
  /** 0 ≤ E°cell < 0.10 V among what is left: neither a step nor infeasible */
  readonly borderline: readonly Pairing[];
  /** the next rungs, not feasible with what is left: why the subject stops */
  readonly stop: readonly Pairing[];
  /** reactants that were used up */
  readonly usedUp: readonly SpeciesKey[];
  readonly notes: readonly MixtureNote[];
  /** mol gained, negative when used, of every species, excess ones and the solvent included */
  readonly net: ReadonlyMap<SpeciesKey, { readonly formula: Formula; readonly net: Rational }>;
}
