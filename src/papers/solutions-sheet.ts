import type { PartBlock, QuestionBlock } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import type { Wording } from '../document/wording.ts';
import type { Question } from '../questions/question.ts';
import { type WorkedPart, workedParts } from '../questions/worked-example.ts';
import type { Paper } from './paper.ts';

/** Worked solutions to hand out afterwards: each question again, every step under the principle it uses. */
export function solutionsSheet(paper: Paper, wording: Wording): Document {
  const words = wording.words('extras');
  const title = `${paper.title}: worked solutions`;
  return {
    title,
    language: 'en-GB',
    subject: 'Worked solutions',
    kind: 'scheme',
    foot: title,
    blocks: [
      { kind: 'head', title: paper.title, facts: ['Worked solutions'], cells: [], note: words.inline('solutions-note') },
      ...paper.questions.map((question, at) => solved(question, at + 1)),
    ],
  };
}

/** A question as on the sheet, with nothing to earn and no room to write. */
function solved(question: Question, number: number): QuestionBlock {
  const { code, stem } = question;
  return { kind: 'question', number, code, marks: 0, stem, parts: workedParts(question).map(solvedPart) };
}

function solvedPart({ part, letter, blocks }: WorkedPart): PartBlock {
  return {
    kind: 'part',
    ...(letter === undefined ? {} : { letter }),
    marks: 0,
    blocks: [{ kind: 'paragraph', content: part.prompt }, ...blocks, ...(part.explains ?? [])],
  };
}
