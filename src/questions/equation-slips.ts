import { combine } from '../chemistry/combine.ts';
import type { HalfEquation } from '../chemistry/equation.ts';
import { coefficientOf } from '../chemistry/terms.ts';
import { wrongEquation } from './combined-value.ts';
import type { Slip } from './question.ts';
import type { slipMaker } from './slip.ts';
import { addedUnscaled, scaledByOwn, sumWithoutElectrons } from './unscaled-sum.ts';
import type { NodeId, Values } from './value.ts';

/** Two half-equations, both stored as reductions, and which way each runs. */
export interface Halves {
  readonly reduction: HalfEquation;
  readonly oxidation: HalfEquation;
}

/**
 * The usual ways of joining two half-equations wrongly, at the step that gives the overall equation.
 * @param halves which half-equations the pupil joins, given the answers so far
 */
export function equationSlips(slip: ReturnType<typeof slipMaker>, at: NodeId, halves: (values: Values) => Halves): Slip[] {
  return [
    slip('HE-ADD-UNSCALED', at, (values) => {
      const { reduction, oxidation } = halves(values);
      return wrongEquation(addedUnscaled(reduction, oxidation));
    }),
    slip('HE-SCALE-OWN', at, (values) => {
      const { reduction, oxidation } = halves(values);
      return wrongEquation(scaledByOwn(reduction, oxidation));
    }),
    slip(
      'HE-H-NOT-CANCELLED',
      at,
      (values) => wrongEquation(uncancelled(halves(values))),
      (values) => cancels(halves(values)),
    ),
  ];
}

function uncancelled({ reduction, oxidation }: Halves) {
  const { timesReduction, timesOxidation } = combine(reduction, oxidation);
  return sumWithoutElectrons(reduction, oxidation, timesReduction, timesOxidation, false);
}

/** True when hydrogen ions or water stand on both sides of the sum: on equal sides of both half-equations as stored. */
function cancels({ reduction, oxidation }: Halves): boolean {
  return ['H^+', 'H2O'].some((key) =>
    (['left', 'right'] as const).some((side) => [reduction, oxidation].every((half) => !coefficientOf(half[side], key).isZero())),
  );
}
