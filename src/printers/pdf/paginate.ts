import { KEEP, type Slab, tearAfter } from './slab.ts';

/** Slabs that stay on one page, and the cost of turning the page after them. */
interface Unit {
  readonly slabs: readonly Slab[];
  readonly height: number;
  readonly above: number;
  readonly after: number;
  /** height of what stands over it again where it begins a page */
  readonly again: number;
  readonly fresh: boolean;
}

/** Cost of a page left white over its whole height; half of it white costs an eighth of this, twice that inside a question. */
const WHITE = 160;
/** A last page should carry at least this share of its height. */
const LEAST_LAST = 0.18;
const NEARLY_EMPTY = 100;
const PER_PAGE = 60;
/** A page that is less white than this looks full. */
const LOOKS_FULL = 0.15;

/** How pages are turned. */
export interface Turning {
  readonly height: number;
  /** cost of turning before what would still have fitted, for a page left white over its whole height */
  readonly early: number;
  /** printed on both sides: page 2 faces page 3, and what goes on from page 1 to page 2 is on the other side of the leaf */
  readonly isDuplex: boolean;
}

/**
 * Shares slabs out over pages of one height. Chooses the turns for which white at the feet of pages and cost of the places where they
 * turn are together least, over the whole document (dynamic programming), so that pages are even and questions stay whole.
 */
export function paginate(slabs: readonly Slab[], turning: Turning): readonly (readonly Slab[])[] {
  const units = splitTall(gatherUnits(slabs), turning.height);
  return units.length === 0 ? [[]] : collect(units, bestTurns(units, turning), turning.height);
}

/** What the best turns of the pages cost: less for the same slabs in an order that leaves less white. */
export function turnsCost(slabs: readonly Slab[], turning: Turning): number {
  const units = splitTall(gatherUnits(slabs), turning.height);
  return Math.min(...bestTurns(units, turning).map(({ cost }) => cost[units.length]!));
}

/** The best pages for the first units, one more than the list is long: whose number is even (first entry) or odd (second). */
interface Turns {
  /** cost of all pages up to each unit; infinite where their number cannot be had */
  readonly cost: number[];
  /** first unit of the page that ends before each unit */
  readonly from: number[];
}

function bestTurns(units: readonly Unit[], turning: Turning): readonly [Turns, Turns] {
  const { height } = turning;
  const endless = Number.POSITIVE_INFINITY;
  const even: Turns = { cost: [0], from: [0] };
  const odd: Turns = { cost: [endless], from: [0] };
  for (let to = 1; to <= units.length; to++) {
    even.cost[to] = endless;
    odd.cost[to] = endless;
    let filled = 0;
    for (let start = to - 1; start >= 0; start--) {
      const unit = units[start]!;
      const next = units[start + 1];
      filled += unit.height + (start + 1 < to && next ? next.above : 0);
      if (start + 1 < to && next?.fresh) break;
      if (filled > height + 0.01 && start < to - 1) break;
      const full = filled + (start > 0 && standsAgain(unit, height) ? unit.again : 0);
      if (full > height + 0.01 && start < to - 1) continue;
      for (const [turns, before] of [
        [odd, even],
        [even, odd],
      ] as const) {
        const cost = before.cost[start]! + pageCost(full, units, to, turning, turns === odd);
        if (cost >= turns.cost[to]!) continue;
        turns.cost[to] = cost;
        turns.from[to] = start;
      }
    }
  }
  return [even, odd];
}

/** What stands over a unit once more, where it begins a page, does so if the page holds both. */
function standsAgain(unit: Unit, height: number): boolean {
  return unit.height + unit.again <= height;
}

function pageCost(
  filled: number,
  units: readonly Unit[],
  to: number,
  { height, early, isDuplex }: Turning,
  isOdd: boolean,
): number {
  const next = units[to];
  if (!next) return PER_PAGE + (filled / height < LEAST_LAST ? NEARLY_EMPTY : 0);
  if (next.fresh) return PER_PAGE;
  const white = Math.max(0, 1 - filled / height);
  const turn = units[to - 1]!.after;
  const wasted = white > LOOKS_FULL && filled + next.above + next.height <= height ? early * white : 0;
  const leaf = isDuplex ? (isOdd ? OVER_THE_LEAF : TO_FACING_PAGE) : 1;
  return PER_PAGE + WHITE * white * white * white * (turn > 0 ? 2 : 1) + turn * leaf + wasted;
}

/** How much more, or less, a turn costs when the leaf is turned with it, or when both pages are seen at once. */
const OVER_THE_LEAF = 3;
const TO_FACING_PAGE = 0.5;

function collect(units: readonly Unit[], [even, odd]: readonly [Turns, Turns], height: number): Slab[][] {
  const pages: Slab[][] = [];
  let isOdd = odd.cost[units.length]! <= even.cost[units.length]!;
  for (let to = units.length; to > 0; ) {
    const start = (isOdd ? odd : even).from[to]!;
    const slabs = units.slice(start, to).flatMap((unit) => unit.slabs);
    const [first, ...rest] = slabs;
    const isRepeated = start > 0 && first?.again && standsAgain(units[start]!, height);
    pages.unshift(isRepeated ? [first.again!, { ...first, above: 0 }, ...rest] : slabs);
    isOdd = !isOdd;
    to = start;
  }
  return pages;
}

function gatherUnits(slabs: readonly Slab[]): Unit[] {
  const units: Unit[] = [];
  let open: Slab[] = [];
  for (const [i, part] of slabs.entries()) {
    open.push(part);
    const next = slabs[i + 1];
    if (part.after !== KEEP || !next || next.fresh) {
      units.push(unitOf(open));
      open = [];
    }
  }
  return units;
}

function unitOf(slabs: readonly Slab[]): Unit {
  const height = slabs.reduce((sum, part, i) => sum + part.height + (i > 0 ? part.above : 0), 0);
  const last = slabs.at(-1);
  const after = last?.after ?? 0;
  const [first] = slabs;
  const again = first?.again?.height ?? 0;
  return { slabs, height, above: first?.above ?? 0, after: after === KEEP ? 0 : after, again, fresh: first?.fresh ?? false };
}

/** What is taller than a page must turn somewhere: between two of its slabs, at the cost of tearing them apart. */
function splitTall(units: readonly Unit[], height: number): Unit[] {
  return units.flatMap((unit) => {
    if (unit.height <= height) return [unit];
    return unit.slabs.map((part, i) => unitOf([{ ...part, after: i === unit.slabs.length - 1 ? unit.after : tearAfter(part) }]));
  });
}
