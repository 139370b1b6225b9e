import type { Block } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import type { Wording } from '../document/wording.ts';
import { workedExample } from '../questions/present.ts';
import type { Paper } from './paper.ts';

/** Worked solutions to hand out afterwards: each question again, every step under the principle it uses. */
export function solutionsSheet(paper: Paper, wording: Wording): Document {
  const words = wording.words('extras');
  const title = `${paper.title}: worked solutions`;
  const solved = paper.questions.flatMap((question, at): Block[] => [
    { kind: 'heading', level: 2, content: words.inline('solution-heading', { number: at + 1 }) },
    ...question.stem,
    ...workedExample(question, 'solution'),
  ]);
  return {
    title,
    language: 'en-GB',
    subject: 'Worked solutions',
    kind: 'scheme',
    foot: title,
    blocks: [
      { kind: 'head', title: paper.title, facts: ['Worked solutions'], cells: [], note: words.inline('solutions-note') },
      ...solved,
    ],
  };
}
