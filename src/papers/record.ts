import type { Answering, Level } from '../questions/question.ts';
import type { Provenance } from './paper.ts';
import type { SheetRequest } from './request.ts';

/** What `record.json` holds: makes the same sheet again, and says what it was made with. */
export interface PaperRecord {
  readonly kind: 'couplet-record';
  readonly made: Provenance;
  readonly request: SheetRequest;
  readonly title: string;
  readonly marks: number;
  readonly minutes: number;
  readonly questions: readonly RecordedQuestion[];
}

export interface RecordedQuestion {
  readonly number: number;
  readonly slot: string;
  readonly family: string;
  readonly variant: number;
  readonly code: string;
  readonly level: Level;
  readonly answering: Answering;
  readonly marks: number;
  /** place of the right option, from zero; choice questions only */
  readonly keyPlace?: number;
}
