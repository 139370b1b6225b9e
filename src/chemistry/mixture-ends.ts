import type { BeakerState } from './beaker-state.ts';
import { joined, standardEmf } from './cell.ts';
import type { SpeciesKey } from './formula.ts';
import type { Apart, Pairing, Step } from './mixture.ts';
import { pairFacts } from './pair-verdict.ts';
import { byEmf, oxidantCouples, reductantCouples, type Surroundings } from './pairings.ts';

/** What air does to the mixture at the end, where that is known. */
export function airReactions(state: BeakerState, around: Surroundings): Apart[] {
  const { beaker, facts } = around;
  if (state.has('O2')) return [];
  const oxidants = oxidantCouples('O2', around);
  return state.keys().flatMap((key) => {
    const [row] = pairFacts('O2', key, facts, beaker.medium).filter((fact) => fact.reductant === key && fact.verdict === 'slow');
    if (!row) return [];
    const found = oxidants.flatMap((oxidant) =>
      reductantCouples(key, around)
        .filter((reductant) => reductant.id !== oxidant.id)
        .map((reductant) => ({ oxidant, reductant, emf: standardEmf(reductant, oxidant, beaker.values) })),
    );
    const [best] = found.sort(byEmf);
    if (!best || best.emf.value.sign() <= 0) return [];
    const combined = joined(best.oxidant, best.reductant);
    return [{ ...best, combined, kind: 'air' as const, needs: [], because: row.because }];
  });
}

/**
 * The next rungs that are not feasible: what the subject has become, with the reactants that are left, in the direction it
 * was going; in both directions when nothing has happened. The nearest to feasible first. In a neutral mixture couples with
 * H⁺ or OH⁻ do not count:
 * their potentials are for 1 mol dm⁻³ of these.
 */
export function nextRungs(
  lineage: ReadonlySet<SpeciesKey>,
  steps: readonly Step[],
  infeasible: readonly Pairing[],
  { named, beaker }: Surroundings,
): Pairing[] {
  const went = steps.filter((step) => lineage.has(step.from));
  const down = went.length === 0 || went.some((step) => step.reduction);
  const up = went.length === 0 || went.some((step) => !step.reduction);
  const standard = ({ oxidant, reductant }: Pairing) =>
    beaker.medium !== 'neutral' || (oxidant.medium === 'neutral' && reductant.medium === 'neutral');
  return infeasible
    .filter(standard)
    .filter(({ oxidant, reductant }) => {
      const falls = down && lineage.has(oxidant.oxidisedKey) && named.has(reductant.reducedKey);
      const rises = up && lineage.has(reductant.reducedKey) && named.has(oxidant.oxidisedKey);
      return falls || rises;
    })
    .toSorted(byEmf);
}
