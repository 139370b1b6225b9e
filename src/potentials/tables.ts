import type { Couple, Medium } from '../chemistry/couple.ts';
import type { Facts } from '../chemistry/facts.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Hazard, Salt, Species } from '../chemistry/species.ts';
import type { TitrationSystem } from '../chemistry/titration-system.ts';
import type { Decimal } from '../exact/decimal.ts';

/** Everything that is read from `potentials/`, checked and frozen. Questions compute from nothing else. */
export interface Tables {
  /** name of the table in force, printed on every sheet */
  readonly name: string;
  /** first 12 hex digits of SHA-256 over the data as read: another table, another digest */
  readonly digest: string;
  /** in order of potential, most negative first; ties by id */
  readonly couples: readonly Couple[];
  readonly species: ReadonlyMap<SpeciesKey, Species>;
  readonly salts: readonly Salt[];
  readonly hazards: readonly Hazard[];
  readonly facts: Facts;
  readonly titrations: readonly TitrationSystem[];
  /** relative atomic masses by symbol: to one decimal as printed on the periodic-table extract, and as published */
  readonly atomicMasses: ReadonlyMap<string, { readonly printed: Decimal; readonly published: Decimal }>;
  readonly misconceptions: ReadonlyMap<string, Misconception>;
  /** what is never put together; `facts` tell what reacts, these what is not drawn or done */
  readonly bans: readonly Ban[];
  /** cycles of couples whose potentials do not add up, in words: the table can be used, and its owner should know */
  readonly warnings: readonly string[];
  /** @throws Fault `unknown-couple`, with near matches */
  couple(id: string): Couple;
  /** @throws Fault `unknown-species`, with near matches */
  speciesOf(key: SpeciesKey): Species;
}

/** Substances that are kept apart. Any of `first` with any of `second`, in either order; `*` stands for anything. */
export interface Ban {
  /** ions by their key, bottled substances by the formula of their salt (`HNO3`, `KMnO4`) */
  readonly first: readonly SpeciesKey[];
  readonly second: readonly SpeciesKey[];
  /** media in which it holds; all when absent */
  readonly media?: readonly Medium[];
  /**
   * reagents: not drawn into one mixture · salt bridge: not drawn into one cell · procedure: not in an operation that is
   * described
   */
  readonly where: 'reagents' | 'salt bridge' | 'procedure';
  /** with one of these present the ban does not hold */
  readonly unless: readonly SpeciesKey[];
  readonly because: string;
  readonly source: string;
}

/** A named misconception. Its arithmetic lives in the families' slips. */
export interface Misconception {
  readonly id: string;
  readonly name: string;
  /** the wrong thought, in words a colleague would use */
  readonly reasoning: string;
  /** at most 30 words to the pupil: kind, and says the next step */
  readonly feedback: string;
  readonly evidence: readonly string[];
}
