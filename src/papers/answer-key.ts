import type { Block } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import { joined, text } from '../document/inlines.ts';
import type { Wording } from '../document/wording.ts';
import { partMarks } from '../questions/part-marks.ts';
import { answersOf } from './answers-of.ts';
import type { Paper } from './paper.ts';
import { partLetter } from './question-sheet.ts';

/** Copies printed one after another, to cut apart and hand out for marking in pairs. */
const COPIES = 4;

/** A compact key: part, answer, marks, and nothing else; several copies to a page, with a line to cut along between them. */
export function answerKey(paper: Paper, wording: Wording): Document {
  const words = wording.words('extras');
  const title = `${paper.title}: answers`;
  const rows = paper.questions.flatMap((question, number) =>
    question.parts.map((part, at) => [
      [text(`${number + 1}${partLetter(question, at) ?? ''}`)],
      joined(answersOf(question, part), '; '),
      [text(String(partMarks(part)))],
    ]),
  );
  const copy = (): Block[] => [
    { kind: 'heading', level: 2, content: [text(title)] },
    {
      kind: 'table',
      summary: 'Answer and marks of each part',
      header: [words.inline('key-part'), words.inline('key-answer'), words.inline('key-marks')],
      rows,
      rowHeaders: true,
      align: ['start', 'start', 'end'],
      widths: [1, 8, 1],
      small: true,
      whole: true,
      folds: true,
    },
  ];
  return {
    title,
    language: 'en-GB',
    subject: 'Answers',
    kind: 'scheme',
    foot: title,
    blocks: Array.from({ length: COPIES }, (_, at) => (at === 0 ? copy() : [{ kind: 'cut' } as const, ...copy()])).flat(),
  };
}
