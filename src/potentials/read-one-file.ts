import { join } from 'node:path';
import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Species } from '../chemistry/species.ts';
import { FaultList } from './fault-list.ts';
import { readAtomicMasses } from './read-atomic-masses.ts';
import { readSpecies } from './read-species.ts';
import { readText } from './read-text.ts';
import type { Tables } from './tables.ts';
import { withPaths } from './with-paths.ts';

/**
 * Reads one data file for who needs no other: a calculator that weighs wants no hazards. What stands between files is not checked.
 * @param folder holds the data files
 * @throws Faults, each with the path of its file; Fault `unreadable-file`
 */
export function readOneFile<T>(folder: string, file: string, reader: (file: string, text: string, faults: FaultList) => T): T {
  return withPaths(folder, undefined, () => {
    const faults = new FaultList();
    const found = reader(file, readText(join(folder, file)), faults);
    faults.throwIfAny();
    return found;
  });
}

/** Relative atomic masses alone. */
export function readMassesOnly(folder: string): Tables['atomicMasses'] {
  return readOneFile(folder, 'atomic-masses.csv', readAtomicMasses);
}

/** Species alone, by key. */
export function readSpeciesOnly(folder: string): Map<SpeciesKey, Species> {
  return readOneFile(folder, 'species.csv', readSpecies);
}
