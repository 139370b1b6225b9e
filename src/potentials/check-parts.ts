import { keyOf } from '../chemistry/write-formula.ts';
import { checkBands, checkCoupleSpecies, checkFacts, Known } from './check-references.ts';
import { clashesOf } from './check-usual.ts';
import type { FaultList } from './fault-list.ts';
import type { Parts } from './read-parts.ts';

/** What is wrong between the files: names that nothing describes, two usual couples of one species, hazards that overlap. */
export function checkParts(parts: Parts, faults: FaultList): void {
  const species = new Known('species', parts.species.keys());
  const bottled = parts.salts.map(({ salt }) => keyOf(salt.formula));
  const substances = new Known('species', [...parts.species.keys(), ...bottled]);
  const ids = parts.couples.map(({ id }) => id);
  const couples = new Known('couple', ids);
  // Not of a department's rows: their species are known by their formula alone.
  checkCoupleSpecies(parts.ours, species);
  for (const { salt, row } of parts.salts) species.check(row, [salt.gives, ...salt.with.map(({ key }) => key)]);
  checkFacts(parts.facts, species, couples);
  for (const { fact, row } of parts.titrations) {
    couples.check(row, [fact.titrant, fact.analyte]);
    substances.check(row, [keyOf(fact.titrantSalt), keyOf(fact.analyteSalt)]);
  }
  for (const { fact, row } of parts.bans) substances.check(row, [...fact.first, ...fact.second, ...fact.unless]);
  for (const { fact, row } of parts.hazards) substances.check(row, fact.keys);
  checkBands(parts.hazards);
  checkUsual(parts, faults);
}

/** A clash is told of the later of its two rows. */
function checkUsual({ rows, couples, facts }: Parts, faults: FaultList): void {
  const restrictions = facts.restrictions.map(({ fact }) => fact);
  for (const { species, as, medium, couples: pair } of clashesOf(couples, restrictions)) {
    const place = rows[couples.indexOf(pair[1])]?.row.place ?? {};
    const both = `\`${pair[0].id}\` and \`${pair[1].id}\` are both the usual couple of \`${species}\` as ${as} in ${medium}`;
    faults.add('two-usual-couples', `${both}: expected one`, place);
  }
}
