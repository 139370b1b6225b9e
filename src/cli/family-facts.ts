import { join } from 'node:path';
import { familyOf } from '../papers/allowed-families.ts';
import { makePaper } from '../papers/make-paper.ts';
import type { Paper } from '../papers/paper.ts';
import type { SheetRequest } from '../papers/request.ts';
import { readTables } from '../potentials/read-tables.ts';
import type { Tables } from '../potentials/tables.ts';
import { FAMILIES } from '../questions/families/index.ts';
import type { Family, Topic } from '../questions/family.ts';
import type { Answering, Level } from '../questions/question.ts';
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

/** Questions made of a family at a level to see what they are worth. */
const SAMPLE = 6;

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
      return factsOf(family, (request) => makePaper(request, tables, wording, desk.version), tables);
    });
  });
}

type Maker = (request: SheetRequest) => Paper;

function factsOf(family: Family, make: Maker, tables: Tables): FamilyFacts {
  const { id, title, asksFor, topics, demand, answering } = family;
  const levels = (Object.keys(LEVELS) as Level[]).map((level) => sampled(id, level, make));
  const misconceptions = family.misconceptions.map((each) => {
    const { name, reasoning } = tables.misconceptions.get(each) ?? { name: each, reasoning: '' };
    return { id: each, name, reasoning };
  });
  return { id, title, asksFor, topics, demand, answering, levels, misconceptions };
}

function sampled(id: string, level: Level, make: Maker): LevelFacts {
  const papers = Array.from({ length: SAMPLE }, (_, at) => make({ ...ANY, seed: `sample ${at}`, families: [id], level }));
  return { level, marks: rangeOf(papers.map(({ marks }) => marks)), minutes: rangeOf(papers.map(({ minutes }) => minutes)) };
}

const ANY: Omit<SheetRequest, 'seed' | 'families' | 'level'> = {
  name: 'sample',
  support: 'open',
  choice: 0,
  units: 'dm',
  topics: [],
  without: [],
  length: { unit: 'questions', count: 1 },
};

function rangeOf(values: readonly number[]): [number, number] {
  return [Math.min(...values), Math.max(...values)];
}
