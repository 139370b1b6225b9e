import type { Block } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import { text } from '../document/inlines.ts';
import type { Wording } from '../document/wording.ts';
import type { Tables } from '../potentials/tables.ts';
import type { Paper } from './paper.ts';
import { placesOf } from './reveals.ts';

/** Notes to hand back: one for each misconception that the sheet can reveal, kind, and with the next step. */
export function feedbackNotes(paper: Paper, tables: Tables, wording: Wording): Document {
  const words = wording.words('extras');
  const title = `${paper.title}: feedback notes`;
  const notes = [...placesOf(paper)].map(([id, places]): Block => {
    const misconception = tables.misconceptions.get(id);
    const blocks: Block[] = [
      { kind: 'paragraph', content: [text(misconception?.feedback ?? '')] },
      { kind: 'paragraph', weight: 'light', content: words.inline('feedback-where', { places: places.join(', ') }) },
    ];
    return { kind: 'given', caption: capitalised(misconception?.name ?? id), blocks };
  });
  return {
    title,
    language: 'en-GB',
    subject: 'Feedback to pupils',
    kind: 'scheme',
    foot: title,
    blocks: [
      { kind: 'head', title: paper.title, facts: ['Feedback notes'], cells: [], note: words.inline('feedback-note') },
      ...notes,
    ],
  };
}

function capitalised(words: string): string {
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`;
}
