import { join } from 'node:path';
import type { Wording } from '../document/wording.ts';
import { familyOf } from '../papers/allowed-families.ts';
import { minutesFor } from '../papers/minutes.ts';
import { readTables } from '../potentials/read-tables.ts';
import type { Tables } from '../potentials/tables.ts';
import { FAMILIES } from '../questions/families/index.ts';
import type { Family, Topic } from '../questions/family.ts';
import { itemMarks } from '../questions/part-marks.ts';
import type { Answering, Level } from '../questions/question.ts';
import { drawsFrom } from '../random/draws.ts';
import type { Desk } from './desk.ts';
import type { Own } from './make-set.ts';
import { LEVELS } from './options.ts';
import { withProgress } from './progress.ts';
import { readWording } from './read-wording.ts';

/** What a teacher wants to know of a family. */
export interface FamilyFacts {
  readonly id: string;
  readonly title: string;
  readonly asksFor: string;
  readonly topics: readonly Topic[];
  readonly demand: readonly string[];
  readonly answering: readonly Answering[];
  readonly levels: readonly LevelFacts[];
  readonly misconceptions: readonly { readonly id: string; readonly name: string; readonly reasoning: string }[];
}

/** Least and most over a sample of questions. */
export interface LevelFacts {
  readonly level: Level;
  readonly marks: readonly [number, number];
  readonly minutes: readonly [number, number];
}

/** Draws of a family at a level that are looked at to see what its questions are worth, and how many of them are enough. */
const MOST_DRAWS = 80;
const SAMPLE = 8;

/**
 * @param id of one family; all when absent
 * @throws Fault `unknown-family` with near matches
 */
export function familyFacts(id: string | undefined, own: Own, desk: Desk): FamilyFacts[] {
  const wanted = id === undefined ? FAMILIES : [familyOf(id)];
  return withProgress((progress) => {
    const tables = readTables(join(desk.root, 'potentials'), own.table);
    const wording = readWording(desk.root, own.wording);
    return wanted.map((family, at) => {
      progress.at('Trying families', at, wanted.length);
      return factsOf(family, tables, wording);
    });
  });
}

function factsOf(family: Family, tables: Tables, wording: Wording): FamilyFacts {
  const { id, title, asksFor, topics, demand, answering } = family;
  const levels = (Object.keys(LEVELS) as Level[]).flatMap((level) => sampled(family, level, tables, wording));
  const misconceptions = family.misconceptions.map((each) => {
    const { name, reasoning } = tables.misconceptions.get(each) ?? { name: each, reasoning: '' };
    return { id: each, name, reasoning };
  });
  return { id, title, asksFor, topics, demand, answering, levels, misconceptions };
}

/** Marks do not depend on the gate, which would take most of the time. A level that gives nothing with this table is left out. */
function sampled(family: Family, level: Level, tables: Tables, wording: Wording): LevelFacts[] {
  const draws = drawsFrom(JSON.stringify(['sample', family.id, level]));
  const words = wording.words(family.id).chosenBy((count) => draws.integer(0, count - 1));
  const answering = family.answering.includes('written') ? 'written' : 'choice';
  const marks: number[] = [];
  for (let draw = 0; draw < MOST_DRAWS && marks.length < SAMPLE; draw += 1) {
    const item = family.attempt(draws, tables, { level, answering, units: 'dm' }, words);
    if (item) marks.push(itemMarks(item));
  }
  return marks.length === 0 ? [] : [{ level, marks: rangeOf(marks), minutes: rangeOf(marks.map(minutesFor)) }];
}

function rangeOf(values: readonly number[]): [number, number] {
  return [Math.min(...values), Math.max(...values)];
}
