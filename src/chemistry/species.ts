import type { Formula, SpeciesKey } from './formula.ts';

/** What is known of a species apart from its formula. All words are for people; keys are caret notation without state. */
export interface Species {
  readonly key: SpeciesKey;
  /** with the state in which it is met in these questions */
  readonly formula: Formula;
  /** IUPAC 2005 name with the usual trade spelling: `manganate(VII) ion`, `sulfur dioxide` */
  readonly name: string;
  /** other names a marker accepts: `permanganate ion` */
  readonly otherNames: readonly string[];
  /** absent when the species is never seen alone in these questions */
  readonly colour?: Colour;
  /** what holds the current in a half-cell: the metal itself, a gas over platinum, or a solution */
  readonly role: 'metal' | 'gas' | 'solution' | 'solid' | 'liquid';
}

/** Colour as it is accepted in an answer. */
export interface Colour {
  /** the word printed in the scheme: `purple`, `colourless` */
  readonly word: string;
  /** other words a marker accepts: `violet`, `pink-purple` */
  readonly accepted: readonly string[];
  /** where the colour is described, or `common practice, no source` */
  readonly source: string;
}

/** A substance in a bottle: the salt, acid or metal that brings a species to the bench. */
export interface Salt {
  /** formula as weighed, with water of crystallisation: `FeSO4·7H2O` */
  readonly formula: Formula;
  readonly name: string;
  /** the species it brings, and how many of it each formula unit gives */
  readonly gives: SpeciesKey;
  readonly count: number;
  /** the ions that come along, with their counts */
  readonly with: readonly { readonly key: SpeciesKey; readonly count: number }[];
}

/** Hazards of a substance in one form and band of concentration (GHS statements). */
export interface Hazard {
  /** `potassium manganate(VII)` */
  readonly substance: string;
  /** species whose presence calls for this row */
  readonly keys: readonly SpeciesKey[];
  readonly form: 'solid' | 'solution' | 'liquid' | 'gas' | 'powder';
  /** mol dm⁻³, for solutions: from ≤ c < below; absent ends are open */
  readonly from?: number;
  readonly below?: number;
  readonly signal: 'Danger' | 'Warning' | 'none';
  /** H statement codes: `H410` */
  readonly statements: readonly string[];
  /** one short line for pupils, words first, our own wording */
  readonly caution: string;
  readonly source: string;
  /** true until checked against a current safety data sheet */
  readonly fromMemory: boolean;
}
