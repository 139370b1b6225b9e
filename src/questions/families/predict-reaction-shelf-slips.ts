import { combine } from '../../chemistry/combine.ts';
import type { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { equationSlips } from '../equation-slips.ts';
import { numberOf } from '../number-of.ts';
import { numberValue } from '../number-step.ts';
import type { Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import type { Values } from '../value.ts';
import { datumOf } from './predict-reaction-context.ts';
import { type Asked, formulaOf } from './predict-reaction-draw.ts';
import { pairedWith, type Shelf } from './predict-reaction-shelf.ts';
import { chosen, speciesValue } from './predict-reaction-shelf-steps.ts';

/** Slips of a question about three reagents, the wrong reagents first: they are the options of a choice. */
export function shelfSlips(shelf: Shelf, tables: Tables): Slip[] {
  const { unable, alike, reacts } = shelf;
  const slip = slipMaker(tables, shelf.words, shelf.context);
  const bySize = largestBySize(shelf);
  return [
    slip('EP-STRENGTH-REVERSED', 'reagent', () => speciesValue(formulaOf(unable))),
    // This reagent is no partner: the species that would react stand in no earlier answer.
    { ...slip('EP-WRONG-SPECIES', 'reagent', () => speciesValue(formulaOf(alike))), skips: ['direction'] },
    ...(bySize === unable ? [slip('EP-SIGN-DROPPED', 'reagent', () => speciesValue(formulaOf(unable)))] : []),
    ...emfSlips(shelf, reacts, slip),
    ...equationSlips(slip, 'equation', (values) => {
      const { reduced, oxidised } = pairedWith(shelf, chosen(shelf, values));
      return { reduction: reduced.half, oxidation: oxidised.half };
    }),
  ];
}

/** The one reagent of the other kind that would react if only the sizes of the potentials counted; undefined for both or neither. */
function largestBySize({ subject, reacts, unable, isOxidant }: Shelf): Asked | undefined {
  const size = ({ couple }: Asked) => couple.printed.value.abs();
  const would = [reacts, unable].filter((asked) => size(subject).compare(size(asked)) > 0 === isOxidant);
  return would.length === 1 ? would[0] : undefined;
}

function emfSlips(shelf: Shelf, reacts: Asked, slip: ReturnType<typeof slipMaker>): Slip[] {
  const { reduced, oxidised } = pairedWith(shelf, reacts);
  const up = (values: Values) => numberOf(values, datumOf(reduced));
  const down = (values: Values) => numberOf(values, datumOf(oxidised));
  const volts = (value: Rational) => numberValue(value, { unit: 'V', signed: true });
  const { timesReduction, timesOxidation } = combine(reduced.half, oxidised.half);
  return [
    slip('EP-REVERSED', 'emf', (values) => volts(down(values).minus(up(values)))),
    slip('EP-ADD', 'emf', (values) => volts(up(values).plus(down(values)))),
    slip('EP-MULTIPLIED', 'emf', (values) => volts(up(values).times(timesReduction).minus(down(values).times(timesOxidation)))),
  ];
}
