import type { Couple } from '../chemistry/couple.ts';
import type { CoupleRow } from './couple-row.ts';
import type { FaultList } from './fault-list.ts';

/**
 * Gives every couple its id: `oxidised/reduced`, with `@medium` where the same pair stands in two media. A doubled couple is
 * a fault.
 */
export function nameCouples(rows: readonly CoupleRow[], faults: FaultList): Couple[] {
  const media = new Map<string, Set<string>>();
  const seen = new Map<string, CoupleRow>();
  for (const entry of rows) {
    const pair = pairOf(entry.couple);
    const known = media.get(pair) ?? new Set();
    media.set(pair, known.add(entry.couple.medium));
    const same = seen.get(`${pair}@${entry.couple.medium}`);
    if (same)
      faults.add('doubled-couple', `\`${pair}\` stands in ${where(same)} already: one value for each couple`, entry.row.place);
    else seen.set(`${pair}@${entry.couple.medium}`, entry);
  }
  return rows.map(({ couple }) => {
    const pair = pairOf(couple);
    return { id: media.get(pair)!.size > 1 ? `${pair}@${couple.medium}` : pair, ...couple };
  });
}

/** In order of potential, most negative first; ties by id, in code-unit order. */
export function sortCouples(couples: readonly Couple[]): Couple[] {
  return [...couples].sort((one, other) => one.stored.value.compare(other.stored.value) || (one.id < other.id ? -1 : 1));
}

function pairOf({ oxidisedKey, reducedKey }: Omit<Couple, 'id'>): string {
  return `${oxidisedKey}/${reducedKey}`;
}

function where({ row }: CoupleRow): string {
  return `line ${row.place.line} of ${row.place.file}`;
}
