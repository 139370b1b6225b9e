import type { Words, WordsContext } from '../document/words.ts';
import type { Tables } from '../potentials/tables.ts';
import type { MisconceptionId, Slip } from './question.ts';
import type { NodeId, Value, Values } from './value.ts';

/** Makes slips for one item: feedback comes from the catalogue, what has happened from the family's wording (`happened-ID`). */
export function slipMaker(tables: Tables, words: Words, context: WordsContext = {}) {
  return (
    id: MisconceptionId,
    at: NodeId,
    work: (values: Values) => Value,
    applies: (values: Values) => boolean = () => true,
  ): Slip => {
    const misconception = tables.misconceptions.get(id);
    if (!misconception) throw new Error(`no misconception is called ${id}`);
    return { id, at, work, applies, feedback: misconception.feedback, happened: words.inline(`happened-${id}`, context) };
  };
}
