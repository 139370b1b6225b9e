import type { Document } from '../document/document.ts';
import { text } from '../document/inlines.ts';
import type { Wording } from '../document/wording.ts';
import type { Tables } from '../potentials/tables.ts';
import { byPlace } from './by-place.ts';
import type { Paper } from './paper.ts';
import { placesOf } from './reveals.ts';

/**
 * Notes to hand back, a strip each to cut off: one for each misconception that the sheet can reveal, in the order of the places where it
 * shows. It speaks to the pupil, kindly and with the next step; what staff call the misconception stands in the mark scheme alone.
 */
export function feedbackNotes(paper: Paper, tables: Tables, wording: Wording): Document {
  const words = wording.words('extras');
  const title = `${paper.title}: feedback notes`;
  const notes = [...placesOf(paper)]
    .map(([id, places]) => ({ places: [...places].sort(byPlace), note: tables.misconceptions.get(id)?.feedback ?? '' }))
    .sort((one, other) => byPlace(one.places[0]!, other.places[0]!));
  return {
    title,
    language: 'en-GB',
    subject: 'Feedback to pupils',
    kind: 'scheme',
    foot: title,
    blocks: [
      { kind: 'head', title: paper.title, facts: ['Feedback notes'], cells: [], note: words.inline('feedback-note') },
      {
        kind: 'table',
        summary: 'Notes to hand back, with the parts that each belongs to',
        header: [words.inline('feedback-where'), words.inline('feedback-what')],
        rows: notes.map(({ places, note }) => [[text(places.join(', '))], [text(note)]]),
        rowHeaders: true,
        align: ['start', 'start'],
        widths: [1, 6],
      },
    ],
  };
}
