import { elementsIn } from '../../chemistry/composition.ts';
import type { Couple } from '../../chemistry/couple.ts';
import { elementOf } from '../../chemistry/elements.ts';
import type { Formula } from '../../chemistry/formula.ts';
import type { Mixture, Pairing } from '../../chemistry/mixture.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import { bare } from '../without-states.ts';

/** One rung: the couple of the element that is stepped on, from one species to the next. */
export interface Rung {
  readonly couple: Couple;
  readonly from: Formula;
  readonly to: Formula;
}

/** A ladder that a class can reason about from printed potentials alone. */
export interface Ladder {
  readonly isReduction: boolean;
  readonly start: Formula;
  /** the couple of the reagent, the form that reacts and what it becomes */
  readonly reagent: Couple;
  readonly reacts: Formula;
  readonly product: Formula;
  readonly rungs: readonly Rung[];
  /** the step that does not happen, E°cell ≤ −0.10 V */
  readonly next: Rung;
  /** name of the element whose states are stepped through */
  readonly element: string;
  readonly symbol: string;
  /** true when nothing else in the mixture is coloured, so that each ion's colour is seen */
  readonly isSeen: boolean;
}

interface Drawn {
  readonly start: Formula;
  readonly reagent: Couple;
  readonly isReduction: boolean;
}

/** Nearer to zero than this, a step is neither taken nor ruled out (chemistry: §3, threshold for drawing). */
const THRESHOLD = Rational.parse('0.10');

/**
 * The ladder of a mixture.
 * @returns undefined when the mixture is not fit to be asked about: no step, another species taking part, a step that needs a
 * condition or is not observed, a borderline step, or no next rung that is clearly out of reach
 */
export function ladderFrom(mixture: Mixture, drawn: Drawn, tables: Tables): Ladder | undefined {
  const { start, reagent, isReduction } = drawn;
  const reacts = isReduction ? reagent.reduced : reagent.oxidised;
  const own = mixture.steps.every(
    (step) => step.reduction === isReduction && (isReduction ? step.reductant : step.oxidant).id === reagent.id,
  );
  if (mixture.steps.length === 0 || !own || isTroubled(mixture, drawn)) return undefined;
  const rungs = mixture.steps.map((step) => rungOf(isReduction ? step.oxidant : step.reductant, isReduction));
  const symbol = elementsIn(start).find((each) => each !== 'O' && each !== 'H')!;
  const next = nextRung(rungs.at(-1)!.to, drawn, tables);
  if (!next || keyOf(rungs[0]!.from) !== keyOf(start)) return undefined;
  return {
    isReduction,
    start: bare(start),
    reagent,
    reacts: bare(reacts),
    product: bare(isReduction ? reagent.oxidised : reagent.reduced),
    rungs,
    next,
    element: elementOf(symbol).name,
    symbol,
    isSeen: [reacts, isReduction ? reagent.oxidised : reagent.reduced].every((formula) => leavesColour(formula, tables)),
  };
}

/**
 * True when something happens, or fails to happen, between the element and the reagent that potentials alone do not tell. What acid or
 * air do to a product apart from that is no trouble: it is not asked.
 */
function isTroubled(mixture: Mixture, { start, reagent, isReduction }: Drawn): boolean {
  const own = elementsIn(start).filter((symbol) => symbol !== 'O' && symbol !== 'H');
  const isSubject = (formula: Formula) => own.every((symbol) => elementsIn(formula).includes(symbol));
  const between = ({ oxidant, reductant }: Pairing) => {
    const [subject, other] = isReduction ? [oxidant.oxidised, reductant.reduced] : [reductant.reduced, oxidant.oxidised];
    return isSubject(subject) && !isSubject(other) && [reagent.oxidisedKey, reagent.reducedKey].includes(keyOf(other));
  };
  const apart = [...mixture.held, ...mixture.parallel, ...mixture.borderline];
  return (
    mixture.loops.length > 0 ||
    mixture.borderline.length > 0 ||
    apart.some(between) ||
    mixture.parallel.some(({ kind }) => kind === 'counter-ion')
  );
}

function rungOf(couple: Couple, isReduction: boolean): Rung {
  const [from, to] = isReduction ? [couple.oxidised, couple.reduced] : [couple.reduced, couple.oxidised];
  return { couple, from: bare(from), to: bare(to) };
}

/** The most favourable step from a species in the table, if even that is clearly out of the reagent's reach. */
function nextRung(from: Formula, { reagent, isReduction }: Drawn, tables: Tables): Rung | undefined {
  const key = keyOf(from);
  const onward = tables.couples
    .filter(({ medium, oxidisedKey, reducedKey }) => medium !== 'alkali' && (isReduction ? oxidisedKey : reducedKey) === key)
    .map((couple) => ({ couple, emf: emfOf(couple, reagent, isReduction) }))
    .sort((a, b) => b.emf.compare(a.emf));
  const best = onward[0];
  return best && best.emf.plus(THRESHOLD).sign() <= 0 ? rungOf(best.couple, isReduction) : undefined;
}

/** E°cell of a rung with the reagent, from printed values. */
export function emfOf(rung: Couple, reagent: Couple, isReduction: boolean): Rational {
  const difference = rung.printed.value.minus(reagent.printed.value);
  return isReduction ? difference : difference.negate();
}

/** A solid does not colour the solution; a colourless solute does not mask. */
function leavesColour(formula: Formula, tables: Tables): boolean {
  const { role, colour } = tables.speciesOf(keyOf(formula));
  return role !== 'solution' || colour?.word === 'colourless';
}
