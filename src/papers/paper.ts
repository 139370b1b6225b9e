import type { Question } from '../questions/question.ts';
import type { SheetRequest } from './request.ts';

/** A chosen, ordered, checked set of questions: everything both sheets are printed from. */
export interface Paper {
  readonly request: SheetRequest;
  readonly title: string;
  readonly questions: readonly Question[];
  /** under support `worked`: the example before each question, by the question's code */
  readonly examples: ReadonlyMap<string, Question>;
  /** marks a pupil can earn under the sheet's support */
  readonly marks: number;
  /** preset 1.2 minutes a mark, rounded up */
  readonly minutes: number;
  /** the same with a quarter more time, rounded up */
  readonly minutesWithExtra: number;
  readonly made: Provenance;
}

/** What a sheet was made with: enough to say why another making differs. */
export interface Provenance {
  /** of this program */
  readonly version: string;
  readonly table: { readonly name: string; readonly digest: string };
  readonly wording: string;
}
