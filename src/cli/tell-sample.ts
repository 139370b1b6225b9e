import { join } from 'node:path';
import { familyOf } from '../papers/allowed-families.ts';
import { type FamilySample, sampleFamily } from '../papers/sample-family.ts';
import { readTables } from '../potentials/read-tables.ts';
import { FAMILIES } from '../questions/families/index.ts';
import type { Desk } from './desk.ts';
import type { Own } from './make-set.ts';
import { withProgress } from './progress.ts';
import { readWording } from './read-wording.ts';

/** Questions sampled when no number is given. */
const USUAL_SAMPLE = 200;

interface SampleGiven extends Own {
  readonly sample: number | undefined;
  readonly check: boolean;
  readonly json: boolean;
}

/**
 * Prints what a sample of each family shows.
 * @param id of one family; all when absent
 * @returns the number of failures
 */
export function tellSample(given: SampleGiven, id: string | undefined, desk: Desk): number {
  const wanted = id === undefined ? FAMILIES : [familyOf(id)];
  const count = given.sample ?? USUAL_SAMPLE;
  const samples = withProgress((progress) => {
    const tables = readTables(join(desk.root, 'potentials'), given.table);
    const wording = readWording(desk.root, given.wording);
    return wanted.map((family) =>
      sampleFamily(family, count, tables, wording, (done) => progress.at(`Making ${family.id}`, done, count)),
    );
  });
  if (given.json) desk.print(JSON.stringify(id === undefined ? samples : samples[0], undefined, 2));
  else desk.print(samples.map(inWords).join('\n\n'));
  return samples.reduce((sum, { failures }) => sum + failures.length, 0);
}

function inWords({ id, sampled, failures, warnings, distinct, misconceptions, meanMarks, meanMinutes }: FamilySample): string {
  const shown = Object.entries(misconceptions).map(([name, count]) => `  ${name} ${count}`);
  return [
    `${id}: ${sampled} made, ${failures.length} failed, ${warnings.length} warnings, ${distinct} different exercises`,
    `  mean ${meanMarks} marks, ${meanMinutes} minutes`,
    ...failures.map(({ code, says }) => `  failed ${code}: ${says}`),
    ...warnings.slice(0, 20).map(({ code, rule, says }) => `  warning ${code} ${rule}: ${says}`),
    'misconceptions shown:',
    ...shown,
  ].join('\n');
}
