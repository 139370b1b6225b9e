import { type Combined, combine } from '../../chemistry/combine.ts';
import type { Couple } from '../../chemistry/couple.ts';
import type { Formula, SpeciesKey } from '../../chemistry/formula.ts';
import { coefficientOf } from '../../chemistry/terms.ts';
import type { TitrationSystem } from '../../chemistry/titration-system.ts';
import type { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { bare } from '../without-states.ts';

/** One of the two solutions: the species that reacts, what it turns into, and its coefficient in the overall equation. */
export interface Side {
  readonly couple: Couple;
  readonly key: SpeciesKey;
  readonly reacts: Formula;
  readonly product: Formula;
  readonly coefficient: Rational;
}

/** Both solutions of a titration, told as burette and flask and as oxidant and reductant. */
export interface Sides {
  readonly titrant: Side;
  readonly analyte: Side;
  readonly oxidant: Side;
  readonly reductant: Side;
  readonly combined: Combined;
}

/** Works out which solution is the oxidant from the printed potentials, and combines the couples. */
export function sidesOf(system: TitrationSystem, tables: Tables): Sides {
  const [titrant, analyte] = [tables.couple(system.titrant), tables.couple(system.analyte)];
  const titrantOxidises = titrant.printed.value.compare(analyte.printed.value) > 0;
  const [higher, lower] = titrantOxidises ? [titrant, analyte] : [analyte, titrant];
  const combined = combine(higher.half, lower.half);
  const left = (key: SpeciesKey) => coefficientOf(combined.equation.left, key);
  const oxidant: Side = {
    couple: higher,
    key: higher.oxidisedKey,
    reacts: bare(higher.oxidised),
    product: bare(higher.reduced),
    coefficient: left(higher.oxidisedKey),
  };
  const reductant: Side = {
    couple: lower,
    key: lower.reducedKey,
    reacts: bare(lower.reduced),
    product: bare(lower.oxidised),
    coefficient: left(lower.reducedKey),
  };
  return {
    oxidant,
    reductant,
    combined,
    ...(titrantOxidises ? { titrant: oxidant, analyte: reductant } : { titrant: reductant, analyte: oxidant }),
  };
}
