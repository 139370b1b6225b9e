import type { Block } from '../document/block.ts';
import { text } from '../document/inlines.ts';
import type { Words } from '../document/words.ts';
import type { Tables } from '../potentials/tables.ts';
import { printedRows } from '../questions/printed-rows.ts';
import type { MisconceptionId } from '../questions/question.ts';
import { byPlace } from './by-place.ts';
import type { Paper } from './paper.ts';
import { partLetter } from './question-sheet.ts';

/** Each misconception that some answer of the paper would reveal, with the parts in which it would show. */
export function placesOf(paper: Paper): Map<MisconceptionId, string[]> {
  const places = new Map<MisconceptionId, string[]>();
  paper.questions.forEach((question, at) => {
    for (const { row } of printedRows(question)) {
      const part = question.steps.find(({ id }) => id === row.at)!.part;
      const index = question.parts.findIndex(({ id }) => id === part);
      const label = `${at + 1}${partLetter(question, index) ?? ''}`;
      for (const id of [row.slip, ...row.aliases]) places.set(id, [...new Set([...(places.get(id) ?? []), label])]);
    }
  });
  return places;
}

/** "What this sheet can show you": a table of the misconceptions and where each would show. */
export function reveals(paper: Paper, tables: Tables, words: Words): Block[] {
  const places = placesOf(paper);
  if (places.size === 0) return [{ kind: 'paragraph', content: words.inline('reveals-none') }];
  const named = [...places].map(([id, labels]) => {
    return { name: tables.misconceptions.get(id)?.name ?? id, labels: [...labels].sort(byPlace) };
  });
  return [
    {
      kind: 'table',
      summary: 'Misconceptions that this sheet can reveal, and the parts in which each would show',
      header: [words.inline('reveals-what'), words.inline('reveals-where')],
      rows: named.map(({ name, labels }) => [[text(name[0]!.toUpperCase() + name.slice(1))], [text(labels.join(', '))]]),
      rowHeaders: false,
      align: ['start', 'start'],
      widths: [4, 1],
      folds: true,
    },
  ];
}
