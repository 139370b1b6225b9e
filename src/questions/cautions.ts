import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Hazard } from '../chemistry/species.ts';
import type { Tables } from '../potentials/tables.ts';
import type { Caution } from './question.ts';

/** Something a described operation handles. */
export interface Handled {
  readonly key: SpeciesKey;
  readonly form: Hazard['form'];
  /** mol dm⁻³, for solutions */
  readonly concentration?: number;
}

/**
 * The usual cautions for what an operation handles, one for each substance.
 * @returns undefined when something has no hazards row for its form and concentration: such an operation may not be described
 */
export function cautionsFor(handled: readonly Handled[], tables: Tables): Caution[] | undefined {
  const rows = handled.map((each) => tables.hazards.find((hazard) => matches(hazard, each)));
  if (rows.some((row) => row === undefined)) return undefined;
  const told = rows.map((row, at) => row && (handled[at]!.concentration === undefined ? ofNoStrength(row) : row));
  const found = new Map(told.flatMap((row) => (row ? [[row.substance + row.form, row] as const] : [])));
  return [...found.values()].map(({ substance, caution, signal, statements, source, fromMemory }) => ({
    substance,
    caution,
    signal,
    statements,
    source,
    fromMemory,
  }));
}

/** Where no concentration is given the strongest is reckoned with, and not called strong. */
function ofNoStrength(row: Hazard): Hazard {
  const without = (words: string) => words.replace(/^strong (.)/i, (_, first: string) => first);
  const caution = without(row.caution);
  return { ...row, substance: without(row.substance), caution: caution.charAt(0).toUpperCase() + caution.slice(1) };
}

function matches(hazard: Hazard, { key, form, concentration }: Handled): boolean {
  if (!hazard.keys.includes(key) || hazard.form !== form) return false;
  if (concentration === undefined) return true;
  return concentration >= (hazard.from ?? 0) && concentration < (hazard.below ?? Number.POSITIVE_INFINITY);
}
