import type { State } from '../chemistry/formula.ts';

/** Elements whose symbol is one letter: two of them in a row sound like a two-letter symbol. IUPAC periodic table, 2022. */
export const SINGLE_LETTER_ELEMENTS: ReadonlySet<string> = new Set('HBCNOFPSKVYIWU');

/** How a physical state is read out. */
export const STATE_WORDS: Readonly<Record<State, string>> = { s: 'solid', l: 'liquid', g: 'gas', aq: 'aqueous' };
