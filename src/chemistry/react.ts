import { Fault } from '../exact/fault.ts';
import type { Rational } from '../exact/rational.ts';
import { BeakerState } from './beaker-state.ts';
import { joined } from './cell.ts';
import type { Couple } from './couple.ts';
import { indexCouples, indexFacts } from './couple-index.ts';
import type { Equation } from './equation.ts';
import type { Facts } from './facts.ts';
import type { SpeciesKey } from './formula.ts';
import { loopOf, nothingLimits, type Round, roundBefore, runRounds } from './loops.ts';
import type { Apart, Beaker, Loop, Mixture, MixtureNote, Pairing, Step } from './mixture.ts';
import { airReactions, nextRungs } from './mixture-ends.ts';
import { type Pairings, pairingsIn, type Surroundings } from './pairings.ts';
import { speciate, speciationText } from './speciate.ts';
import { keyOf } from './write-formula.ts';

/** More steps than any mixture of this course takes: the engine would be going in circles. */
const MOST_STEPS = 100;

/** What a beaker has done so far. */
interface Course {
  readonly state: BeakerState;
  readonly around: Surroundings;
  steps: Step[];
  readonly loops: Loop[];
  readonly apart: Map<string, Apart>;
  readonly notes: MixtureNote[];
  readonly lineage: Set<SpeciesKey>;
}

/**
 * What happens in the beaker, in order: the most positive allowed pair runs until something is used up, then the next, until
 * none of at least 0.10 V is left or the medium has changed. Amounts are exact.
 * @throws Fault `nothing-to-mix` without reactants, `wrong-medium` for H⁺ outside acid or OH⁻ outside alkali,
 * `too-little-medium` when these are used up before any redox step, `nothing-limits` when everything that reacts is in excess
 */
export function react(beaker: Beaker, couples: readonly Couple[], facts: Facts): Mixture {
  if (beaker.reactants.length === 0) throw new Fault('nothing-to-mix', 'a mixture needs at least one reactant', {});
  const course = begin(beaker, couples, facts);
  let pairings = look(course);
  for (let count = 0; pairings.feasible.length > 0; count += 1) {
    if (count > MOST_STEPS) throw new Error('a mixture does not come to rest');
    take(course, pairings.feasible[0]!);
    const ended = mediumNote(course);
    if (ended) course.notes.push(ended);
    pairings = look(course);
    if (ended) break;
  }
  return conclude(course, pairings);
}

function begin(beaker: Beaker, couples: readonly Couple[], facts: Facts): Course {
  const state = filled(beaker);
  const index = indexFacts(facts);
  const rows = speciate(state, beaker.medium, index);
  const maker = beaker.medium === 'acid' ? 'H^+' : beaker.medium === 'neutral' ? 'H2O' : 'OH^-';
  if (!state.has(maker))
    throw new Fault('too-little-medium', `there is too little \`${maker}\` to make the mixture ${beaker.medium}`, {});
  const notes: MixtureNote[] = rows.map((row) => ({ kind: 'speciation', text: speciationText(row) }));
  const become = (key: SpeciesKey): SpeciesKey => rows.reduce((now, row) => (row.species === now ? row.becomes : now), key);
  const named = new Set(beaker.reactants.filter((each) => each.counterIon !== true).map((each) => become(keyOf(each.formula))));
  const subject = become(keyOf(beaker.reactants[0]!.formula));
  const course: Course = {
    state,
    around: { beaker, couples: indexCouples(couples), facts: index, named },
    steps: [],
    loops: [],
    apart: new Map(),
    notes,
    lineage: new Set([subject]),
  };
  notes.push(...precipitates(course));
  return course;
}

/** A beaker with its reactants in it. @throws Fault `wrong-medium`, `bad-amount` */
function filled({ reactants, medium }: Beaker): BeakerState {
  const state = new BeakerState(medium);
  for (const { formula, amount } of reactants) {
    const needs = keyOf(formula) === 'H^+' ? 'acid' : keyOf(formula) === 'OH^-' ? 'alkali' : undefined;
    if (needs && !medium.endsWith(needs)) {
      throw new Fault(
        'wrong-medium',
        `\`${keyOf(formula)}\` makes the mixture ${needs}, but its medium is given as ${medium}`,
        {},
      );
    }
    if (amount !== 'excess' && amount.sign() <= 0)
      throw new Fault('bad-amount', `expected an amount above zero of \`${keyOf(formula)}\``, {});
    state.put(formula, amount);
  }
  return state;
}

/** Ions that were put together and cannot stand in one solution. */
function precipitates({ state, around }: Course): MixtureNote[] {
  return around.facts.pairs
    .filter((row) => row.verdict === 'precipitates' && state.has(row.oxidant) && state.has(row.reductant))
    .filter((row) => !row.media || row.media.includes(around.beaker.medium))
    .map((row) => ({ kind: 'precipitates', text: `${row.oxidant} with ${row.reductant}: ${row.because}` }));
}

/** Pairs of what is there now; whatever is told apart is kept, once. */
function look(course: Course): Pairings {
  const pairings = pairingsIn(course.state, course.around);
  for (const each of pairings.apart) {
    const name = `${each.oxidant.id} ${each.reductant.id}`;
    if (!course.apart.has(name)) course.apart.set(name, each);
  }
  return pairings;
}

/** Runs one pair to the end of what limits it; a pair that comes round again runs its whole round to the end. */
function take(course: Course, pairing: Pairing): void {
  const round = roundBefore(course.steps, pairing);
  if (round && goRound(course, round)) return;
  const { state, around } = course;
  const combined = joined(pairing.oxidant, pairing.reductant);
  const extent = state.extentOf(combined.equation);
  if (extent === 'excess') throw nothingLimits([pairing.oxidant.oxidisedKey, pairing.reductant.reducedKey]);
  const before = state.keys();
  const limiting = limitingIn(combined.equation, extent, state);
  state.run(combined.equation, extent);
  speciate(state, around.beaker.medium, around.facts);
  course.steps.push({ ...pairing, combined, extent, limiting, ...progress(course, pairing), before, after: state.keys() });
}

/** The first reactant of which there is just enough. */
function limitingIn(equation: Equation, extent: Rational, state: BeakerState): SpeciesKey {
  const found = equation.left.find(({ coefficient, formula }) => {
    const amount = state.amountOf(keyOf(formula));
    return amount !== 'excess' && amount.equals(coefficient.times(extent));
  });
  return keyOf(found!.formula);
}

function goRound(course: Course, round: Round): boolean {
  const steps = runRounds(course.steps, round, course.state);
  if (!steps) return false;
  course.steps = steps;
  const loop = loopOf(steps, round);
  if (!course.loops.some((known) => known.steps.join() === loop.steps.join())) course.loops.push(loop);
  return true;
}

/** What the subject's lineage does in a step, and what it has become. */
function progress({ lineage }: Course, { oxidant, reductant }: Pairing): Pick<Step, 'from' | 'to' | 'reduction'> {
  const reduced = lineage.has(oxidant.oxidisedKey);
  const oxidised = lineage.has(reductant.reducedKey);
  if (reduced) lineage.add(oxidant.reducedKey);
  if (oxidised) lineage.add(reductant.oxidisedKey);
  if (oxidised && !reduced) return { from: reductant.reducedKey, to: reductant.oxidisedKey, reduction: false };
  return { from: oxidant.oxidisedKey, to: oxidant.reducedKey, reduction: true };
}

/** Why nothing more is looked for: the acid or alkali is used up, or a neutral mixture is neutral no more. */
function mediumNote({ state, around }: Course): MixtureNote | undefined {
  const { medium } = around.beaker;
  const needed = medium === 'acid' ? 'H^+' : medium === 'neutral' ? undefined : 'OH^-';
  if (needed) return state.has(needed) ? undefined : { kind: 'medium-used-up', text: `the ${needed} is used up` };
  const made = ['H^+', 'OH^-'].find((key) => state.has(key));
  return made ? { kind: 'medium-changed', text: `${made} has been formed: the mixture is no longer neutral` } : undefined;
}

const BESIDE: ReadonlySet<Apart['kind']> = new Set(['hydrogen', 'counter-ion', 'air', 'slow']);

function conclude(course: Course, pairings: Pairings): Mixture {
  const { state, around, steps, loops, notes } = course;
  const apart = [...course.apart.values(), ...airReactions(state, around)];
  return {
    steps,
    loops,
    final: state.present(),
    parallel: apart.filter((each) => BESIDE.has(each.kind)),
    held: apart.filter((each) => !BESIDE.has(each.kind)),
    borderline: pairings.borderline,
    stop: nextRungs(course.lineage, steps, pairings.infeasible, around),
    usedUp: [...around.named].filter((key) => !state.has(key)),
    notes,
    net: state.net,
  };
}
