import type { Couple } from '../chemistry/couple.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Hazard, Salt, Species } from '../chemistry/species.ts';
import type { TitrationSystem } from '../chemistry/titration-system.ts';
import { nameCouples } from './couple-ids.ts';
import type { CoupleRow } from './couple-row.ts';
import { FaultList } from './fault-list.ts';
import { type Overlay, overlaid, readOverlay, withPlainSpecies } from './overlay.ts';
import { readAtomicMasses } from './read-atomic-masses.ts';
import { readBans } from './read-bans.ts';
import { readCouples } from './read-couples.ts';
import { readFacts, type Told, type ToldFacts } from './read-facts.ts';
import { readHazards } from './read-hazards.ts';
import { readMisconceptions } from './read-misconceptions.ts';
import { readSalts } from './read-salts.ts';
import { readSpecies } from './read-species.ts';
import { readTitrations } from './read-titrations.ts';
import { readSheet, type SheetRow } from './sheet.ts';
import type { Ban, Tables } from './tables.ts';

/** The data files, by name. */
export const TABLE_FILES = [
  'couples.csv',
  'species.csv',
  'salts.csv',
  'pair-facts.csv',
  'restrictions.csv',
  'bystanders.csv',
  'speciations.csv',
  'bans.csv',
  'titrations.csv',
  'hazards.csv',
  'atomic-masses.csv',
  'misconceptions.json',
] as const;

type FileName = (typeof TABLE_FILES)[number];

/** Everything that was read, with the rows it was read from. */
export interface Parts {
  /** rows of the default table, before a department's values */
  readonly ours: readonly CoupleRow[];
  /** rows in force; `couples` stand in the same order */
  readonly rows: readonly CoupleRow[];
  readonly couples: readonly Couple[];
  readonly species: ReadonlyMap<SpeciesKey, Species>;
  readonly salts: readonly { readonly salt: Salt; readonly row: SheetRow }[];
  readonly facts: ToldFacts;
  readonly bans: readonly Told<Ban>[];
  readonly titrations: readonly Told<TitrationSystem>[];
  readonly hazards: readonly Told<Hazard>[];
  readonly atomicMasses: Tables['atomicMasses'];
  readonly misconceptions: Tables['misconceptions'];
}

/** Reads all files; whatever is wrong in the shape of a row is kept in `faults`. */
export function readParts(files: ReadonlyMap<string, string>, overlay: Overlay | undefined, faults: FaultList): Parts {
  for (const file of TABLE_FILES) if (!files.has(file)) faults.add('missing-file', `expected a file \`${file}\``, { file });
  // A missing file is told once, not again as an empty one.
  const faultsIn = (file: FileName): FaultList => (files.has(file) ? faults : new FaultList());
  const textOf = (file: FileName): string => files.get(file) ?? '';
  const read = <T>(reader: (file: string, text: string, faults: FaultList) => T, file: FileName): T =>
    reader(file, textOf(file), faultsIn(file));

  const ours = read(readCouples, 'couples.csv');
  const theirs = overlay ? readOverlay(overlay, faults) : [];
  const rows = overlay ? overlaid(ours, theirs) : ours;
  return {
    ours,
    rows,
    couples: nameCouples(rows, faults),
    species: withPlainSpecies(read(readSpecies, 'species.csv'), theirs),
    salts: read(readSalts, 'salts.csv'),
    facts: readFacts((file, columns) => readSheet(file, textOf(file), { needed: columns }, faultsIn(file))),
    bans: read(readBans, 'bans.csv'),
    titrations: read(readTitrations, 'titrations.csv'),
    hazards: read(readHazards, 'hazards.csv'),
    atomicMasses: read(readAtomicMasses, 'atomic-masses.csv'),
    misconceptions: read(readMisconceptions, 'misconceptions.json'),
  };
}
