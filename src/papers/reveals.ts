import type { Block } from '../document/block.ts';
import { text } from '../document/inlines.ts';
import type { Words } from '../document/words.ts';
import type { Tables } from '../potentials/tables.ts';
import { rowsOf } from '../questions/rows.ts';
import type { Paper } from './paper.ts';
import { partLetter } from './question-sheet.ts';

/** "What this sheet can show you": each misconception that some answer would reveal, and where. */
export function reveals(paper: Paper, tables: Tables, words: Words): Block[] {
  const places = new Map<string, string[]>();
  paper.questions.forEach((question, at) => {
    for (const row of rowsOf(question)) {
      const part = question.steps.find(({ id }) => id === row.at)!.part;
      const label = `${at + 1}${
        partLetter(
          question,
          question.parts.findIndex(({ id }) => id === part),
        ) ?? ''
      }`;
      for (const id of [row.slip, ...row.aliases]) places.set(id, [...new Set([...(places.get(id) ?? []), label])]);
    }
  });
  if (places.size === 0) return [{ kind: 'paragraph', content: words.inline('reveals-none') }];
  const named = [...places].map(([id, labels]) => ({ name: tables.misconceptions.get(id)?.name ?? id, labels }));
  return [
    {
      kind: 'table',
      summary: 'Misconceptions that this sheet can reveal, and the parts in which each would show',
      header: [words.inline('reveals-what'), words.inline('reveals-where')],
      rows: named.map(({ name, labels }) => [[text(name[0]!.toUpperCase() + name.slice(1))], [text(labels.join(', '))]]),
      rowHeaders: false,
      align: ['start', 'start'],
      widths: [4, 1],
    },
  ];
}
