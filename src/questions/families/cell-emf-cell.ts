import type { Couple } from '../../chemistry/couple.ts';
import type { Inline } from '../../document/inline.ts';
import { joined, species } from '../../document/inlines.ts';
import type { WordsContext } from '../../document/words.ts';
import type { Tables } from '../../potentials/tables.ts';
import { dissolved, halfCellKind, undissolved } from '../half-cell.ts';
import { bare } from '../without-states.ts';

/** How the contents of a half-cell are told: the section of the wording and what fills it. */
export interface CellContents {
  readonly section: string;
  readonly context: WordsContext;
}

/** @returns undefined when the couple makes no ordinary half-cell */
export function cellOf(couple: Couple, tables: Tables): CellContents | undefined {
  const kind = halfCellKind(couple, tables);
  if (!kind) return undefined;
  const ions: Inline[] = joined(
    dissolved(couple, tables).map((formula) => [species(bare(formula))]),
    ', ',
    ' and ',
  );
  const name = undissolved(couple, tables) ?? '';
  if (kind === 'metal') return { section: 'contents-metal', context: { metal: name, ions } };
  return kind === 'gas'
    ? { section: 'contents-gas', context: { gas: name, ions } }
    : { section: 'contents-platinum', context: { ions } };
}
