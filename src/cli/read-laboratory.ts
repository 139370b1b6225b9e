import { readCouplesOnly } from '../potentials/read-couples-only.ts';
import { readBansOnly, readFactsOnly, readSaltsOnly } from '../potentials/read-facts-only.ts';
import { readSpeciesOnly } from '../potentials/read-one-file.ts';
import type { Laboratory } from './calculators/react.ts';

/**
 * What a mixture is looked up in, without the data files that only sheets need.
 * @param folder holds the data files
 * @param overlayFile a department's own table
 */
export function readLaboratory(folder: string, overlayFile?: string): Laboratory & { readonly name: string } {
  return {
    ...readCouplesOnly(folder, overlayFile),
    species: readSpeciesOnly(folder),
    salts: () => readSaltsOnly(folder),
    facts: readFactsOnly(folder),
    bans: readBansOnly(folder),
  };
}
