import { type CoupleRow, HALF_EQUATION, mediumOf, POTENTIAL, readCoupleRow } from './couple-row.ts';
import type { FaultList } from './fault-list.ts';
import { readSheet, type SheetRow } from './sheet.ts';
import { MEDIA } from './vocabulary.ts';

const OXIDANT_IN = 'oxidant in';
const REDUCTANT_IN = 'reductant in';
const CALCULATION_ONLY = 'calculation only';

/** Columns of `couples.csv`. */
export const COUPLE_COLUMNS = [
  // written as a reduction, whole numbers in lowest terms, states in brackets

  HALF_EQUATION,
  POTENTIAL,
  'medium',
  // media in which this is the usual product of the oxidised (reduced) form, between semicolons
  OXIDANT_IN,
  REDUCTANT_IN,
  // `yes`: never a step of a mixture
  CALCULATION_ONLY,
  // where the value was read, or `from memory`
  'source',
  // another published value where they differ by more than 0.02 V, and what else a teacher should know
  'note',
] as const;

/**
 * The couples of the default table.
 * @param isWanted looks at the text of a half-equation; a row that is not wanted is not read further
 */
export function readCouples(
  file: string,
  text: string,
  faults: FaultList,
  isWanted: (halfEquation: string) => boolean = () => true,
): CoupleRow[] {
  const rows = readSheet(file, text, { needed: COUPLE_COLUMNS }, faults);
  return rows
    .filter((row) => isWanted(row.text(HALF_EQUATION)))
    .flatMap((row) => {
      const found = readCoupleRow(row, useIn(row));
      const declared = row.oneOf('medium', MEDIA);
      if (found) checkMedium(found, declared);
      return found ?? [];
    });
}

/** Media of use, source and note of a row. */
export function useIn(row: SheetRow) {
  const note = row.text('note');
  return {
    usualOxidant: row.listOf(OXIDANT_IN, MEDIA),
    usualReductant: row.listOf(REDUCTANT_IN, MEDIA),
    calculationOnly: row.yes(CALCULATION_ONLY),
    source: row.required('source'),
    ...(note === '' ? {} : { note }),
  };
}

function checkMedium({ row, couple }: CoupleRow, declared: string | undefined): void {
  const found = mediumOf(couple.half);
  if (declared && declared !== found) {
    const because = found === 'neutral' ? 'neither H^+ nor OH^- takes part' : `${found === 'acid' ? 'H^+' : 'OH^-'} takes part`;
    row.fault('wrong-medium', `expected medium \`${found}\`, because ${because}, found \`${declared}\``);
  }
  const used = [...couple.usualOxidant, ...couple.usualReductant];
  if (couple.calculationOnly && used.length > 0)
    row.fault('used-though-calculation-only', 'a couple that is for calculation only is usual in no medium');
  const against = found === 'acid' ? ['alkali', 'strong-alkali'] : found === 'alkali' ? ['acid'] : [];
  const wrong = used.find((medium) => against.includes(medium));
  if (wrong) row.fault('wrong-medium', `a half-equation for ${found} cannot be usual in ${wrong}`);
}
