import { join } from 'node:path';
import type { Facts } from '../chemistry/facts.ts';
import type { Salt } from '../chemistry/species.ts';
import { FaultList } from './fault-list.ts';
import { readBans } from './read-bans.ts';
import { readFacts, type Told } from './read-facts.ts';
import { readOneFile } from './read-one-file.ts';
import { readSalts } from './read-salts.ts';
import { readText } from './read-text.ts';
import { readSheet } from './sheet.ts';
import type { Ban } from './tables.ts';
import { withPaths } from './with-paths.ts';

/** What is known of pairs of species, without the other data files. @throws Faults, each with the path of its file */
export function readFactsOnly(folder: string): Facts {
  return withPaths(folder, undefined, () => {
    const faults = new FaultList();
    const told = readFacts((file, needed) => readSheet(file, readText(join(folder, file)), { needed }, faults));
    faults.throwIfAny();
    return {
      pairs: factsOf(told.pairs),
      restrictions: factsOf(told.restrictions),
      bystanders: factsOf(told.bystanders),
      speciations: factsOf(told.speciations),
    };
  });
}

/** What is never put together. */
export function readBansOnly(folder: string): Ban[] {
  return factsOf(readOneFile(folder, 'bans.csv', readBans));
}

/** The bottled substances. */
export function readSaltsOnly(folder: string): Salt[] {
  return readOneFile(folder, 'salts.csv', readSalts).map(({ salt }) => salt);
}

function factsOf<T>(told: readonly Told<T>[]): T[] {
  return told.map(({ fact }) => fact);
}
