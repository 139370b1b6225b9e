import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Wording } from '../document/wording.ts';
import type { Tables } from '../potentials/tables.ts';
import type { Family } from '../questions/family.ts';
import { makeQuestion, slotOf } from '../questions/make-question.ts';
import { itemMarks } from '../questions/part-marks.ts';
import type { Answering, Question } from '../questions/question.ts';
import { speciesIn } from '../questions/species-in.ts';
import { drawsFrom } from '../random/draws.ts';
import { askOf } from './ask-of.ts';
import { conflictBetween, repeatsOf } from './conflicts.ts';
import type { SheetRequest } from './request.ts';

/** Variants of a slot that are tried before its family is passed over. */
const MOST_VARIANTS = 40;
/** Possible questions that are looked at for one that repeats nothing; the one that repeats least is taken then. */
const LOOKED_AT = 10;

export interface Kitchen {
  readonly request: SheetRequest;
  readonly families: readonly Family[];
  readonly withoutSpecies: ReadonlySet<SpeciesKey>;
  readonly tables: Tables;
  readonly wording: Wording;
}

/**
 * Questions of a paper one after another, families taking turns in a seeded order, none in conflict with one before it.
 * Ends when every family has nothing new to offer.
 */
export function* candidates(kitchen: Kitchen): Generator<Question, void> {
  const turns = drawsFrom(JSON.stringify(['turns', kitchen.request.seed])).shuffle(kitchen.families);
  const made: Question[] = [];
  let idle = 0;
  for (let turn = 0; idle < turns.length; turn += 1) {
    const question = next(turns[turn % turns.length]!, `s${turn + 1}`, made, kitchen);
    idle = question ? 0 : idle + 1;
    if (!question) continue;
    made.push(question);
    yield question;
  }
}

function next(family: Family, slot: string, made: readonly Question[], kitchen: Kitchen): Question | undefined {
  const { request, tables, wording, withoutSpecies } = kitchen;
  const ask = askOf(request, request.level, answeringFor(family, made, request.choice));
  let best: { readonly question: Question; readonly repeats: number } | undefined;
  let looked = 0;
  for (let variant = 0; variant < MOST_VARIANTS && looked < LOOKED_AT; variant += 1) {
    const question = makeQuestion(family, slotOf(request.seed, family.id, slot, variant), ask, tables, wording);
    if (made.some((other) => conflictBetween(question, other))) continue;
    if (withoutSpecies.size > 0 && [...speciesIn(question)].some((key) => withoutSpecies.has(key))) continue;
    if (request.withoutColourRecall && question.asks.some((fact) => fact.startsWith('colour:'))) continue;
    const repeats = made.reduce((sum, other) => sum + repeatsOf(question, other), 0);
    if (repeats === 0) return question;
    looked += 1;
    if (!best || repeats < best.repeats) best = { question, repeats };
  }
  return best?.question;
}

/** Keeps the share of multiple-choice marks as near to what is asked as whole questions allow. */
function answeringFor(family: Family, made: readonly Question[], share: number): Answering {
  if (!family.answering.includes('choice')) return 'written';
  const total = made.reduce((sum, question) => sum + itemMarks(question), 0);
  const choice = made.filter(isChoice).reduce((sum, question) => sum + itemMarks(question), 0);
  return share > 0 && choice < share * (total + 1) ? 'choice' : 'written';
}

/** True for a question whose parts are all multiple choice. */
export const isChoice = (question: Question): boolean => question.parts.every(({ options }) => options !== undefined);
