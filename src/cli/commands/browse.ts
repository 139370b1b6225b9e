import { join } from 'node:path';
import { DEFAULT_SETTINGS } from '../../printers/pdf/settings.ts';
import { command } from '../command.ts';
import { folderName } from '../folder-name.ts';
import { freshSeed } from '../fresh-seed.ts';
import { replacing } from '../may-replace.ts';
import { plainText } from '../plain-text.ts';
import { tellSet } from '../tell-set.ts';
import { checkPlace, writeSet } from '../write-set.ts';

/** Candidates when no number is given. */
const A_DOZEN = 12;

export const browse = command({
  name: 'browse',
  summary: 'print candidate questions with their labels, to choose from',
  options: [
    'family',
    'topic',
    'questions',
    'level',
    'choice',
    'without',
    'seed',
    'units',
    'table',
    'wording',
    'page',
    'name',
    'out',
    'replace',
    'json',
  ],
  example: { line: 'couplet browse --topic redox-titration', does: 'a dozen candidates in one file' },
  run: async (given, _operands, desk) => {
    const seed = given.seed === undefined ? freshSeed() : plainText('seed', given.seed);
    desk.atSeed(seed);
    const name =
      given.name === undefined ? folderName(`candidates-${seed.replaceAll(/[^A-Za-z0-9]+/g, '-')}`) : folderName(given.name);
    const folder = join(given.out ?? 'out', name);
    const mayReplace = replacing(given.replace);
    checkPlace(folder, mayReplace);
    const { makeList } = await import('../make-set.ts');
    const request = {
      seed,
      name,
      level: given.level,
      support: 'open',
      choice: given.choice,
      units: given.units,
      families: given.family,
      topics: given.topic,
      without: given.without,
      length: { unit: 'questions', count: given.questions ?? A_DOZEN },
    } as const;
    const set = makeList(request, { ...DEFAULT_SETTINGS, paper: given.page }, given, desk);
    writeSet(folder, set.files, mayReplace);
    tellSet(folder, set, given.json, desk);
  },
});
