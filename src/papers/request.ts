import type { Topic } from '../questions/family.ts';
import type { Level, Support, Units } from '../questions/question.ts';

/** What a sheet is asked to be. */
export interface SheetRequest {
  /** a word or phrase; the same seed, settings, table and version give the same sheet */
  readonly seed: string;
  /** short name of the set: its folder under the output folder, and the foot of its pages */
  readonly name: string;
  /** printed large at the top; made from the topics when absent */
  readonly title?: string;
  readonly level: Level;
  readonly support: Support;
  /** the misconception whose step support `completion` leaves blank; each family's most common one when absent */
  readonly on?: string;
  /** share of the marks that is multiple choice, 0 to 1 */
  readonly choice: number;
  readonly units: Units;
  /** colours are not to be recalled: another property is asked in their place, for the same marks */
  readonly withoutColourRecall?: boolean;
  /** family ids; all families when empty */
  readonly families: readonly string[];
  readonly topics: readonly Topic[];
  /** topics, families or species (caret notation) to leave out */
  readonly without: readonly string[];
  readonly length: SheetLength;
}

/** How long the sheet is: one of three measures. */
export type SheetLength =
  | { readonly unit: 'questions'; readonly count: number }
  | { readonly unit: 'marks'; readonly count: number }
  | { readonly unit: 'minutes'; readonly count: number };
