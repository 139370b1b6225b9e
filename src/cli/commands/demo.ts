import { join } from 'node:path';
import type { SheetRequest } from '../../papers/request.ts';
import { DEFAULT_SETTINGS } from '../../printers/pdf/settings.ts';
import { command } from '../command.ts';
import { replacingOnly } from '../may-replace.ts';
import { tellSet } from '../tell-set.ts';
import { checkPlace, writeSet } from '../write-set.ts';

/** An invented college: no place, class or timetable that exists. */
const DEMO: SheetRequest = {
  seed: 'quillmere practice week',
  name: 'quillmere-practice-week',
  title: 'Quillmere College (invented): practice week',
  level: 'core',
  support: 'open',
  choice: 0,
  units: 'dm',
  families: [],
  topics: [],
  without: [],
  length: { unit: 'questions', count: 4 },
};

export const demo = command({
  name: 'demo',
  summary: 'make a set for an invented college, to see what comes out',
  options: ['out', 'json'],
  example: { line: 'couplet demo', does: `puts the set into out/${DEMO.name}` },
  run: async (given, _operands, desk) => {
    desk.atSeed(DEMO.seed);
    const out = given.out ?? 'out';
    const folder = join(out, DEMO.name);
    const mayReplace = replacingOnly(({ request }) => request.seed === DEMO.seed && request.name === DEMO.name);
    checkPlace(folder, mayReplace);
    const { makeSet } = await import('../make-set.ts');
    const set = makeSet(DEMO, { page: DEFAULT_SETTINGS, extras: [] }, {}, desk);
    writeSet(folder, set.files, mayReplace);
    desk.say('Quillmere College is invented; so is its practice week.');
    tellSet(folder, set, given.json, desk);
    desk.say('Make your own:  npx couplet sheet --topic electrode-potentials --questions 6');
    desk.say('See all there is:  npx couplet families   and   npx couplet sheet --help');
  },
});
