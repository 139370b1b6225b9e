import type { Block, Filled, PartBlock, QuestionBlock } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import { text } from '../document/inlines.ts';
import type { Wording } from '../document/wording.ts';
import type { Words } from '../document/words.ts';
import { plainText } from '../questions/gate/inlines-of.ts';
import { partMarks } from '../questions/part-marks.ts';
import { type PresentedPart, present, presentedMarks } from '../questions/present.ts';
import type { Caution, Part, Question } from '../questions/question.ts';
import { workedExample } from '../questions/worked-example.ts';
import { filledIn } from './answers-of.ts';
import type { Paper } from './paper.ts';
import { fullCaution, gatheredCautions, referToCautions } from './sheet-cautions.ts';
import { topicsOf } from './title-for.ts';

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';
const OPTION_LETTERS = 'ABCDEFGH';

/**
 * The sheet that goes to the class: no answer stands in it, in text or out of sight.
 * @param answered answers stand in their places, for the teacher copy
 */
export function questionSheet(paper: Paper, wording: Wording, answered = false): Document {
  const words = wording.words('sheet');
  const gathered = gatheredCautions(paper.questions);
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
      ...(gathered.length > 0 ? [fullCaution(gathered, words)] : []),
      ...paper.questions.flatMap((question, at) => [
        ...exampleBlocks(question, paper.examples.get(question.code), at + 1, words),
        questionBlock(question, at + 1, paper, { words, answered, gathered }),
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
  /** cautions that stand once for the whole sheet; none when a question carries its own */
  readonly gathered: readonly Caution[];
}

function questionBlock(question: Question, number: number, { request }: Paper, style: Style): QuestionBlock {
  const parts = present(question, request.support, request.on, style.answered);
  return {
    kind: 'question',
    number,
    code: question.code,
    marks: presentedMarks(parts),
    stem: [...question.stem, ...cautionBlocks(question, style)],
    parts: parts.map((part, at) => partBlock(question, part, partLetter(question, at), style)),
  };
}

/**
 * Support `worked`: an example of the same kind, every step under its principle, before the question. Before a choice it goes as far as
 * the step that is chosen.
 */
function exampleBlocks(question: Question, example: Question | undefined, number: number, words: Words): Block[] {
  if (!example) return [];
  const stem = example.stem.flatMap((block) => (block.kind === 'given' ? block.blocks : [block]));
  const caption = plainText(words.inline('example', { number }));
  const isChoice = question.parts.some(({ options }) => options);
  const upTo = isChoice ? question.steps.findLast(({ id }) => example.steps.some((step) => step.id === id))?.id : undefined;
  return [{ kind: 'given', caption, blocks: [...stem, ...workedExample(example, upTo)], keeps: true }];
}

function cautionBlocks({ cautions }: Question, { words, gathered }: Style): Block[] {
  if (cautions.length === 0) return [];
  return [gathered.length > 0 ? referToCautions(cautions, words) : fullCaution(cautions, words)];
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
