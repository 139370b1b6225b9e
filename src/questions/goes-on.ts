import { standardEmf } from '../chemistry/cell.ts';
import type { Couple, Medium } from '../chemistry/couple.ts';
import { indexCouples, indexFacts } from '../chemistry/couple-index.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import { judgePair } from '../chemistry/pair-verdict.ts';
import type { Tables } from '../potentials/tables.ts';

/**
 * True when a product of a reaction would react on, with a reactant that is left or with the other product, borderline potentials
 * (0 < E°cell < 0.10 V) included: chlorine takes iron past iron(II), bromine may take vanadium(III) past vanadium(IV). What a sheet then
 * says is formed would depend on which reactant is in excess.
 */
export function goesOn(oxidant: Couple, reductant: Couple, tables: Tables, medium: Medium): boolean {
  const meets = (gains: SpeciesKey, gives: SpeciesKey) => mayReact(gains, gives, tables, medium);
  return (
    meets(oxidant.oxidisedKey, reductant.oxidisedKey) ||
    meets(oxidant.reducedKey, reductant.reducedKey) ||
    meets(reductant.oxidisedKey, oxidant.reducedKey)
  );
}

/** True when usual couples of two species react in the medium without a condition, by facts and by a positive E°cell as printed. */
function mayReact(gains: SpeciesKey, gives: SpeciesKey, tables: Tables, medium: Medium): boolean {
  const facts = indexFacts(tables.facts);
  if (facts.bystanders.has(`oxidant ${gains}`) || facts.bystanders.has(`reductant ${gives}`)) return false;
  const oxidants = usualCouples(gains, 'oxidant', tables, medium);
  const reductants = usualCouples(gives, 'reductant', tables, medium);
  return oxidants.some((oxidant) =>
    reductants.some(
      (reductant) =>
        standardEmf(reductant, oxidant, 'printed').value.sign() > 0 &&
        judgePair(oxidant, reductant, { oxidants, reductants }, facts, medium, []).kind === 'allowed',
    ),
  );
}

/** The couples through which a species usually acts in a medium. */
export function usualCouples(key: SpeciesKey, as: 'oxidant' | 'reductant', { couples }: Tables, medium: Medium): Couple[] {
  const index = indexCouples(couples);
  const all = (as === 'oxidant' ? index.byOxidised : index.byReduced).get(key) ?? [];
  return all.filter(
    (each) => !each.calculationOnly && (as === 'oxidant' ? each.usualOxidant : each.usualReductant).includes(medium),
  );
}
