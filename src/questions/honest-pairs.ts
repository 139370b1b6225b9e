import { standardEmf, THRESHOLD } from '../chemistry/cell.ts';
import type { Couple, Medium } from '../chemistry/couple.ts';
import { type FactIndex, indexFacts } from '../chemistry/couple-index.ts';
import type { Condition } from '../chemistry/facts.ts';
import { judgePair, type Verdict } from '../chemistry/pair-verdict.ts';
import { coefficientOf } from '../chemistry/terms.ts';
import type { Tables } from '../potentials/tables.ts';
import { acidStands } from './acid-stands.ts';
import { goesOn, usualCouples } from './goes-on.ts';
import { mayMeet } from './may-meet.ts';

/** Two couples whose reaction may be asked about as one equation: it happens, and nothing follows that would spoil it. */
export interface HonestPair {
  readonly oxidant: Couple;
  readonly reductant: Couple;
  readonly medium: Medium;
  /** what has to be said for it to happen */
  readonly needs?: 'warm' | 'time';
}

/** Conditions that a question can state in a word. */
const SAYABLE: readonly Condition[] = ['warm', 'time'];

const KNOWN = new WeakMap<Tables, Map<Medium, HonestPair[]>>();

/**
 * Every pair that reacts in a medium as usual products, facts and printed potentials (E°cell ≥ 0.10 V) have it, that can be brought
 * together without breaking a ban, and whose products neither react on with what is there nor fall out. Computed once for each table.
 */
export function honestPairs(tables: Tables, medium: Medium): readonly HonestPair[] {
  const media = KNOWN.get(tables) ?? new Map<Medium, HonestPair[]>();
  KNOWN.set(tables, media);
  let found = media.get(medium);
  if (!found) {
    found = [...findPairs({ tables, medium, facts: indexFacts(tables.facts) })];
    media.set(medium, found);
  }
  return found;
}

interface Bench {
  readonly tables: Tables;
  readonly medium: Medium;
  readonly facts: FactIndex;
}

function* findPairs(bench: Bench): Generator<HonestPair> {
  const { tables, medium } = bench;
  for (const oxidant of tables.couples) {
    for (const reductant of tables.couples) {
      const verdict = reacts(oxidant, reductant, bench);
      if (!verdict || !fits(oxidant, medium) || !fits(reductant, medium)) continue;
      if (!mayMeet(oxidant.oxidisedKey, reductant.reducedKey, tables, medium) || isSpoilt(oxidant, reductant, bench)) continue;
      const needs = verdict.kind === 'conditional' ? verdict.needs.find((each) => each === 'warm' || each === 'time') : undefined;
      yield { oxidant, reductant, medium, ...(needs ? { needs } : {}) };
    }
  }
}

/** Neutral solutions stay neutral only when neither H⁺ nor OH⁻ takes part. */
function fits({ medium: own, half }: Couple, medium: Medium): boolean {
  if (medium !== 'neutral') return own === 'neutral' || own === (medium === 'strong-alkali' ? 'alkali' : medium);
  return ['H^+', 'OH^-'].every((key) => coefficientOf([...half.left, ...half.right], key).isZero());
}

/** The verdict on a pair of usual couples that reacts, with a condition that can be said or with none; undefined when it does not. */
function reacts(oxidant: Couple, reductant: Couple, bench: Bench): Verdict | undefined {
  const { facts, medium } = bench;
  const oxidants = usualCouples(oxidant.oxidisedKey, 'oxidant', bench.tables, medium);
  const reductants = usualCouples(reductant.reducedKey, 'reductant', bench.tables, medium);
  if (oxidant === reductant || !oxidants.includes(oxidant) || !reductants.includes(reductant)) return undefined;
  if (facts.bystanders.has(`oxidant ${oxidant.oxidisedKey}`) || facts.bystanders.has(`reductant ${reductant.reducedKey}`))
    return undefined;
  if (standardEmf(reductant, oxidant, 'printed').value.compare(THRESHOLD) < 0) return undefined;
  const verdict = judgePair(oxidant, reductant, { oxidants, reductants }, facts, medium, []);
  const sayable = verdict.kind === 'conditional' && verdict.needs.some((need) => SAYABLE.includes(need));
  return verdict.kind === 'allowed' || sayable ? verdict : undefined;
}

/**
 * True when a product reacts on, alone or with what is still there, when something falls out, when acid eats the metal meanwhile, or when
 * no acid can be added to what is there.
 */
function isSpoilt(oxidant: Couple, reductant: Couple, { tables, facts, medium }: Bench): boolean {
  const all = [oxidant.oxidisedKey, oxidant.reducedKey, reductant.oxidisedKey, reductant.reducedKey];
  const fallsOut = facts.pairs.some(
    (fact) => fact.verdict === 'precipitates' && all.includes(fact.oxidant) && all.includes(fact.reductant),
  );
  const isMetal = tables.speciesOf(reductant.reducedKey).role === 'metal';
  const eaten = isMetal && medium === 'acid' && reductant.printed.value.plus(THRESHOLD).sign() <= 0;
  const acidless = medium === 'acid' && !acidStands(all, tables);
  return goesOn(oxidant, reductant, tables, medium) || fallsOut || eaten || acidless;
}
