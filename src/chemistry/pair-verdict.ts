import type { Couple, Medium } from './couple.ts';
import type { FactIndex } from './couple-index.ts';
import type { Condition, PairFact, Restriction } from './facts.ts';
import type { SpeciesKey } from './formula.ts';
import type { Apart } from './mixture.ts';

/** Whether two couples may react as usual products and facts have it; E° is not looked at. */
export type Verdict =
  | { readonly kind: 'allowed' }
  /** not the usual product, not a partner: never spoken of */
  | { readonly kind: 'unrelated' }
  | {
      readonly kind: Exclude<Apart['kind'], 'hydrogen' | 'counter-ion' | 'air'>;
      readonly because: string;
      readonly needs: readonly Condition[];
    };

const ALLOWED: Verdict = { kind: 'allowed' };
const UNRELATED: Verdict = { kind: 'unrelated' };
const holds = (media: readonly Medium[] | undefined, medium: Medium) => !media || media.includes(medium);

/**
 * Judges a pair of couples in a medium: both must be the usual ones of their species, restricted couples act with their
 * partners only (and are then the only ones), and the facts about the two species must not stand against it.
 */
export function judgePair(
  oxidant: Couple,
  reductant: Couple,
  candidates: { readonly oxidants: readonly Couple[]; readonly reductants: readonly Couple[] },
  facts: FactIndex,
  medium: Medium,
  given: readonly Condition[],
): Verdict {
  if (oxidant.id === reductant.id) return UNRELATED;
  const asOxidant = judgeRole(oxidant, 'oxidant', reductant.reducedKey, candidates.oxidants, facts, medium, given);
  if (asOxidant.kind === 'unrelated') return asOxidant;
  const asReductant = judgeRole(reductant, 'reductant', oxidant.oxidisedKey, candidates.reductants, facts, medium, given);
  if (asReductant.kind === 'unrelated') return asReductant;
  const blocking = pairFacts(oxidant.oxidisedKey, reductant.reducedKey, facts, medium).find((fact) => blocks(fact, given));
  if (blocking) return { kind: blocking.verdict, because: blocking.because, needs: blocking.needs ?? [] };
  return asOxidant.kind !== 'allowed' ? asOxidant : asReductant;
}

/** Facts about an oxidant and a reductant in a medium; `*` stands for any species. */
export function pairFacts(oxidant: SpeciesKey, reductant: SpeciesKey, facts: FactIndex, medium: Medium): PairFact[] {
  const rows = [...(facts.oxidants.get(oxidant) ?? []), ...(facts.oxidants.get('*') ?? [])];
  return rows.filter((row) => (row.reductant === reductant || row.reductant === '*') && holds(row.media, medium));
}

function blocks(fact: PairFact, given: readonly Condition[]): boolean {
  return fact.verdict !== 'conditional' || !(fact.needs ?? []).some((need) => given.includes(need));
}

/** The restriction rows of a couple in a role that name this partner in this medium. */
function rowsFor(couple: Couple, as: Restriction['as'], partner: SpeciesKey, facts: FactIndex, medium: Medium): Restriction[] {
  const rows = facts.restrictions.get(`${as} ${couple.id}`) ?? [];
  return rows.filter((row) => row.partners.includes(partner) && holds(row.media, medium));
}

function judgeRole(
  couple: Couple,
  as: Restriction['as'],
  partner: SpeciesKey,
  candidates: readonly Couple[],
  facts: FactIndex,
  medium: Medium,
  given: readonly Condition[],
): Verdict {
  const rows = rowsFor(couple, as, partner, facts, medium);
  if (rows.length === 0) {
    const restricted = facts.restrictions.has(`${as} ${couple.id}`);
    const displaced = candidates.some((other) => other !== couple && rowsFor(other, as, partner, facts, medium).length > 0);
    return restricted || displaced ? UNRELATED : ALLOWED;
  }
  const open = rows.some((row) => !row.needs || row.needs.some((need) => given.includes(need)));
  if (open) return ALLOWED;
  return { kind: 'conditional', because: rows[0]!.because, needs: rows.flatMap((row) => row.needs ?? []) };
}
