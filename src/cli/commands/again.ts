import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { command } from '../command.ts';
import { folderName } from '../folder-name.ts';
import { replacing } from '../may-replace.ts';
import { folderOfRecord, readSetRecord } from '../set-record.ts';
import { tellSet } from '../tell-set.ts';
import { checkPlace, type FileSet, writeSet } from '../write-set.ts';

export const again = command({
  name: 'again',
  summary: 'make a set again from its record, byte for byte (into out/again unless said)',
  operand: { name: 'RECORD', help: 'the `record.json` of the set, or its folder', count: 'one' },
  options: ['table', 'wording', 'out', 'replace', 'json'],
  example: { line: 'couplet again out/tavolin/record.json', does: 'puts the set into out/again/tavolin' },
  run: async (given, [path], desk) => {
    const record = readSetRecord(path!);
    desk.atSeed(record.request.seed);
    const folder = join(given.out ?? join('out', 'again'), folderName(record.request.name));
    const mayReplace = replacing(given.replace);
    checkPlace(folder, mayReplace);
    const { makeSetAgain } = await import('../make-set.ts');
    const set = makeSetAgain(record, given, desk);
    const compared = compare(set.files, folderOfRecord(path!));
    writeSet(folder, set.files, mayReplace);
    tellSet(folder, set, given.json, desk);
    for (const line of [...whyDifferent(set.differences), ...compared]) desk.say(line);
  },
});

function whyDifferent(differences: readonly string[]): string[] {
  if (differences.length === 0) return ['Version, table and wording are those of the record.'];
  return ['Not all is as it was when the record was made:', ...differences.map((each) => `  ${each}`)];
}

/** How the new files compare with those that lie beside the record, where they still do. */
function compare(files: FileSet, folder: string): string[] {
  return [...files].flatMap(([name, content]) => {
    const first = join(folder, name);
    if (!existsSync(first)) return [];
    const same = readFileSync(first).equals(Buffer.from(content));
    return [`${name}: ${same ? 'the same' : 'NOT the same'}, byte for byte, as ${first}`];
  });
}
