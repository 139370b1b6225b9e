import { Fault } from '../exact/fault.ts';
import { nullSpace } from '../exact/null-space.ts';
import { Rational } from '../exact/rational.ts';
import { type BeakerState, SOLVENT } from './beaker-state.ts';
import type { Equation } from './equation.ts';
import type { SpeciesKey } from './formula.ts';
import type { Loop, Pairing, Step } from './mixture.ts';
import { addEquations, cancelEquation, lowestTerms, netAmounts, scaleEquation } from './terms.ts';
import { keyOf } from './write-formula.ts';

/** A run of steps that has come round again, how far each runs in one round, and what a round does. */
export interface Round {
  readonly from: number;
  /** mol of each step's equation in one round, in order */
  readonly extents: readonly Rational[];
  readonly change: Equation;
}

/** The round that ends with the last step, when the next pair is one that has run before. */
export function roundBefore(steps: readonly Step[], next: Pairing): Round | undefined {
  const from = steps.findLastIndex((step) => step.oxidant.id === next.oxidant.id && step.reductant.id === next.reductant.id);
  if (from < 0) return undefined;
  const members = steps.slice(from);
  const extents = steadyExtents(members) ?? members.map((step) => step.extent);
  const change = sumOf(members, extents);
  const used = new Set(change.left.map((term) => keyOf(term.formula)));
  // Told with its oxidant first, wherever in the round it began.
  const first = Math.max(
    0,
    members.findIndex((step) => used.has(step.oxidant.oxidisedKey)),
  );
  const turn = <T>(list: readonly T[]): T[] => [...list.slice(first), ...list.slice(0, first)];
  return { from, extents, change: sumOf(turn(members), turn(extents)) };
}

/**
 * How far the steps of a round run beside one another: each later step uses just what the others make of the species that
 * limits it.
 * Undefined when that does not decide.
 */
function steadyExtents(members: readonly Step[]): Rational[] | undefined {
  const nets = members.map((step) => netAmounts(step.combined.equation));
  const rows = members.slice(1).map(({ limiting }) => nets.map((net) => net.get(limiting)?.net ?? Rational.zero));
  const basis = nullSpace(rows, members.length);
  const [only] = basis;
  if (basis.length !== 1 || !only) return undefined;
  const turned = only[0]!.sign() < 0 ? only.map((entry) => entry.negate()) : only;
  return turned.every((entry) => entry.sign() > 0) ? turned : undefined;
}

/** What steps do together. */
function sumOf(steps: readonly Step[], extents: readonly Rational[]): Equation {
  const parts = steps.map((step, at) => scaleEquation(step.combined.equation, extents[at]!));
  return cancelEquation(parts.reduce((total, part) => addEquations(total, part), { left: [], right: [] } as Equation));
}

/**
 * Runs a round as often as it goes, all at once, and adds its share to each of its steps.
 * @returns the steps with their full extents; undefined when nothing is left to run on
 * @throws Fault `nothing-limits` when everything that the round uses is in excess
 */
export function runRounds(steps: readonly Step[], round: Round, state: BeakerState): Step[] | undefined {
  const times = state.extentOf(round.change);
  if (times === 'excess') throw nothingLimits(round.change.left.map((term) => keyOf(term.formula)));
  if (times.isZero()) return undefined;
  state.run(round.change, times);
  return steps.map((step, at) => {
    const share = round.extents[at - round.from];
    return share ? { ...step, extent: step.extent.plus(share.times(times)) } : step;
  });
}

/** How a round is told: once, with its sum and what carries it. */
export function loopOf(steps: readonly Step[], round: Round): Loop {
  const inSum = new Set([...round.change.left, ...round.change.right].map((term) => keyOf(term.formula)));
  const carriers = new Set<SpeciesKey>();
  const places: number[] = [];
  for (let at = round.from; at < round.from + round.extents.length; at += 1) {
    places.push(at);
    const { left, right } = steps[at]!.combined.equation;
    for (const { formula } of [...left, ...right]) {
      const key = keyOf(formula);
      if (!inSum.has(key) && !SOLVENT.has(key)) carriers.add(key);
    }
  }
  return { steps: places, sum: lowestTerms(round.change), carriers: [...carriers] };
}

/** Everything that reacts is in excess: the mixture would never come to rest. */
export function nothingLimits(keys: readonly SpeciesKey[]): Fault {
  const names = [...new Set(keys)].filter((key) => !SOLVENT.has(key)).map((key) => `\`${key}\``);
  const what =
    names.length > 1
      ? `${names.join(' and ')} react and are all in excess: give an amount of one of them`
      : `${names[0]} reacts with itself and is in excess: give an amount`;
  return new Fault('nothing-limits', what, {});
}
