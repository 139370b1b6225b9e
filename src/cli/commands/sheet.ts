import { join } from 'node:path';
import { Fault } from '../../exact/fault.ts';
import type { SheetLength, SheetRequest } from '../../papers/request.ts';
import { command } from '../command.ts';
import type { Desk } from '../desk.ts';
import { folderName, nameFromSeed } from '../folder-name.ts';
import { freshSeed } from '../fresh-seed.ts';
import { LOOK_OPTIONS, lookOf } from '../look-of.ts';
import type { MadeSet } from '../make-set.ts';
import { replacing } from '../may-replace.ts';
import type { Given } from '../options.ts';
import { plainText } from '../plain-text.ts';
import { tellSet } from '../tell-set.ts';
import { checkPlace, writeSet } from '../write-set.ts';

const WHAT = [
  'codes',
  'family',
  'topic',
  'questions',
  'marks',
  'minutes',
  'level',
  'choice',
  'without',
  'without-colour-recall',
] as const;
const HOW = ['seed', 'support', 'on', 'units', 'table', 'wording', 'title'] as const;
const WHERE = [...LOOK_OPTIONS, 'name', 'out', 'replace', 'json'] as const;
const TAKES = [...WHAT, ...HOW, ...WHERE];

/** Questions on a sheet when no length is given. */
const USUAL_LENGTH = 5;

export const sheet = command({
  name: 'sheet',
  summary: 'make a question sheet and its mark scheme',
  options: TAKES,
  example: { line: 'couplet sheet --topic redox-titration --marks 20', does: 'homework of 20 marks on titrations' },
  run: async (given, _operands, desk) => {
    const request = requestOf(given);
    desk.atSeed(request.seed);
    const folder = join(given.out ?? 'out', request.name);
    const mayReplace = replacing(given.replace);
    checkPlace(folder, mayReplace);
    const set = given.codes.length > 0 ? await chosenSet(given, request, desk) : await freelyChosenSet(given, request, desk);
    writeSet(folder, set.files, mayReplace);
    tellSet(folder, set, given.json, desk);
  },
});

type SheetGiven = Given<(typeof TAKES)[number]>;

async function freelyChosenSet(given: SheetGiven, request: SheetRequest, desk: Desk): Promise<MadeSet> {
  const { makeSet } = await import('../make-set.ts');
  return makeSet(request, lookOf(given), given, desk);
}

/** A set of the questions whose labels are given, in that order. */
async function chosenSet(given: SheetGiven, request: SheetRequest, desk: Desk): Promise<MadeSet> {
  const others = (['family', 'topic', 'without'] as const).filter((name) => given[name].length > 0);
  const lengths = (['questions', 'marks', 'minutes'] as const).filter((name) => given[name] !== undefined);
  const clash = [...others, ...lengths][0];
  if (clash) throw new Fault('codes-and-more', `expected --codes alone to say which questions, found --${clash} as well`);
  const { makeSetOf } = await import('../make-set.ts');
  const { readLabel } = await import('../../papers/question-label.ts');
  const { paperFromLabels } = await import('../../papers/paper-from-labels.ts');
  const labels = given.codes.map(readLabel);
  const whole = { ...request, length: { unit: 'questions' as const, count: labels.length } };
  return makeSetOf((means) => paperFromLabels(labels, whole, means), lookOf(given), given, desk);
}

function requestOf(given: Given<(typeof TAKES)[number]>): SheetRequest {
  const seed = given.seed === undefined ? freshSeed() : plainText('seed', given.seed);
  return {
    seed,
    name: given.name === undefined ? nameFromSeed(seed) : folderName(given.name),
    ...(given.title === undefined ? {} : { title: plainText('title', given.title) }),
    level: given.level,
    support: given.support,
    ...(given.on === undefined ? {} : { on: given.on }),
    choice: given.choice,
    units: given.units,
    ...(given['without-colour-recall'] ? { withoutColourRecall: true } : {}),
    families: given.family,
    topics: given.topic,
    without: given.without,
    length: lengthOf(given),
  };
}

function lengthOf(given: Given<'questions' | 'marks' | 'minutes'>): SheetLength {
  const units = ['questions', 'marks', 'minutes'] as const;
  const lengths = units.flatMap((unit) => {
    const count = given[unit];
    return count === undefined ? [] : [{ unit, count }];
  });
  if (lengths.length > 1) {
    const found = lengths.map(({ unit }) => `--${unit}`).join(' and ');
    throw new Fault('two-lengths', `expected one of --questions, --marks and --minutes, found ${found}`);
  }
  return lengths[0] ?? { unit: 'questions', count: USUAL_LENGTH };
}
