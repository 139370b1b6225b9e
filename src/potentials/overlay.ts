import { composition } from '../chemistry/composition.ts';
import type { Couple, Medium } from '../chemistry/couple.ts';
import type { Formula, SpeciesKey } from '../chemistry/formula.ts';
import { isElectron } from '../chemistry/formula-parts.ts';
import type { Species } from '../chemistry/species.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { type CoupleRow, HALF_EQUATION, POTENTIAL, readCoupleRow } from './couple-row.ts';
import type { FaultList } from './fault-list.ts';
import { COUPLE_COLUMNS } from './read-couples.ts';
import { readSheet, type SheetRow } from './sheet.ts';
import { ROLE_OF_STATE } from './vocabulary.ts';

/** A department's own table: values that stand in place of ours, and couples that we do not have. */
export interface Overlay {
  /** as it is to be named on sheets */
  readonly name: string;
  readonly text: string;
}

const COLUMNS = {
  needed: [HALF_EQUATION, POTENTIAL],
  optional: COUPLE_COLUMNS.filter((column) => column !== HALF_EQUATION && column !== POTENTIAL),
  aliases: new Map([
    ['half equation', HALF_EQUATION],
    ['e° / v', POTENTIAL],
    ['e° (v)', POTENTIAL],
    ['e°', POTENTIAL],
    ['e', POTENTIAL],
    ['potential', POTENTIAL],
  ]),
};

/** Rows of a department's table: `half-equation, E°, note`, any multiple of a half-equation. */
export function readOverlay({ name, text }: Overlay, faults: FaultList): CoupleRow[] {
  return readSheet(name, text, COLUMNS, faults).flatMap((row) => readCoupleRow(row, useOf(row, name), 'any-multiple') ?? []);
}

function useOf(row: SheetRow, name: string) {
  const note = row.text('note');
  return {
    usualOxidant: [],
    usualReductant: [],
    calculationOnly: false,
    source: row.text('source') || name,
    ...(note === '' ? {} : { note }),
  };
}

/**
 * The table with a department's values: a row that tells of a couple we have (whatever the state or the spelling of its
 * species) changes
 * its potential, source and note; another adds a couple, which is the usual one of its species where no couple of ours is.
 */
export function overlaid(ours: readonly CoupleRow[], theirs: readonly CoupleRow[]): CoupleRow[] {
  const known = new Map(ours.map((entry) => [signature(entry), entry]));
  const replaced = new Map<CoupleRow, CoupleRow>();
  const added: CoupleRow[] = [];
  for (const their of theirs) {
    const our = known.get(signature(their));
    if (!our) added.push(their);
    else if (replaced.has(our))
      their.row.fault(
        'doubled-couple',
        `this couple stands on line ${replaced.get(our)!.row.place.line} already: one value for each couple`,
      );
    else replaced.set(our, withValue(our, their));
  }
  const kept = ours.map((entry) => replaced.get(entry) ?? entry);
  return [...kept, ...added.map((entry) => ({ ...entry, couple: usualWhereFree(entry.couple, kept) }))];
}

function withValue(our: CoupleRow, their: CoupleRow): CoupleRow {
  const { note: _ours, ...rest } = our.couple;
  const { stored, printed, source, note } = their.couple;
  return {
    row: their.row,
    element: our.element,
    couple: { ...rest, stored, printed, source, ...(note === undefined ? {} : { note }) },
  };
}

function signature({ couple }: CoupleRow): string {
  return [madeOf(couple.oxidised), madeOf(couple.reduced), couple.medium].join(' / ');
}

/** Atoms and charge in a fixed order: the same for `HOCl` and `HClO`. */
function madeOf(formula: Formula): string {
  return [...composition(formula)]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .flat()
    .join(' ');
}

function usualWhereFree(couple: Omit<Couple, 'id'>, ours: readonly CoupleRow[]): Omit<Couple, 'id'> {
  const media: Medium[] =
    couple.medium === 'neutral' ? ['acid', 'neutral'] : couple.medium === 'acid' ? ['acid'] : ['alkali', 'strong-alkali'];
  const free = (taken: (other: Omit<Couple, 'id'>) => readonly Medium[]) =>
    media.filter((medium) => !ours.some((entry) => taken(entry.couple).includes(medium)));
  return {
    ...couple,
    usualOxidant: free((other) => (other.oxidisedKey === couple.oxidisedKey ? other.usualOxidant : [])),
    usualReductant: free((other) => (other.reducedKey === couple.reducedKey ? other.usualReductant : [])),
  };
}

/** Species of added couples that no file describes, known by their formula alone. */
export function withPlainSpecies(
  species: ReadonlyMap<SpeciesKey, Species>,
  rows: readonly CoupleRow[],
): Map<SpeciesKey, Species> {
  const all = new Map(species);
  for (const { couple } of rows) {
    for (const { formula } of [...couple.half.left, ...couple.half.right]) {
      const key = keyOf(formula);
      if (isElectron(formula) || all.has(key)) continue;
      all.set(key, { key, formula, name: key, otherNames: [], role: ROLE_OF_STATE[formula.state ?? 'aq'] });
    }
  }
  return all;
}
