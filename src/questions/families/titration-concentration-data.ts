import { type Decimal, figuresOf } from '../../exact/decimal.ts';
import type { Datum } from '../question.ts';
import type { Titration } from './titration-concentration-build.ts';

/** Everything printed that the answers are computed from; the acid's volume is there to be passed over. */
export function titrationData({ concentration, titre, portion, dilution, system, acid, units }: Titration): Datum[] {
  const datum = (id: string, role: string, value: Decimal, unit: string, decoy = false): Datum => ({
    id,
    role,
    value: { kind: 'number', value: value.value, unit },
    printed: unit === units.volume ? { dp: value.places } : { sf: figuresOf(value) },
    ...(decoy ? { decoy: true as const } : {}),
  });
  return [
    datum('c', 'concentration of the known solution', concentration, units.concentration),
    datum('portion', 'volume pipetted', portion, units.volume),
    datum('titre', 'mean titre', titre, units.volume),
    ...(dilution
      ? [
          datum('sample', 'volume of stock taken', dilution.sample, units.volume),
          datum('flask', 'volume of the flask', dilution.flask, units.volume),
        ]
      : []),
    ...(system.acid ? [datum('acid', 'volume of acid added', acid, units.volume, true)] : []),
  ];
}
