import type { Block, PartBlock } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import { strong, text } from '../document/inlines.ts';
import type { Wording } from '../document/wording.ts';
import type { Paper } from './paper.ts';
import { labelOf, labelText } from './question-label.ts';
import { questionSheet } from './question-sheet.ts';

/** Candidates to choose from, each under the label that `couplet sheet --codes` takes. */
export function browseSheet(paper: Paper, wording: Wording): Document {
  const sheet = questionSheet(paper, wording);
  const words = wording.words('browse');
  const blocks = sheet.blocks.map((block): Block => {
    if (block.kind === 'head') return { ...block, cells: [], note: words.inline('note') };
    if (block.kind !== 'question') return block;
    const label = labelText(labelOf(paper.questions[block.number - 1]!));
    const title: Block = { kind: 'paragraph', content: [strong(label), text(` · ${block.marks} marks`)] };
    return { ...block, stem: [title, ...block.stem], parts: block.parts.map(withoutSpace) };
  });
  return { ...sheet, blocks };
}

/** Nobody answers on a list to choose from: prompts stand close, room to write is left away. */
function withoutSpace(part: PartBlock): PartBlock {
  return { ...part, blocks: part.blocks.filter(({ kind }) => kind !== 'answer') };
}
