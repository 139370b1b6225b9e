import { join } from 'node:path';
import { besideLabels } from '../beside-labels.ts';
import { command } from '../command.ts';
import { folderName } from '../folder-name.ts';
import { freshSeed } from '../fresh-seed.ts';
import { replacing } from '../may-replace.ts';
import { pageSettings } from '../page-settings.ts';
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
    'candidates',
    'level',
    'choice',
    'without',
    'without-colour-recall',
    'seed',
    'units',
    'table',
    'wording',
    'print',
    'sides',
    'tint',
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
      ...(given['without-colour-recall'] ? { withoutColourRecall: true } : {}),
      families: given.family,
      topics: given.topic,
      without: given.without,
      length: { unit: 'questions', count: given.candidates ?? A_DOZEN },
    } as const;
    const set = makeList(request, pageSettings(given), given, desk);
    writeSet(folder, set.files, mayReplace);
    tellSet(folder, set, given.json, desk);
    for (const line of besideLabels(given)) desk.say(line);
  },
});
