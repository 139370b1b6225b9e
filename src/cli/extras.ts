import type { Document } from '../document/document.ts';
import type { Wording } from '../document/wording.ts';
import { answerKey } from '../papers/answer-key.ts';
import { dataPage } from '../papers/data-page.ts';
import { feedbackNotes } from '../papers/feedback-notes.ts';
import type { Paper } from '../papers/paper.ts';
import { solutionsSheet } from '../papers/solutions-sheet.ts';
import { teacherCopy } from '../papers/teacher-copy.ts';
import type { Tables } from '../potentials/tables.ts';
import type { Extra } from './extra-names.ts';

type Maker = (paper: Paper, tables: Tables, wording: Wording) => Document;

/** Copies that are made beside the two sheets on request, by the option that asks for them. */
export const EXTRAS: Readonly<Record<Extra, Maker>> = {
  data: dataPage,
  teacher: (paper, _tables, wording) => teacherCopy(paper, wording),
  solutions: (paper, _tables, wording) => solutionsSheet(paper, wording),
  key: (paper, _tables, wording) => answerKey(paper, wording),
  feedback: feedbackNotes,
};
