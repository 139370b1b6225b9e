import type { Document } from '../document/document.ts';
import type { Wording } from '../document/wording.ts';
import { Fault } from '../exact/fault.ts';
import { nearMatches } from '../exact/near-matches.ts';
import type { Tables } from '../potentials/tables.ts';
import { present, presentedMarks } from '../questions/present.ts';
import type { Question } from '../questions/question.ts';
import { allowedFamilies } from './allowed-families.ts';
import { choose } from './choose.ts';
import { exampleFor } from './examples.ts';
import { fillPages, type MeasureOrders } from './fill-pages.ts';
import { minutesFor, withExtraTime } from './minutes.ts';
import { order } from './order.ts';
import type { Paper, Provenance } from './paper.ts';
import { placeKeys } from './place-keys.ts';
import { questionSheet } from './question-sheet.ts';
import type { SheetRequest } from './request.ts';
import { spreadFixedKeys } from './spread-fixed-keys.ts';
import { titleFor } from './title-for.ts';

/**
 * Chooses, checks and orders the questions that a request asks for.
 * @param version of this program, for the record
 * @param aids progress is called after each question that is made, with how many are made; measure lets the order fill the pages
 * @throws Fault saying what can be had when the request cannot be met
 */
export function makePaper(
  request: SheetRequest,
  tables: Tables,
  wording: Wording,
  version: string,
  { progress, measure }: Aids = {},
): Paper {
  const { families, withoutSpecies } = allowedFamilies(request);
  if (request.on !== undefined) checkMisconception(request.on, tables);
  const chosen = choose({ request, families, withoutSpecies, tables, wording }, progress);
  const means = { tables, wording, version };
  const ordered = order(chosen);
  const filled = measure ? fillPages(ordered, measure(openSheet(request, ordered, means))) : ordered;
  return paperFrom(request, placeKeys(spreadFixedKeys(filled), request.seed), means);
}

/** What helps while a paper is made, and is not needed. */
export interface Aids {
  readonly progress?: ((done: number) => void) | undefined;
  readonly measure?: MeasureOrders | undefined;
}

/** The sheet without support: a class with several supports needs one order. */
function openSheet(request: SheetRequest, questions: readonly Question[], means: Means): Document {
  return questionSheet(paperFrom({ ...request, support: 'open' }, questions, means), means.wording);
}

function checkMisconception(id: string, tables: Tables): void {
  if (tables.misconceptions.has(id)) return;
  const near = nearMatches(id, [...tables.misconceptions.keys()]);
  const hint =
    near.length > 0 ? `; did you mean ${near.map((each) => `\`${each}\``).join(' or ')}?` : '; `couplet families` names them';
  throw new Fault('unknown-misconception', `no misconception is called \`${id}\`${hint}`);
}

/** What questions are made from. */
export interface Means {
  readonly tables: Tables;
  readonly wording: Wording;
  readonly version: string;
}

/** A paper of questions already made and ordered. */
export function paperFrom(request: SheetRequest, questions: readonly Question[], { tables, wording, version }: Means): Paper {
  const { support, on } = request;
  const marks = questions.reduce((sum, question) => sum + presentedMarks(present(question, support, on)), 0);
  const minutes = minutesFor(marks);
  const examples =
    support === 'worked'
      ? questions.map((question) => [question.code, exampleFor(question, questions, request, tables, wording)] as const)
      : [];
  return {
    request,
    title: request.title ?? titleFor(questions),
    questions,
    examples: new Map(examples),
    marks,
    minutes,
    minutesWithExtra: withExtraTime(minutes),
    made: provenance(tables, wording, version),
  };
}

/** What a paper is made with. */
export function provenance(tables: Tables, wording: Wording, version: string): Provenance {
  return { version, table: { name: tables.name, digest: tables.digest }, wording: wording.digest };
}
