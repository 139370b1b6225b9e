import { potentialOf } from '../../src/chemistry/cell.ts';
import type { Couple } from '../../src/chemistry/couple.ts';
import type { SpeciesKey } from '../../src/chemistry/formula.ts';
import { coefficientOf } from '../../src/chemistry/terms.ts';

/** F/RT in V⁻¹ at 298.15 K. */
const F_OVER_RT = 96485.33212 / (8.314462618 * 298.15);

/**
 * A species of a family: its share of the family's mass and of its electrons, and how its concentration follows from the
 * root's.
 */
interface Member {
  readonly key: SpeciesKey;
  readonly weight: number;
  readonly electrons: number;
  /** ln c of the member from ln c of the root and the potential, [H⁺] being 1 */
  readonly lnConcentration: (lnRoot: number, potential: number) => number;
}

/**
 * Families of dissolved species that couples join, each a tree. A couple that closes a ring is left out: its potential
 * follows from the others.
 */
export function families(couples: readonly Couple[]): Member[][] {
  const found: Member[][] = [];
  const known = new Map<SpeciesKey, Member[]>();
  const rest = [...couples];
  while (rest.length > 0) {
    const at = rest.findIndex((couple) => known.has(couple.oxidisedKey) || known.has(couple.reducedKey));
    const [couple] = rest.splice(Math.max(at, 0), 1) as [Couple];
    if (at < 0) {
      const root: Member = { key: couple.oxidisedKey, weight: 1, electrons: 0, lnConcentration: (lnRoot) => lnRoot };
      const family = [root];
      found.push(family);
      known.set(root.key, family);
    }
    const [top, bottom] = [known.get(couple.oxidisedKey), known.get(couple.reducedKey)];
    if (top && bottom) continue;
    const family = (top ?? bottom)!;
    const member = linked(couple, family.find((each) => each.key === (top ? couple.oxidisedKey : couple.reducedKey))!);
    family.push(member);
    known.set(member.key, family);
  }
  return found;
}

/** The other species of a couple, from the one that is known. */
function linked(couple: Couple, from: Member): Member {
  const [left, right] = [couple.half.left, couple.half.right];
  const ox = coefficientOf(left, couple.oxidisedKey).toNumber();
  const red = coefficientOf(right, couple.reducedKey).toNumber();
  const n = couple.half.electrons.toNumber();
  const drive = (potential: number) => n * F_OVER_RT * (potentialOf(couple, 'stored').value.toNumber() - potential);
  if (from.key === couple.oxidisedKey) {
    return {
      key: couple.reducedKey,
      weight: (ox * from.weight) / red,
      electrons: (ox * from.electrons + n) / red,
      lnConcentration: (lnRoot, potential) => (ox * from.lnConcentration(lnRoot, potential) + drive(potential)) / red,
    };
  }
  return {
    key: couple.oxidisedKey,
    weight: (red * from.weight) / ox,
    electrons: (red * from.electrons - n) / ox,
    lnConcentration: (lnRoot, potential) => (red * from.lnConcentration(lnRoot, potential) - drive(potential)) / ox,
  };
}

/** The zero of a rising function between two bounds. */
function bisect(rising: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let step = 0; step < 200; step += 1) {
    const middle = (a + b) / 2;
    if (rising(middle) > 0) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}

/**
 * Concentrations at equilibrium, found apart from any order of reactions: one potential for all couples (Nernst), the mass of
 * every family and all electrons conserved, [H⁺] = 1 mol dm⁻³.
 * @param start mol dm⁻³ by species; each must belong to a family
 */
export function equilibrium(couples: readonly Couple[], start: ReadonlyMap<SpeciesKey, number>): Map<SpeciesKey, number> {
  const present = families(couples).filter((family) => family.some((member) => start.has(member.key)));
  const amount = (member: Member) => start.get(member.key) ?? 0;
  const sum = (family: readonly Member[], of: (member: Member) => number) =>
    family.reduce((total, member) => total + of(member), 0);
  const electrons = sum(present.flat(), (member) => member.electrons * amount(member));
  const at = (potential: number): Map<SpeciesKey, number> => {
    const found = new Map<SpeciesKey, number>();
    for (const family of present) {
      const total = sum(family, (member) => member.weight * amount(member));
      const mass = (lnRoot: number) =>
        sum(family, (member) => member.weight * Math.exp(member.lnConcentration(lnRoot, potential))) - total;
      const lnRoot = bisect(mass, -3000, 3000);
      for (const member of family) found.set(member.key, Math.exp(member.lnConcentration(lnRoot, potential)));
    }
    return found;
  };
  const members = new Map(present.flat().map((member) => [member.key, member]));
  const excess = (potential: number) =>
    electrons - [...at(potential)].reduce((total, [key, c]) => total + members.get(key)!.electrons * c, 0);
  return at(bisect(excess, -4, 4));
}
