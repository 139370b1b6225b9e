import type { Block } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import type { Inline } from '../document/inline.ts';
import { text } from '../document/inlines.ts';
import type { Wording } from '../document/wording.ts';
import type { Words } from '../document/words.ts';
import type { Paper } from './paper.ts';
import { partLetter, questionSheet } from './question-sheet.ts';

/**
 * The very question sheet with every answer in its place, page for page, so that it can be held beside a pupil's. What explains an
 * answer (a ladder of potentials) stands on a page of its own behind it.
 */
export function teacherCopy(paper: Paper, wording: Wording): Document {
  const words = wording.words('extras');
  const sheet = questionSheet(paper, wording, true);
  const title = `${paper.title}: teacher copy`;
  return {
    ...sheet,
    title,
    answered: true,
    blocks: [...sheet.blocks.map((block) => headed(block, words)), ...explained(paper, words)],
  };
}

/** The head as high as the sheet's: the cell for a name says what this copy is. */
function headed(block: Block, words: Words): Block {
  if (block.kind !== 'head') return block;
  const said = words.inline('teacher-cell').map((inline) => (inline.kind === 'text' ? inline.text : ''));
  return { ...block, cells: block.cells.map((cell, at) => (at === 0 ? said.join('') : cell)) };
}

/** Each figure under the place that it explains, which its caption names: a heading could be parted from it in huge print. */
function explained({ questions }: Paper, words: Words): Block[] {
  const figures = questions.flatMap((question, number) =>
    question.parts.flatMap((part, at): Block[] => {
      const place = words.inline('teacher-explains', { place: `${number + 1}${partLetter(question, at) ?? ''}` });
      return (part.explains ?? []).map((block) => placed(block, place));
    }),
  );
  if (figures.length === 0) return [];
  return [{ kind: 'page-break' }, { kind: 'heading', level: 2, content: words.inline('teacher-explained') }, ...figures];
}

function placed(block: Block, place: readonly Inline[]): Block {
  if (block.kind !== 'figure') return block;
  return { ...block, caption: [...place, text(' '), ...(block.caption ?? [])] };
}
