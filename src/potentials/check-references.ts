import { isElectron } from '../chemistry/formula-parts.ts';
import type { Hazard } from '../chemistry/species.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { CoupleRow } from './couple-row.ts';
import { didYouMean } from './did-you-mean.ts';
import type { Told, ToldFacts } from './read-facts.ts';
import type { SheetRow } from './sheet.ts';

/** Faults for keys that stand in no data file. `names` are all that are known. */
export class Known {
  private readonly names: ReadonlySet<string>;
  private readonly what: string;

  constructor(what: string, names: Iterable<string>) {
    this.what = what;
    this.names = new Set(names);
  }

  check(row: SheetRow, keys: readonly string[]): void {
    for (const key of keys) {
      if (key !== '*' && !this.names.has(key))
        row.fault(`unknown-${this.what}`, `no ${this.what} is called \`${key}\`${didYouMean(key, this.names)}`);
    }
  }
}

/** Every species of a half-equation is described in the species file. */
export function checkCoupleSpecies(rows: readonly CoupleRow[], species: Known): void {
  for (const { row, couple } of rows) {
    const formulas = [...couple.half.left, ...couple.half.right].map((term) => term.formula);
    species.check(row, formulas.filter((formula) => !isElectron(formula)).map(keyOf));
  }
}

/** Every species and couple that a fact names is there. */
export function checkFacts(facts: ToldFacts, species: Known, couples: Known): void {
  for (const { fact, row } of facts.pairs) species.check(row, [fact.oxidant, fact.reductant]);
  for (const { fact, row } of facts.restrictions) {
    couples.check(row, [fact.couple]);
    species.check(row, fact.partners);
  }
  for (const { fact, row } of facts.bystanders) species.check(row, [fact.species]);
  for (const { fact, row } of facts.speciations) species.check(row, [fact.species, fact.becomes]);
  checkDoubled(facts.bystanders, ({ species: key, as }) => `${key} as ${as}`);
  checkDoubled(facts.speciations, ({ species: key, medium }) => `${key} in ${medium}`);
  checkDoubled(facts.pairs, ({ oxidant, reductant, media, verdict }) => `${oxidant} with ${reductant} ${media ?? ''} ${verdict}`);
}

function checkDoubled<T>(told: readonly Told<T>[], nameOf: (fact: T) => string): void {
  const seen = new Set<string>();
  for (const { fact, row } of told) {
    const name = nameOf(fact);
    if (seen.has(name)) row.fault('doubled-fact', `\`${name}\` stands in this file already`);
    seen.add(name);
  }
}

/** No two rows speak of one substance in one form at one concentration: which of them would a sheet print? */
export function checkBands(hazards: readonly Told<Hazard>[]): void {
  const seen = new Map<string, Hazard[]>();
  for (const { fact, row } of hazards) {
    for (const key of fact.keys) {
      const others = seen.get(`${key} ${fact.form}`) ?? [];
      const clash = others.find(
        (other) => (other.from ?? 0) < (fact.below ?? Infinity) && (fact.from ?? 0) < (other.below ?? Infinity),
      );
      if (clash) row.fault('band-overlap', `\`${key}\` as ${fact.form} is told of by \`${clash.substance}\` already`);
      seen.set(`${key} ${fact.form}`, [...others, fact]);
    }
  }
}
