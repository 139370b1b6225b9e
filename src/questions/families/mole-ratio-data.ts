import { type Decimal, figuresOf } from '../../exact/decimal.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Datum } from '../question.ts';
import { massOf, type RatioPlan } from './mole-ratio-plan.ts';

/** Everything printed that the answers are computed from. */
export function ratioData(
  { drawn, elements }: RatioPlan,
  tables: Tables,
  units: { readonly volume: string; readonly concentration: string },
): Datum[] {
  const datum = (id: string, role: string, value: Decimal | undefined, unit: string): Datum[] =>
    value ? [{ id, role, value: { kind: 'number', value: value.value, unit }, printed: { sf: figuresOf(value) } }] : [];
  return [
    ...datum('m', 'mass of the known reagent', drawn.mass, 'g'),
    ...datum('c', 'concentration of the known solution', drawn.concentration, units.concentration),
    ...datum('V', 'volume of the known solution', drawn.volume, units.volume),
    ...datum('c-found', 'concentration of the solution asked for', drawn.foundConcentration, units.concentration),
    ...elements.flatMap((element) =>
      datum(massOf(element), `relative atomic mass of ${element}`, tables.atomicMasses.get(element)?.printed, ''),
    ),
  ];
}
