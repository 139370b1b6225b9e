import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Species } from '../chemistry/species.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { FaultList } from './fault-list.ts';
import { formulaIn } from './read-formula.ts';
import { readSheet, type SheetRow } from './sheet.ts';

const COLUMNS = ['formula', 'name', 'other names', 'colour', 'also accepted', 'colour source', 'role'];
const ROLES = ['metal', 'gas', 'solution', 'solid', 'liquid'] as const;

/** The species, by key. A species that stands twice is a fault. */
export function readSpecies(file: string, text: string, faults: FaultList): Map<SpeciesKey, Species> {
  const found = new Map<SpeciesKey, Species>();
  for (const row of readSheet(file, text, { needed: COLUMNS }, faults)) {
    const species = toSpecies(row);
    if (!species) continue;
    if (found.has(species.key)) row.fault('doubled-species', `\`${species.key}\` stands in \`${file}\` already`);
    else found.set(species.key, species);
  }
  return found;
}

function toSpecies(row: SheetRow): Species | undefined {
  const formula = formulaIn(row, row.required('formula'));
  const name = row.required('name');
  const role = row.oneOf('role', ROLES);
  const colour = colourIn(row);
  if (!formula || !role) return undefined;
  const key = keyOf(formula);
  if (formula.state === undefined && key !== 'e^-') row.fault('missing', `expected a state such as \`${key}(aq)\``);
  return { key, formula, name, otherNames: row.list('other names'), role, ...(colour ? { colour } : {}) };
}

function colourIn(row: SheetRow): Species['colour'] {
  const word = row.text('colour');
  const accepted = row.list('also accepted');
  if (word === '') {
    if (accepted.length > 0) row.fault('missing', 'other colour words are accepted, so expected a word in column `colour`');
    return undefined;
  }
  return { word, accepted, source: row.required('colour source') };
}
