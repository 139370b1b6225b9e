import type { Document } from '../document/document.ts';
import type { Wording } from '../document/wording.ts';
import { answerKey } from '../papers/answer-key.ts';
import { feedbackNotes } from '../papers/feedback-notes.ts';
import type { Paper } from '../papers/paper.ts';
import { solutionsSheet } from '../papers/solutions-sheet.ts';
import { teacherCopy } from '../papers/teacher-copy.ts';
import type { Tables } from '../potentials/tables.ts';
import type { Extra } from './extra-names.ts';

export type { Extra };

type Maker = (paper: Paper, tables: Tables, wording: Wording) => Document;

/** Copies that are made beside the two sheets on request, by the option that asks for them. */
export const EXTRAS = {
  teacher: { file: 'teacher-copy.pdf', make: ((paper, _tables, wording) => teacherCopy(paper, wording)) as Maker },
  solutions: { file: 'solutions.pdf', make: ((paper, _tables, wording) => solutionsSheet(paper, wording)) as Maker },
  key: { file: 'answer-key.pdf', make: ((paper, _tables, wording) => answerKey(paper, wording)) as Maker },
  feedback: { file: 'feedback.pdf', make: feedbackNotes as Maker },
} as const satisfies Record<Extra, unknown>;
