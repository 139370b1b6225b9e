import type { Block } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import { text } from '../document/inlines.ts';
import type { Wording } from '../document/wording.ts';
import type { Words } from '../document/words.ts';
import type { Tables } from '../potentials/tables.ts';
import { FAMILIES } from '../questions/families/index.ts';
import { itemMarks } from '../questions/part-marks.ts';
import { present, presentedMarks } from '../questions/present.ts';
import type { Question } from '../questions/question.ts';
import { minutesFor, withExtraTime } from './minutes.ts';
import type { Paper } from './paper.ts';
import { timeText } from './question-sheet.ts';
import { reveals } from './reveals.ts';
import { schemeBlocks } from './scheme-blocks.ts';

/** The scheme a colleague marks from without asking. */
export function markScheme(paper: Paper, tables: Tables, wording: Wording): Document {
  const words = wording.words('scheme');
  return {
    title: `${paper.title}: mark scheme`,
    language: 'en-GB',
    subject: 'Mark scheme',
    kind: 'scheme',
    foot: `${paper.title}: mark scheme`,
    blocks: [
      { kind: 'head', title: paper.title, facts: ['Mark scheme', wholeTime(paper), `${wholeMarks(paper)} marks`], cells: [] },
      strip(paper),
      { kind: 'paragraph', content: words.inline('how-to-read', { completion: wholeMarks(paper) > completionMarks(paper) }) },
      heading(words, 'reveals-heading', 2),
      ...reveals(paper, tables, words),
      heading(words, 'answers-heading', 2),
      ...paper.questions.flatMap((question, at) => [
        questionHeading(question, at + 1),
        ...schemeBlocks(question, at + 1, words, paper.request.on),
      ]),
      ...safety(paper, words),
      {
        kind: 'small-print',
        paragraphs: [
          words.inline('small-print', smallPrint(paper)),
          words.inline('small-print-codes', { codes: codesText(paper) }),
        ],
      },
    ],
  };
}

function strip(paper: Paper): Block {
  const fact = (label: string, value: string) => ({ label, value: [text(value)] });
  const { made, request } = paper;
  return {
    kind: 'strip',
    facts: [
      fact('Marks', String(wholeMarks(paper))),
      ...(completionMarks(paper) < wholeMarks(paper) ? [fact('Completion copy', String(completionMarks(paper)))] : []),
      fact('Time', wholeTime(paper)),
      fact('Table', made.table.name),
      fact('Seed', request.seed),
      fact('Version', made.version),
    ],
  };
}

/** Marks of every point, whatever the support. */
function wholeMarks({ questions }: Paper): number {
  return questions.reduce((sum, question) => sum + itemMarks(question), 0);
}

/** Time for every mark: beside the marks of the whole stands their time, whatever the copy. */
function wholeTime(paper: Paper): string {
  const minutes = minutesFor(wholeMarks(paper));
  return timeText({ minutes, minutesWithExtra: withExtraTime(minutes) });
}

/** Marks left to earn on a copy with support `completion`. */
function completionMarks({ questions, request }: Paper): number {
  return questions.reduce((sum, question) => sum + presentedMarks(present(question, 'completion', request.on)), 0);
}

function heading(words: Words, section: string, level: 2 | 3): Block {
  return { kind: 'heading', level, content: words.inline(section) };
}

function questionHeading(question: Question, number: number): Block {
  const title = FAMILIES.find(({ id }) => id === question.family)!.title;
  return { kind: 'heading', level: 3, content: [text(`Question ${number}: ${title}`)] };
}

/** Hazards for staff, one line a substance, each with its source; nothing when no operation is described. */
function safety(paper: Paper, words: Words): Block[] {
  const cautions = new Map(
    paper.questions.flatMap(({ cautions: all }) => all.map((caution) => [caution.substance, caution] as const)),
  );
  if (cautions.size === 0) return [];
  const items = [...cautions.values()].map(({ substance, caution, signal, statements, source, fromMemory }): Block[] => [
    {
      kind: 'paragraph',
      content: words.inline('hazard', {
        substance,
        caution,
        signal,
        hasSignal: signal !== 'none',
        codes: statements.join(', '),
        hasCodes: statements.length > 0,
        source,
        fromMemory,
      }),
    },
  ]);
  return [
    heading(words, 'safety-heading', 2),
    { kind: 'paragraph', content: words.inline('safety') },
    { kind: 'list', ordered: false, items },
  ];
}

function smallPrint(paper: Paper) {
  const { made, request } = paper;
  return {
    seed: request.seed,
    version: made.version,
    table: made.table.name,
    tableDigest: made.table.digest,
    wordingDigest: made.wording,
    level: request.level,
    support: request.support,
  };
}

function codesText(paper: Paper): string {
  return paper.questions.map(({ family, code }, at) => `${at + 1} ${family} ${code}`).join(' · ');
}
