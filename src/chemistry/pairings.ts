import type { Rational } from '../exact/rational.ts';
import type { BeakerState } from './beaker-state.ts';
import { joined, standardEmf, THRESHOLD } from './cell.ts';
import type { Couple } from './couple.ts';
import type { CoupleIndex, FactIndex } from './couple-index.ts';
import type { SpeciesKey } from './formula.ts';
import type { Apart, Beaker, Pairing } from './mixture.ts';
import { judgePair } from './pair-verdict.ts';

/** What the engine looks at while a beaker reacts. */
export interface Surroundings {
  readonly beaker: Beaker;
  readonly couples: CoupleIndex;
  readonly facts: FactIndex;
  /** reactants as they stand in the medium, counter-ions left out */
  readonly named: ReadonlySet<SpeciesKey>;
}

/** All pairs of what is present, sorted by what becomes of them. */
export interface Pairings {
  /** E°cell ≥ 0.10 V, allowed, and everything on the left there; the most positive first */
  readonly feasible: readonly Pairing[];
  /** 0 ≤ E°cell < 0.10 V */
  readonly borderline: readonly Pairing[];
  /** E°cell < 0 */
  readonly infeasible: readonly Pairing[];
  /** E°cell ≥ 0.10 V, but told apart */
  readonly apart: readonly Apart[];
}

/** Looks at every oxidant with every reductant that is present, the solvent included. */
export function pairingsIn(state: BeakerState, around: Surroundings): Pairings {
  const present = [...state.keys(), ...['H^+', 'OH^-', 'H2O'].filter((key) => state.has(key))];
  const lists = { feasible: [] as Pairing[], borderline: [] as Pairing[], infeasible: [] as Pairing[], apart: [] as Apart[] };
  const reducing = present
    .map((key) => ({ key, couples: reductantCouples(key, around) }))
    .filter(({ couples }) => couples.length > 0);
  for (const key of present) {
    const oxidants = oxidantCouples(key, around);
    for (const oxidant of oxidants) {
      for (const { key: partner, couples: reductants } of reducing) {
        for (const reductant of reductants)
          sortPair({ oxidant, reductant, oxidants, reductants, key, partner }, state, around, lists);
      }
    }
  }
  lists.feasible.sort(byEmf);
  return lists;
}

/**
 * Couples through which a species is reduced in this medium: the usual ones; when there is none, those of the medium that are
 * calculated only, because they are the next rung that is not taken.
 */
export function oxidantCouples(key: SpeciesKey, { couples, beaker }: Surroundings): Couple[] {
  const all = couples.byOxidised.get(key) ?? [];
  const usual = all.filter((each) => !each.calculationOnly && each.usualOxidant.includes(beaker.medium));
  if (usual.length > 0) return usual;
  const alkaline = beaker.medium === 'strong-alkali' ? 'alkali' : beaker.medium;
  return all.filter((each) => each.calculationOnly && (each.medium === 'neutral' || each.medium === alkaline));
}

/** Couples through which a species is oxidised in this medium. */
export function reductantCouples(key: SpeciesKey, { couples, beaker }: Surroundings): Couple[] {
  return (couples.byReduced.get(key) ?? []).filter(
    (each) => !each.calculationOnly && each.usualReductant.includes(beaker.medium),
  );
}

/** The most positive first; equal ones by id, so that the order is always the same. */
export function byEmf(one: Pairing, other: Pairing): number {
  const difference = other.emf.value.compare(one.emf.value);
  if (difference !== 0) return difference;
  const [a, b] = [`${one.oxidant.id} ${one.reductant.id}`, `${other.oxidant.id} ${other.reductant.id}`];
  return a < b ? -1 : a > b ? 1 : 0;
}

interface Meeting {
  readonly oxidant: Couple;
  readonly reductant: Couple;
  readonly oxidants: readonly Couple[];
  readonly reductants: readonly Couple[];
  readonly key: SpeciesKey;
  readonly partner: SpeciesKey;
}

type Lists = { feasible: Pairing[]; borderline: Pairing[]; infeasible: Pairing[]; apart: Apart[] };

function sortPair(meeting: Meeting, state: BeakerState, around: Surroundings, lists: Lists): void {
  const { oxidant, reductant } = meeting;
  const { beaker, facts } = around;
  const usual = meeting.oxidants.filter((each) => !each.calculationOnly);
  const candidates = { oxidants: usual, reductants: meeting.reductants };
  const verdict = judgePair(oxidant, reductant, candidates, facts, beaker.medium, beaker.given ?? []);
  if (verdict.kind === 'unrelated') return;
  const pairing: Pairing = { oxidant, reductant, emf: standardEmf(reductant, oxidant, beaker.values) };
  const beside = bystanding(meeting, around);
  const strong = pairing.emf.value.compare(THRESHOLD) >= 0;
  if (beside === 'silent') return;
  if (pairing.emf.value.sign() < 0) {
    if (!beside) lists.infeasible.push(pairing);
    return;
  }
  const combined = joined(oxidant, reductant);
  if (isNone(state.extentOf(combined.equation))) return;
  if (!strong) {
    if (!beside && verdict.kind === 'allowed' && !oxidant.calculationOnly) lists.borderline.push(pairing);
    return;
  }
  const base = { ...pairing, combined };
  if (verdict.kind !== 'allowed' && !(beside && verdict.kind === 'slow')) lists.apart.push({ ...base, ...verdict });
  else if (beside) lists.apart.push({ ...base, ...beside, because: verdict.kind === 'slow' ? verdict.because : beside.because });
  else if (oxidant.calculationOnly) lists.apart.push({ ...base, kind: 'calculation-only', needs: [], because: CALCULATED });
  else lists.feasible.push(pairing);
}

const CALCULATED = 'this potential serves for calculation: the change is not seen in water';

function isNone(amount: Rational | 'excess'): boolean {
  return amount !== 'excess' && amount.isZero();
}

/** A pair in which a bystander takes part: reported, never spoken of, or undefined when neither is a bystander. */
function bystanding(
  { key, partner }: Meeting,
  { facts, named }: Surroundings,
): Pick<Apart, 'kind' | 'needs' | 'because'> | 'silent' | undefined {
  const aside = (species: SpeciesKey, as: 'oxidant' | 'reductant') => {
    const row = facts.bystanders.get(`${as} ${species}`);
    return row && !(row.unlessNamed && named.has(species)) ? row : undefined;
  };
  const oxidant = aside(key, 'oxidant');
  const reductant = aside(partner, 'reductant');
  if (!oxidant && !reductant) return undefined;
  if (oxidant && reductant) return 'silent';
  const row = (oxidant ?? reductant)!;
  if (oxidant && (key === 'H^+' || key === 'H2O')) return { kind: 'hydrogen', needs: [], because: row.because };
  return row.unlessNamed ? { kind: 'counter-ion', needs: [], because: row.because } : 'silent';
}
