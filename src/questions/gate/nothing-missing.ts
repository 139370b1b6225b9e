import { isElectron } from '../../chemistry/formula-parts.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import type { Item } from '../question.ts';
import { inlinesIn } from './inlines-of.ts';
import type { GateRule } from './rule.ts';

/** What the medium brings. */
const MEDIUM = new Set(['H^+', 'OH^-', 'H2O']);

/** Copper(I) iodide forms where there is iodide: its potential is no help, and misleads, beside a mixture without any. */
export const nothingMissing: GateRule = {
  id: 'nothing-missing',
  holds: 'no half-equation on the sheet needs a further species that is not in the mixture',
  check: ({ item, tables }) => {
    const there = presentIn(item, (id) => tables.couple(id));
    return item.gives.flatMap((fact) => {
      if (!fact.startsWith('half:')) return [];
      const { id, half, oxidisedKey, reducedKey } = tables.couple(fact.slice('half:'.length));
      const absent = [...half.left, ...half.right]
        .filter(({ formula }) => !isElectron(formula))
        .map(({ formula }) => keyOf(formula))
        .filter((key) => key !== oxidisedKey && key !== reducedKey && !MEDIUM.has(key) && !there.has(key));
      return absent.map((key) => `${id} needs ${key}, which is not in the mixture`);
    });
  },
};

type Keys = { readonly oxidisedKey: string; readonly reducedKey: string };

/** Species that the stem names outside its equations, and those that react in an equation that is asked for. */
function presentIn(item: Item, coupleOf: (id: string) => Keys): Set<string> {
  const named = inlinesIn(item.stem).flatMap((inline) => (inline.kind === 'formula' ? [keyOf(inline.formula)] : []));
  const reacting = item.asks.flatMap((fact) => {
    const [, taker, giver] = /^eq:(\S+) (\S+)$/.exec(fact) ?? [];
    return taker && giver ? [coupleOf(taker).oxidisedKey, coupleOf(giver).reducedKey] : [];
  });
  return new Set([...named, ...reacting]);
}
