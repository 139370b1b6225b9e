import type { Couple } from '../chemistry/couple.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import { netAmounts } from '../chemistry/terms.ts';
import { decimalAt, printDecimal } from '../exact/decimal.ts';
import { nullSpace } from '../exact/null-space.ts';
import { Rational } from '../exact/rational.ts';

/** Misfit of a cycle that is still taken as agreement, in volts per electron: published values differ by as much. */
const TOLERANCE = Rational.of(3, 100);
/** Couples in a cycle: longer ones are made of shorter ones that are checked themselves. */
const LONGEST_CYCLE = 6;

/** Couples that lead from a species back to itself, and by how much their potentials fail to add up. */
export interface Cycle {
  readonly couples: readonly Couple[];
  /** V per electron carried once round: Σ nE° over one way less the same over the other, divided by the electrons of one way */
  readonly misfit: Rational;
}

/**
 * Every cycle of couples whose half-equations add to nothing (H⁺, OH⁻, water and all), shortest first. ΔG° is a function of
 * state, so
 * that nE° has to add up to zero round each (IUPAC Green Book, 3rd ed., 2.13).
 */
export function cyclesOf(couples: readonly Couple[]): Cycle[] {
  const found = new Map<string, Cycle>();
  for (const [start, couple] of couples.entries()) {
    for (const path of pathsFrom(couple, couples.slice(start + 1))) {
      const name = path
        .map(({ id }) => id)
        .sort()
        .join(' ');
      const misfit = found.has(name) ? undefined : misfitOf(path);
      if (misfit) found.set(name, { couples: path, misfit });
    }
  }
  return [...found.values()].sort((one, other) => one.couples.length - other.couples.length);
}

/** The cycles that miss by more than 0.03 V per electron. */
export function openCycles(couples: readonly Couple[]): Cycle[] {
  return cyclesOf(couples).filter(({ misfit }) => misfit.abs().compare(TOLERANCE) > 0);
}

/** What is wrong with a cycle, in words. */
export function cycleText({ couples, misfit }: Cycle): string {
  const members = couples.map(({ id, stored }) => `${id} (${printDecimal(stored, true)} V)`).join(', ');
  const by = printDecimal(decimalAt(misfit.abs(), 3));
  return `the potentials of ${members} do not add up round their cycle: they miss by ${by} V per electron`;
}

/**
 * Paths of couples, each sharing a species with the next, that lead from the reduced form of a couple back to its oxidised
 * form.
 */
function* pathsFrom(first: Couple, others: readonly Couple[]): Generator<Couple[]> {
  const stack: { path: Couple[]; at: SpeciesKey; been: Set<SpeciesKey> }[] = [
    { path: [first], at: first.reducedKey, been: new Set([first.reducedKey]) },
  ];
  for (let here = stack.pop(); here; here = stack.pop()) {
    const { path, at, been } = here;
    for (const next of others) {
      if (path.includes(next) || (next.oxidisedKey !== at && next.reducedKey !== at)) continue;
      const to = next.oxidisedKey === at ? next.reducedKey : next.oxidisedKey;
      if (to === first.oxidisedKey) yield [...path, next];
      else if (!been.has(to) && path.length + 1 < LONGEST_CYCLE)
        stack.push({ path: [...path, next], at: to, been: new Set(been).add(to) });
    }
  }
}

/** Misfit in V per electron when the half-equations, each some number of times, add to nothing; undefined when they do not. */
function misfitOf(path: readonly Couple[]): Rational | undefined {
  const nets = path.map(({ half }) => netAmounts(half));
  const species = [...new Set(nets.flatMap((net) => [...net.keys()]))];
  const rows = species.map((key) => nets.map((net) => net.get(key)?.net ?? Rational.zero));
  const [times, ...more] = nullSpace(rows, path.length);
  if (!times || more.length > 0 || times.some((count) => count.isZero())) return undefined;
  const electrons = path.map(({ half }, at) => half.electrons.times(times[at]!));
  const sum = path.reduce((total, { stored }, at) => total.plus(electrons[at]!.times(stored.value)), Rational.zero);
  // What one way round takes up the other gives back, so the positive ones are the electrons carried.
  const oneWay = electrons.reduce((total, count) => (count.sign() > 0 ? total.plus(count) : total), Rational.zero);
  return sum.over(oneWay);
}
