import { joined, THRESHOLD } from '../chemistry/cell.ts';
import { elementsIn } from '../chemistry/composition.ts';
import type { Couple, Medium } from '../chemistry/couple.ts';
import type { Formula } from '../chemistry/formula.ts';
import type { Mixture } from '../chemistry/mixture.ts';
import { react } from '../chemistry/react.ts';
import { coefficientOf } from '../chemistry/terms.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { Rational } from '../exact/rational.ts';
import type { Tables } from '../potentials/tables.ts';
import { acidStands } from './acid-stands.ts';
import { goesOn } from './goes-on.ts';

/** Elements whose ions are kept in acid, because water alone makes hydroxides or oxides of them. Common practice, no source. */
const KEPT_IN_ACID = ['V', 'Cr', 'Ti', 'Mn', 'Ce', 'Sn'];

/** The medium in which species of two couples are asked about: acid where H⁺ takes part or keeps an ion in solution. */
export function mediumOf(couples: readonly Couple[], species: readonly Formula[]): Medium {
  const kept = species.some(
    (formula) => formula.charge !== 0 && elementsIn(formula).some((symbol) => KEPT_IN_ACID.includes(symbol)),
  );
  return kept || couples.some(({ medium }) => medium === 'acid') ? 'acid' : 'neutral';
}

/**
 * True when an oxidant and a reductant do this one reaction and no other, whichever of them is in excess: what is printed of them then
 * tells all. Air is left out of account.
 */
export function reactsCleanly(oxidant: Couple, reductant: Couple, tables: Tables): boolean {
  const { left } = joined(oxidant, reductant).equation;
  const [taker, giver] = [coefficientOf(left, oxidant.oxidisedKey), coefficientOf(left, reductant.reducedKey)];
  // What cancels is not really there: the two couples share a species.
  if (taker.sign() <= 0 || giver.sign() <= 0 || fallOut(oxidant, reductant, tables)) return false;
  const medium = mediumOf([oxidant, reductant], [oxidant.oxidised, reductant.reduced]);
  const all = [oxidant, reductant].flatMap(({ oxidisedKey, reducedKey }) => [oxidisedKey, reducedKey]);
  if (goesOn(oxidant, reductant, tables, medium) || (medium === 'acid' && !acidStands(all, tables))) return false;
  const mixture = mix([oxidant.oxidised, taker], [reductant.reduced, giver], medium, tables);
  const [step, ...more] = mixture.steps;
  return step?.oxidant.id === oxidant.id && step.reductant.id === reductant.id && more.length === 0 && isPlain(mixture);
}

/**
 * True when two species do nothing to one another: no couple of theirs in the table, usual or not, comes within 0.10 V of a reaction, and
 * nothing else is known to happen.
 */
export function leavesAlone(one: Formula, other: Formula, medium: Medium, tables: Tables): boolean {
  const mixture = mix([one, Rational.one], [other, Rational.one], medium, tables);
  return mixture.steps.length === 0 && isPlain(mixture) && outOfReach(one, other, tables) && outOfReach(other, one, tables);
}

/**
 * True when a form of one couple precipitates with a form of the other: what is formed is then not what the half-equations say (chlorine
 * and silver make the chloride).
 */
export function fallOut(one: Couple, other: Couple, tables: Tables): boolean {
  const [first, second] = [one, other].map(({ oxidisedKey, reducedKey }) => [oxidisedKey, reducedKey]) as [string[], string[]];
  return tables.facts.pairs.some(
    ({ verdict, oxidant, reductant }) =>
      verdict === 'precipitates' &&
      ((first.includes(oxidant) && second.includes(reductant)) || (second.includes(oxidant) && first.includes(reductant))),
  );
}

type Portion = readonly [Formula, Rational];

function mix(one: Portion, other: Portion, medium: Medium, tables: Tables): Mixture {
  const reactants = [one, other].map(([formula, amount]) => ({ formula, amount }));
  return react({ reactants, medium, values: 'printed' }, tables.couples, tables.facts);
}

/** Nothing held back, borderline, precipitated or running beside; what air does, or a species by itself with a catalyst, is not asked. */
function isPlain({ held, borderline, parallel, notes, loops }: Mixture): boolean {
  return (
    held.every(({ oxidant, reductant }) => oxidant.oxidisedKey === reductant.reducedKey) &&
    borderline.length === 0 &&
    loops.length === 0 &&
    parallel.every(({ kind, oxidant }) => kind === 'air' || oxidant.oxidisedKey === 'O2') &&
    notes.every(({ kind }) => kind !== 'precipitates')
  );
}

function outOfReach(taker: Formula, giver: Formula, tables: Tables): boolean {
  const [takes, gives] = [keyOf(taker), keyOf(giver)];
  const dissolved = tables.couples.filter(({ medium }) => medium !== 'alkali');
  return dissolved.every(
    (high) =>
      high.oxidisedKey !== takes ||
      dissolved.every(
        (low) => low.reducedKey !== gives || high.printed.value.minus(low.printed.value).plus(THRESHOLD).sign() <= 0,
      ),
  );
}
