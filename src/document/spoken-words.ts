import type { State } from '../chemistry/formula.ts';

/** How a physical state is read out. */
export const STATE_WORDS: Readonly<Record<State, string>> = { s: 'solid', l: 'liquid', g: 'gas', aq: 'aqueous' };
