import { join } from 'node:path';
import { Fault } from '../../exact/fault.ts';
import { command } from '../command.ts';
import { folderName } from '../folder-name.ts';
import { replacing } from '../may-replace.ts';
import { readSetRecord } from '../set-record.ts';
import { tellSet } from '../tell-set.ts';
import { checkPlace, writeSet } from '../write-set.ts';

export const swap = command({
  name: 'swap',
  summary: 'replace one question of a set by another of the same demand (into out/swapped unless said)',
  operand: {
    name: 'RECORD NUMBER',
    help: 'the `record.json` of the set, or its folder, and the number of a question',
    count: 'at most two',
  },
  options: ['table', 'wording', 'out', 'replace', 'json'],
  example: { line: 'couplet swap out/tavolin 4', does: 'question 4 is new, all others stay as they are' },
  run: async (given, [path, number], desk) => {
    if (path === undefined || number === undefined)
      throw new Fault('missing-operand', 'expected a record and the number of a question, as in `couplet swap out/tavolin 4`');
    const record = readSetRecord(path);
    desk.atSeed(record.request.seed);
    if (!/^\d{1,3}$/.test(number)) throw new Fault('not-a-number', `expected the number of a question, found \`${number}\``);
    const folder = join(given.out ?? join('out', 'swapped'), folderName(record.request.name));
    const mayReplace = replacing(given.replace);
    checkPlace(folder, mayReplace);
    const { makeSetOf } = await import('../make-set.ts');
    const { paperOf } = await import('../../papers/paper-of.ts');
    const { swapQuestion } = await import('../../papers/swap-question.ts');
    let differences: readonly string[] = [];
    const set = makeSetOf(
      (means) => {
        const again = paperOf(record, means.tables, means.wording, means.version);
        differences = again.differences;
        return swapQuestion(again.paper, Number(number), means);
      },
      record,
      given,
      desk,
    );
    writeSet(folder, set.files, mayReplace);
    tellSet(folder, set, given.json, desk);
    for (const line of differences) desk.say(`Not as it was: ${line}`);
  },
});
