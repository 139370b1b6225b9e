import { checkParts } from './check-parts.ts';
import { cycleText, openCycles } from './closure.ts';
import { sortCouples } from './couple-ids.ts';
import { digestOf } from './digest.ts';
import { FaultList } from './fault-list.ts';
import { deepFreeze } from './freeze.ts';
import { lookups } from './lookups.ts';
import type { Overlay } from './overlay.ts';
import type { Told } from './read-facts.ts';
import { readParts } from './read-parts.ts';
import type { Tables } from './tables.ts';

/**
 * The tables from the text of their files, checked and frozen: shape first, then chemistry (balance, one value per couple,
 * one usual
 * couple per species and medium, nothing named that is not described). Potentials that do not add up round a cycle are warnings.
 * @param files text by file name (`couples.csv` …)
 * @param overlay a department's own table, which goes before ours
 * @throws Faults, all of all files together, each with file and line
 */
export function parseTables(files: ReadonlyMap<string, string>, overlay?: Overlay): Tables {
  const faults = new FaultList();
  const parts = readParts(files, overlay, faults);
  checkParts(parts, faults);
  faults.throwIfAny();

  const { species, atomicMasses, misconceptions, facts } = parts;
  const couples = sortCouples(parts.couples);
  const all = overlay ? new Map([...files, [`overlay ${overlay.name}`, overlay.text]]) : files;
  const tables = deepFreeze({
    name: overlay ? `default + ${overlay.name}` : 'default',
    digest: digestOf(all),
    couples,
    species,
    salts: parts.salts.map(({ salt }) => salt),
    hazards: factsOf(parts.hazards),
    facts: {
      pairs: factsOf(facts.pairs),
      restrictions: factsOf(facts.restrictions),
      bystanders: factsOf(facts.bystanders),
      speciations: factsOf(facts.speciations),
    },
    titrations: factsOf(parts.titrations),
    atomicMasses,
    misconceptions,
    bans: factsOf(parts.bans),
    ...lookups(couples, species),
  });
  let warnings: readonly string[] | undefined;
  return Object.freeze({
    ...tables,
    /** Found when asked for: most commands never look. */
    get warnings() {
      warnings ??= Object.freeze(openCycles(couples).map(cycleText));
      return warnings;
    },
  });
}

function factsOf<T>(told: readonly Told<T>[]): T[] {
  return told.map(({ fact }) => fact);
}
