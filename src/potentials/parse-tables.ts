import type { Facts } from '../chemistry/facts.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { checkBands, checkCoupleSpecies, checkFacts, Known, substanceKeys } from './check-references.ts';
import { clashesOf } from './check-usual.ts';
import { cycleText, openCycles } from './closure.ts';
import { nameCouples, sortCouples } from './couple-ids.ts';
import type { CoupleRow } from './couple-row.ts';
import { digestOf } from './digest.ts';
import { FaultList } from './fault-list.ts';
import { deepFreeze } from './freeze.ts';
import { lookups } from './lookups.ts';
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
import { readSheet } from './sheet.ts';
import type { Tables } from './tables.ts';

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

/**
 * The tables from the text of their files, checked and frozen: shape first, then chemistry (balance, one value per couple, one usual
 * couple per species and medium, nothing named that is not described). Potentials that do not add up round a cycle are warnings.
 * @param files text by file name (`couples.csv` …)
 * @param overlay a department's own table, which goes before ours
 * @throws Faults, all of all files together, each with file and line
 */
export function parseTables(files: ReadonlyMap<string, string>, overlay?: Overlay): Tables {
  const faults = new FaultList();
  const textOf = (file: FileName): string => files.get(file) ?? '';
  for (const file of TABLE_FILES) if (!files.has(file)) faults.add('missing-file', `expected a file \`${file}\``, { file });
  const faultsIn = (file: FileName): FaultList => (files.has(file) ? faults : new FaultList()); // a missing file is told once
  const read = <T>(reader: (file: string, text: string, faults: FaultList) => T, file: FileName): T =>
    reader(file, textOf(file), faultsIn(file));

  const ours = read(readCouples, 'couples.csv');
  const described = read(readSpecies, 'species.csv');
  const salts = read(readSalts, 'salts.csv');
  const facts = readFacts((file, columns) => readSheet(file, textOf(file), { needed: columns }, faultsIn(file)));
  const bans = read(readBans, 'bans.csv');
  const titrations = read(readTitrations, 'titrations.csv');
  const hazards = read(readHazards, 'hazards.csv');
  const atomicMasses = read(readAtomicMasses, 'atomic-masses.csv');
  const misconceptions = read(readMisconceptions, 'misconceptions.json');

  const theirs = overlay ? readOverlay(overlay, faults) : [];
  const rows = overlay ? overlaid(ours, theirs) : ours;
  const species = withPlainSpecies(described, theirs);
  const couples = nameCouples(rows, faults);
  const known = new Known('species', species.keys());
  const substances = new Known(
    'species',
    substanceKeys(
      species.keys(),
      salts.map(({ salt }) => keyOf(salt.formula)),
    ),
  );
  checkCoupleSpecies(ours, known);
  for (const { salt, row } of salts) known.check(row, [salt.gives, ...salt.with.map(({ key }) => key)]);
  const ids = new Known(
    'couple',
    couples.map(({ id }) => id),
  );
  checkFacts(facts, known, ids);
  for (const { fact, row } of titrations) {
    ids.check(row, [fact.titrant, fact.analyte]);
    substances.check(row, [keyOf(fact.titrantSalt), keyOf(fact.analyteSalt)]);
  }
  for (const { fact, row } of bans) substances.check(row, [...fact.first, ...fact.second, ...fact.unless]);
  for (const { fact, row } of hazards) substances.check(row, fact.keys);
  checkBands(hazards);
  checkUsual(rows, couples, facts, faults);
  faults.throwIfAny();

  const sorted = sortCouples(couples);
  const all = overlay ? new Map([...files, [`overlay ${overlay.name}`, overlay.text]]) : files;
  return deepFreeze({
    name: overlay ? `default + ${overlay.name}` : 'default',
    digest: digestOf(all),
    couples: sorted,
    species,
    salts: salts.map(({ salt }) => salt),
    hazards: factsOf(hazards),
    facts: plainFacts(facts),
    titrations: factsOf(titrations),
    atomicMasses,
    misconceptions,
    bans: factsOf(bans),
    warnings: openCycles(sorted).map(cycleText),
    ...lookups(sorted, species),
  });
}

function factsOf<T>(told: readonly Told<T>[]): T[] {
  return told.map(({ fact }) => fact);
}

function plainFacts({ pairs, restrictions, bystanders, speciations }: ToldFacts): Facts {
  return {
    pairs: factsOf(pairs),
    restrictions: factsOf(restrictions),
    bystanders: factsOf(bystanders),
    speciations: factsOf(speciations),
  };
}

/** A clash is told of the later of its two rows. */
function checkUsual(rows: readonly CoupleRow[], couples: Tables['couples'], facts: ToldFacts, faults: FaultList): void {
  for (const { species, as, medium, couples: pair } of clashesOf(couples, plainFacts(facts).restrictions)) {
    const place = rows[couples.indexOf(pair[1])]?.row.place ?? {};
    const message = `\`${pair[0].id}\` and \`${pair[1].id}\` are both the usual couple of \`${species}\` as ${as} in ${medium}: one of them is`;
    faults.add('two-usual-couples', message, place);
  }
}
