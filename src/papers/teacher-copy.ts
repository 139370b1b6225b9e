import type { Block, PartBlock } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import type { Wording } from '../document/wording.ts';
import { workedPart } from './answers-of.ts';
import type { Paper } from './paper.ts';
import { questionSheet } from './question-sheet.ts';

/** The question sheet with every answer in its place, for the desk and for the screen. */
export function teacherCopy(paper: Paper, wording: Wording): Document {
  const words = wording.words('extras');
  const sheet = questionSheet(paper, wording);
  const blocks = sheet.blocks.map((block): Block => {
    if (block.kind === 'head') return { ...block, cells: [], note: words.inline('teacher-note') };
    if (block.kind !== 'question') return block;
    const question = paper.questions[block.number - 1]!;
    const answers = question.parts.map((part) => [...workedPart(question, part), ...(part.explains ?? [])]);
    return { ...block, parts: block.parts.map((part, at) => answered(part, answers[at]!)) };
  });
  return { ...sheet, kind: 'scheme', title: `${paper.title}: teacher copy`, foot: `${paper.title}: teacher copy`, blocks };
}

function answered(part: PartBlock, answer: readonly Block[]): PartBlock {
  return {
    ...part,
    blocks: [...part.blocks.filter(({ kind }) => kind !== 'answer'), { kind: 'given', caption: 'Answer', blocks: answer }],
  };
}
