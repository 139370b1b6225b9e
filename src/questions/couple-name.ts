import type { Couple } from '../chemistry/couple.ts';
import type { Inline } from '../document/inline.ts';
import { species, text } from '../document/inlines.ts';
import { bare } from './without-states.ts';

/** A couple as it is named in prose: oxidised form, stroke, reduced form, without states. */
export function coupleName({ oxidised, reduced }: Couple): Inline[] {
  return [species(bare(oxidised)), text('/'), species(bare(reduced))];
}
