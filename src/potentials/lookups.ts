import type { Couple } from '../chemistry/couple.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Species } from '../chemistry/species.ts';
import { Fault } from '../exact/fault.ts';
import { didYouMean } from './did-you-mean.ts';
import type { Tables } from './tables.ts';

/** The two ways to ask a table for one entry by name. */
export function lookups(
  couples: readonly Couple[],
  species: ReadonlyMap<SpeciesKey, Species>,
): Pick<Tables, 'couple' | 'speciesOf'> {
  const byId = new Map(couples.map((couple) => [couple.id, couple]));
  return {
    couple(id) {
      const found = byId.get(id);
      if (found) return found;
      const media = [...byId.keys()].filter((known) => known.startsWith(`${id}@`));
      const hint =
        media.length > 0
          ? `: in which medium, ${media.map((known) => `\`${known}\``).join(' or ')}?`
          : didYouMean(id, byId.keys());
      throw new Fault('unknown-couple', `no couple of the table is called \`${id}\`${hint}`, {
        text: id,
        at: 0,
        length: id.length,
      });
    },
    speciesOf(key) {
      const found = species.get(key);
      if (found) return found;
      const message = `nothing is known of the species \`${key}\`${didYouMean(key, species.keys())}`;
      throw new Fault('unknown-species', message, { text: key, at: 0, length: key.length });
    },
  };
}
