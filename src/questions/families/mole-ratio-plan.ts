import { elementsIn } from '../../chemistry/composition.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { massParts } from '../../chemistry/molar-mass.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { PartId } from '../question.ts';
import { bare } from '../without-states.ts';
import type { RatioDraw } from './mole-ratio-draw.ts';
import { printedMasses, type Substance } from './mole-ratio-substance.ts';

/** A reagent as the question speaks of it: the species that reacts, and the substance that is weighed. */
export interface Reagent {
  readonly species: Formula;
  readonly salt: Formula;
  readonly isMetal: boolean;
}

/** Which parts there are, and what stands in each. */
export interface RatioPlan {
  readonly drawn: RatioDraw;
  readonly known: Reagent;
  readonly found: Reagent;
  /** where the equation is asked; absent when it is printed */
  readonly equationPart?: PartId;
  readonly ratioPart: PartId;
  readonly amountPart: PartId;
  readonly lastPart: PartId;
  /** a molar mass is worked out only of what is more than one element */
  readonly weighsKnown: boolean;
  readonly weighsFound: boolean;
  /** elements whose relative atomic masses are printed */
  readonly elements: readonly string[];
}

export function planOf(drawn: RatioDraw): RatioPlan {
  const { known, found, oxidant, reductant, told } = drawn;
  const formulaOf = ({ key }: Substance): Formula => bare(key === oxidant.oxidisedKey ? oxidant.oxidised : reductant.reduced);
  const reagent = (substance: Substance): Reagent => ({
    species: formulaOf(substance),
    salt: bare(substance.salt.formula),
    isMetal: substance.isMetal,
  });
  const [weighsKnown, weighsFound] = [known.measure === 'mass', found.measure === 'mass'];
  const letters = told === 'equation' ? ['a', 'b', 'c'] : ['b', 'c', 'd'];
  const weighed = [...(weighsKnown ? [known] : []), ...(weighsFound ? [found] : [])];
  return {
    drawn,
    known: reagent(known),
    found: reagent(found),
    ...(told === 'equation' ? {} : { equationPart: 'a' }),
    ratioPart: letters[0]!,
    amountPart: letters[1]!,
    lastPart: letters[2]!,
    weighsKnown,
    weighsFound,
    elements: [...new Set(weighed.flatMap(({ salt }) => elementsIn(salt.formula)))].sort(),
  };
}

/** Id of the datum that prints a relative atomic mass. */
export const massOf = (element: string): string => `Ar:${element}`;

/** How many atoms of each element one formula unit holds, in order of appearance. */
export function atomCounts(salt: Formula, tables: Tables): { readonly symbol: string; readonly atoms: number }[] {
  return massParts(salt, printedMasses(tables)).map(({ symbol, atoms }) => ({ symbol, atoms }));
}

/** Molecules of water in one formula unit of a hydrate; none otherwise. */
export function waterIn(salt: Formula): number {
  return salt.units.slice(1).reduce((sum, { count }) => sum + count, 0);
}
