import { electronsIn, factors, sumWithoutElectrons } from '../chemistry/half-equations.ts';
import { cancelled, type Sides } from '../chemistry/sides.ts';
import type { Answers, Slip } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';

/** The couple that is reduced and the one that is oxidised, both written as reductions, as one who has got so far would take them. */
export type Pair = (answers: Answers) => { readonly reduced: Sides; readonly oxidised: Sides };

/** Ways of adding two half-equations wrongly, at a step. */
export function equationSlips(at: string, pair: Pair): Slip[] {
  const slip = (id: string, write: (reduced: Sides, oxidised: Sides) => Sides): Slip => ({
    id,
    at,
    work: (answers) => {
      const { reduced, oxidised } = pair(answers);
      return { kind: 'equation', sides: write(reduced, oxidised) };
    },
  });
  return [
    slip('HE-ADD-UNSCALED', (reduced, oxidised) => cancelled(sumWithoutElectrons(reduced, oxidised, Fraction.one, Fraction.one))),
    slip('HE-SCALE-OWN', (reduced, oxidised) =>
      cancelled(sumWithoutElectrons(reduced, oxidised, electronsIn(reduced), electronsIn(oxidised))),
    ),
    slip('HE-H-NOT-CANCELLED', (reduced, oxidised) => {
      const { forReduced, forOxidised } = factors(reduced, oxidised);
      return sumWithoutElectrons(reduced, oxidised, forReduced, forOxidised);
    }),
    // One electron for each ethanedioate: as many of them as the oxidant takes electrons.
    slip('TI-OXALATE-ONE-E', (reduced, oxidised) =>
      cancelled(sumWithoutElectrons(reduced, oxidised, Fraction.one, electronsIn(reduced))),
    ),
  ];
}
