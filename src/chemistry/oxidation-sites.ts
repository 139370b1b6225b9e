import { Rational } from '../exact/rational.ts';

/** Atoms of one element that share an oxidation number. */
export interface Site {
  readonly element: string;
  readonly number: Rational;
  readonly atoms: number;
}

/** Oxidation numbers of a species. Σ number × atoms is the charge. */
export interface OxidationNumbers {
  /** in order of appearance; an element has two sites when its atoms differ (N in NH₄NO₃) */
  readonly sites: readonly Site[];
  /** the rules used, in words, in order */
  readonly rules: readonly string[];
}

/** The same numbers for several of a part. */
export function timesPart({ sites, rules }: OxidationNumbers, count: number): OxidationNumbers {
  return { sites: sites.map((site) => ({ ...site, atoms: site.atoms * count })), rules };
}

/** Parts of one formula together; equal sites add up, a rule is told once. */
export function joinParts(parts: readonly OxidationNumbers[]): OxidationNumbers {
  const sites = new Map<string, Site>();
  for (const site of parts.flatMap((part) => part.sites)) {
    const name = `${site.element} ${site.number}`;
    const known = sites.get(name);
    sites.set(name, known ? { ...known, atoms: known.atoms + site.atoms } : site);
  }
  return { sites: [...sites.values()], rules: [...new Set(parts.flatMap((part) => part.rules))] };
}

/** Sites in the order in which the formula names their elements. */
export function sitesInOrder(found: OxidationNumbers, elements: readonly string[]): OxidationNumbers {
  const sites = elements.flatMap((symbol) => found.sites.filter((site) => site.element === symbol));
  return { sites, rules: found.rules };
}

/** Σ number × atoms. */
export function sumOfSites(sites: readonly Site[]): Rational {
  return sites.reduce((sum, { number, atoms }) => sum.plus(number.times(Rational.of(atoms))), Rational.zero);
}
