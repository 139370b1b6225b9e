import { Fault } from '../../../src/exact/fault.ts';
import { makePaper, paperFrom } from '../../../src/papers/make-paper.ts';
import { markScheme } from '../../../src/papers/mark-scheme.ts';
import { placeKeys } from '../../../src/papers/place-keys.ts';
import { questionSheet } from '../../../src/papers/question-sheet.ts';
import type { SheetRequest } from '../../../src/papers/request.ts';
import { FAMILIES } from '../../../src/questions/families/index.ts';
import type { Family } from '../../../src/questions/family.ts';
import { makeQuestion, slotOf } from '../../../src/questions/make-question.ts';
import type { Answering, Level, Question, Support, Units } from '../../../src/questions/question.ts';
import type { PaperDocuments } from '../plain.ts';
import type { Kitchen } from './kitchen.ts';

/** Questions on one paper: few, so that totals are audited often. */
export const PER_PAPER = 10;

const LEVELS: readonly Level[] = ['core', 'stretch'];
/** `worked` makes a second question for each, so it comes up less often than the others */
const SUPPORTS: readonly Support[] = ['open', 'completion', 'prompts', 'open', 'completion', 'worked'];

export interface PaperAsk {
  readonly seed: string;
  readonly level: Level;
  readonly support: Support;
  readonly units: Units;
  /** `code` makes one question again, whatever the seed */
  readonly questions: readonly { readonly family: string; readonly answering: Answering; readonly code?: string }[];
}

/** What the paper of a number asks for: over many papers, every family in every way. */
export function askFor(paper: number, families: readonly Family[] = FAMILIES): PaperAsk {
  const turn = <T>(list: readonly T[], at: number): T => list[at % list.length]!;
  return {
    seed: `audit ${paper}`,
    level: LEVELS[paper % 2]!,
    support: SUPPORTS[Math.floor(paper / 2) % SUPPORTS.length]!,
    units: paper % 5 === 4 ? 'litre' : 'dm',
    questions: Array.from({ length: PER_PAPER }, (_, at) => {
      const family = turn(families, paper * PER_PAPER + at);
      const round = Math.floor((paper * PER_PAPER + at) / families.length) + paper;
      return { family: family.id, answering: turn(family.answering, round) };
    }),
  };
}

/** Both documents of a paper, as they come out of JSON. */
export function paperDocuments(ask: PaperAsk, kitchen: Kitchen): PaperDocuments {
  const { seed, level, units } = ask;
  const { tables, wording } = kitchen;
  const made = ask.questions.map(({ family: id, answering, code }, at) => {
    const family = FAMILIES.find((each) => each.id === id)!;
    const slot = slotOf(seed, id, `s${at + 1}`, 0);
    return makeQuestion(family, { ...slot, code: code ?? slot.code }, { level, answering, units }, tables, wording);
  });
  const questions = placeKeys(made, seed);
  const paper = paperUnder(ask.support, ask, questions, { tables, wording });
  return plain({ sheet: questionSheet(paper, wording), scheme: markScheme(paper, tables, wording) });
}

/** A paper whose questions the program itself chooses to stand together. */
export function chosenDocuments(paper: number, { tables, wording }: Kitchen): PaperDocuments {
  const { seed, level, support, units } = askFor(paper);
  const request = { ...requestOf({ seed, level, units }, support === 'worked' ? 'open' : support), choice: (paper % 3) / 2 };
  const made = makePaper(request, tables, wording, 'audit');
  return plain({ sheet: questionSheet(made, wording), scheme: markScheme(made, tables, wording) });
}

/** Ten questions of few families may leave no example that gives nothing away; then the paper goes without. */
function paperUnder(support: Support, ask: PaperAsk, questions: readonly Question[], { tables, wording }: Kitchen) {
  const request = requestOf(ask, support);
  try {
    return paperFrom(request, questions, { tables, wording, version: 'audit' });
  } catch (error) {
    if (!(error instanceof Fault) || error.code !== 'no-example') throw error;
    return paperFrom(requestOf(ask, 'open'), questions, { tables, wording, version: 'audit' });
  }
}

function requestOf({ seed, level, units }: Pick<PaperAsk, 'seed' | 'level' | 'units'>, support: Support): SheetRequest {
  return {
    seed,
    name: 'audit',
    level,
    support,
    choice: 0,
    units,
    families: [],
    topics: [],
    without: [],
    length: { unit: 'questions', count: PER_PAPER },
  };
}

/** Through JSON and back: nothing of the program's own objects reaches the auditor. */
export function plain<T>(value: T): never {
  return JSON.parse(JSON.stringify(value, (_, each: unknown) => (typeof each === 'bigint' ? String(each) : each))) as never;
}
