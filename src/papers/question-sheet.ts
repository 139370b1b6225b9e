import type { Block, Filled, PartBlock, QuestionBlock } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import { text } from '../document/inlines.ts';
import type { Wording } from '../document/wording.ts';
import type { Words } from '../document/words.ts';
import { plainText } from '../questions/gate/inlines-of.ts';
import { partMarks } from '../questions/part-marks.ts';
import { type PresentedPart, present, presentedMarks, workedExample } from '../questions/present.ts';
import type { Part, Question } from '../questions/question.ts';
import { filledIn } from './answers-of.ts';
import type { Paper } from './paper.ts';
import { topicsOf } from './title-for.ts';

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';
const OPTION_LETTERS = 'ABCDEFGH';

/**
 * The sheet that goes to the class: no answer stands in it, in text or out of sight.
 * @param answered answers stand in their places, for the teacher copy
 */
export function questionSheet(paper: Paper, wording: Wording, answered = false): Document {
  const words = wording.words('sheet');
  const facts = [sentenceOf(topicsOf(paper.questions)), timeText(paper), `${paper.marks} marks`];
  return {
    title: paper.title,
    language: 'en-GB',
    subject: words
      .inline('subject')
      .flatMap((inline) => (inline.kind === 'text' ? [inline.text] : []))
      .join(''),
    kind: 'sheet',
    foot: paper.title,
    blocks: [
      {
        kind: 'head',
        title: paper.title,
        facts,
        cells: ['Name', 'Class', 'Date', `Marks / ${paper.marks}`],
        note: words.inline('note'),
      },
      ...paper.questions.flatMap((question, at) => [
        ...exampleBlocks(paper.examples.get(question.code), at + 1, words),
        questionBlock(question, at + 1, paper, { words, answered }),
      ]),
    ],
  };
}

/** Topics in one run of words: `Electrode potentials, redox titrations`. */
function sentenceOf(topics: readonly string[]): string {
  return topics.map((topic, at) => (at === 0 ? topic : topic[0]!.toLowerCase() + topic.slice(1))).join(', ');
}

/** `24 minutes (30 with extra time)` */
export function timeText(paper: Pick<Paper, 'minutes' | 'minutesWithExtra'>): string {
  return `${paper.minutes} minutes (${paper.minutesWithExtra} with extra time)`;
}

/** `a`, `b` … ; nothing when the question has one part. */
export function partLetter(question: Question, at: number): string | undefined {
  return question.parts.length > 1 ? LETTERS[at]! : undefined;
}

/** How parts are printed. */
interface Style {
  readonly words: Words;
  readonly answered: boolean;
}

function questionBlock(question: Question, number: number, { request }: Paper, style: Style): QuestionBlock {
  const { words, answered } = style;
  const parts = present(question, request.support, request.on, answered);
  return {
    kind: 'question',
    number,
    code: question.code,
    marks: presentedMarks(parts),
    stem: [...question.stem, ...cautionBlocks(question, words)],
    parts: parts.map((part, at) => partBlock(question, part, partLetter(question, at), style)),
  };
}

/** Support `worked`: an example of the same kind, every step under its principle, before the question. */
function exampleBlocks(example: Question | undefined, number: number, words: Words): Block[] {
  if (!example) return [];
  const stem = example.stem.flatMap((block) => (block.kind === 'given' ? block.blocks : [block]));
  const caption = plainText(words.inline('example', { number }));
  return [{ kind: 'given', caption, blocks: [...stem, ...workedExample(example)] }];
}

function cautionBlocks(question: Question, words: Words): Block[] {
  if (question.cautions.length === 0) return [];
  const caution = question.cautions.map((each) => each.caution).join(' ');
  return [{ kind: 'paragraph', weight: 'caution', content: words.inline('caution', { caution }) }];
}

function partBlock(question: Question, presented: PresentedPart, letter: string | undefined, style: Style): PartBlock {
  const { words, answered } = style;
  const { part, hints, printed, given, shown, asks } = presented;
  const told = hints.map(
    (hint): Block => ({ kind: 'paragraph', weight: 'light', content: [...words.inline('hint'), text(' '), ...hint] }),
  );
  const answers = asks ? answerBlocks(part, answered ? filledIn(question, part, shown) : undefined) : [];
  return {
    kind: 'part',
    ...(letter === undefined ? {} : { letter }),
    marks: partMarks(part) - given.size,
    blocks: [{ kind: 'paragraph', content: part.prompt }, ...told, ...printed, ...answers],
  };
}

function answerBlocks(part: Part, filled: Filled | undefined): Block[] {
  if (part.options) {
    const options = part.options.map(({ content, slip }, at) => {
      return { letter: OPTION_LETTERS[at]!, content, ...(filled && slip === undefined ? { right: true as const } : {}) };
    });
    return [{ kind: 'options', options }];
  }
  return part.space.kind === 'none' ? [] : [{ kind: 'answer', space: part.space, ...(filled ? { filled } : {}) }];
}
