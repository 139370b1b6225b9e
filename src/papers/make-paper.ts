import type { Wording } from '../document/wording.ts';
import type { Tables } from '../potentials/tables.ts';
import { itemMarks } from '../questions/part-marks.ts';
import type { Question } from '../questions/question.ts';
import { allowedFamilies } from './allowed-families.ts';
import { choose } from './choose.ts';
import { minutesFor, withExtraTime } from './minutes.ts';
import { order } from './order.ts';
import type { Paper, Provenance } from './paper.ts';
import { placeKeys } from './place-keys.ts';
import type { SheetRequest } from './request.ts';
import { titleFor } from './title-for.ts';

/**
 * Chooses, checks and orders the questions that a request asks for.
 * @param version of this program, for the record
 * @param progress called after each question that is made, with how many are made
 * @throws Fault saying what can be had when the request cannot be met
 */
export function makePaper(
  request: SheetRequest,
  tables: Tables,
  wording: Wording,
  version: string,
  progress?: (done: number) => void,
): Paper {
  const { families, withoutSpecies } = allowedFamilies(request);
  const chosen = choose({ request, families, withoutSpecies, tables, wording }, progress);
  const questions = placeKeys(order(chosen), request.seed);
  return paperFrom(request, questions, provenance(tables, wording, version));
}

/** A paper of questions already made and ordered. */
export function paperFrom(request: SheetRequest, questions: readonly Question[], made: Provenance): Paper {
  const marks = questions.reduce((sum, question) => sum + itemMarks(question), 0);
  const minutes = minutesFor(marks);
  const title = request.title ?? titleFor(questions);
  return { request, title, questions, marks, minutes, minutesWithExtra: withExtraTime(minutes), made };
}

/** What a paper is made with. */
export function provenance(tables: Tables, wording: Wording, version: string): Provenance {
  return { version, table: { name: tables.name, digest: tables.digest }, wording: wording.digest };
}
