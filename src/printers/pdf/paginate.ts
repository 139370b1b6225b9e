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

/** Cost of a page left white over its whole height; a fifth of it white costs a twenty-fifth of this, twice that inside a question. */
const WHITE = 160;
/** A last page should carry at least this share of its height. */
const LEAST_LAST = 0.18;
const NEARLY_EMPTY = 100;
const PER_PAGE = 60;
/** A page that is less white than this looks full. */
const LOOKS_FULL = 0.15;

/**
 * Shares slabs out over pages of one height. Chooses the turns for which white at the feet of pages and cost of the places where they
 * turn are together least, over the whole document (dynamic programming), so that pages are even and questions stay whole.
 * @param early cost of turning before what would still have fitted, for a page left white over its whole height
 */
export function paginate(slabs: readonly Slab[], height: number, early = 0): readonly (readonly Slab[])[] {
  const units = splitTall(gatherUnits(slabs), height);
  return units.length === 0 ? [[]] : collect(units, bestTurns(units, height, early).from, height);
}

/** What the best turns of the pages cost: less for the same slabs in an order that leaves less white. */
export function turnsCost(slabs: readonly Slab[], height: number, early = 0): number {
  const units = splitTall(gatherUnits(slabs), height);
  return bestTurns(units, height, early).cost;
}

/** For each number of units the first unit of the page that ends behind them, and the cost of all pages. */
function bestTurns(units: readonly Unit[], height: number, early: number): { from: readonly number[]; cost: number } {
  const best = [0];
  const from = [0];
  for (let to = 1; to <= units.length; to++) {
    best[to] = Number.POSITIVE_INFINITY;
    let filled = 0;
    for (let start = to - 1; start >= 0; start--) {
      const unit = units[start]!;
      const next = units[start + 1];
      filled += unit.height + (start + 1 < to && next ? next.above : 0);
      if (start + 1 < to && next?.fresh) break;
      if (filled > height + 0.01 && start < to - 1) break;
      const full = filled + (start > 0 && standsAgain(unit, height) ? unit.again : 0);
      if (full > height + 0.01 && start < to - 1) continue;
      const cost = best[start]! + pageCost(full, height, units, to, early);
      if (cost < best[to]!) {
        best[to] = cost;
        from[to] = start;
      }
    }
  }
  return { from, cost: best[units.length]! };
}

/** What stands over a unit once more, where it begins a page, does so if the page holds both. */
function standsAgain(unit: Unit, height: number): boolean {
  return unit.height + unit.again <= height;
}

function pageCost(filled: number, height: number, units: readonly Unit[], to: number, early: number): number {
  const next = units[to];
  if (!next) return PER_PAGE + (filled / height < LEAST_LAST ? NEARLY_EMPTY : 0);
  if (next.fresh) return PER_PAGE;
  const white = Math.max(0, 1 - filled / height);
  const turn = units[to - 1]!.after;
  const wasted = white > LOOKS_FULL && filled + next.above + next.height <= height ? early * white : 0;
  return PER_PAGE + WHITE * white * white * white * (turn > 0 ? 2 : 1) + turn + wasted;
}

function collect(units: readonly Unit[], from: readonly number[], height: number): Slab[][] {
  const pages: Slab[][] = [];
  for (let to = units.length; to > 0; to = from[to]!) {
    const start = from[to]!;
    const slabs = units.slice(start, to).flatMap((unit) => unit.slabs);
    const [first, ...rest] = slabs;
    const isRepeated = start > 0 && first?.again && standsAgain(units[start]!, height);
    pages.unshift(isRepeated ? [first.again!, { ...first, above: 0 }, ...rest] : slabs);
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
