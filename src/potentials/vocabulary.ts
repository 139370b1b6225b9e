import type { Medium } from '../chemistry/couple.ts';
import type { Condition } from '../chemistry/facts.ts';
import type { State } from '../chemistry/formula.ts';

/** The media that a data file may name. */
export const MEDIA: readonly Medium[] = ['acid', 'neutral', 'alkali', 'strong-alkali'];

/** The conditions that a data file may name. */
export const CONDITIONS: readonly Condition[] = ['warm', 'time', 'catalyst', 'oxide-removed', 'excess-oxidant'];

/** What a species is when its state is all that is known of it. */
export const ROLE_OF_STATE = { s: 'solid', l: 'liquid', g: 'gas', aq: 'solution' } as const satisfies Record<State, string>;
