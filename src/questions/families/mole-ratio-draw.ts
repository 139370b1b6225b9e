import { joined } from '../../chemistry/cell.ts';
import { coefficientOf } from '../../chemistry/terms.ts';
import { type Decimal, parseDecimal } from '../../exact/decimal.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Draws } from '../../random/draws.ts';
import { cautionsFor, type Handled } from '../cautions.ts';
import type { Ask } from '../family.ts';
import type { Caution } from '../question.ts';
import { mayStandTogether } from './mole-ratio-mixture.ts';
import { drawPair, type ReactingPair } from './mole-ratio-pairs.ts';
import {
  acidFor,
  handledOf,
  isDissolved,
  isWeighed,
  type Measure,
  molarMassOf,
  type Substance,
  substancesFor,
} from './mole-ratio-substance.ts';
import { drawConcentration } from './titration-limits.ts';

/** What a draw fixes: the reaction, which reagent is measured and how, and every printed figure. */
export interface RatioDraw extends ReactingPair {
  readonly known: Substance & { readonly measure: 'solution' | 'mass' };
  readonly found: Substance & { readonly measure: Measure };
  /** mol dm⁻³ and cm³ of the known solution, or its mass in g */
  readonly concentration?: Decimal;
  readonly volume?: Decimal;
  readonly mass?: Decimal;
  /** mol dm⁻³ of the solution whose volume is asked */
  readonly foundConcentration?: Decimal;
  /** what the page tells of the reaction: its equation, its half-equations, or only what turns into what */
  readonly told: 'equation' | 'half-equations' | 'changes';
  /** the ratio itself is chosen from options, not a quantity */
  readonly choosesRatio: boolean;
  readonly cautions: readonly Caution[];
}

export function drawRatio(draws: Draws, tables: Tables, { level, answering }: Ask): RatioDraw | undefined {
  const pair = drawPair(draws, tables, level);
  const substances = drawSubstances(draws, pair, tables);
  if (!substances) return undefined;
  const { known, found } = substances;
  const measures = level === 'core' ? coreMeasures(draws, known, found, tables) : stretchMeasures(draws, known, found, tables);
  if (!measures) return undefined;
  const ratio = reactingRatio(pair, known, found);
  if (ratio.equals(Rational.one) && !draws.chance(1, 4)) return undefined;
  const told = level === 'core' ? draws.pick(['equation', 'half-equations'] as const) : 'changes';
  const figures = drawFigures(draws, known, measures, found);
  const cautions = fits(figures, ratio, known, found, tables)
    ? cautionsOf(pair, known, found, measures, figures, tables)
    : undefined;
  if (!cautions) return undefined;
  return {
    ...pair,
    known: { ...known, measure: measures.known },
    found: { ...found, measure: measures.found },
    ...figures,
    told,
    choosesRatio: answering === 'choice' && level === 'core' && draws.chance(1, 3),
    cautions,
  };
}

/** Two substances that may be mixed, and which of them is measured. */
function drawSubstances(draws: Draws, pair: ReactingPair, tables: Tables) {
  const { oxidant, reductant } = pair;
  const ways = substancesFor(oxidant.oxidisedKey, tables).flatMap((one) =>
    substancesFor(reductant.reducedKey, tables)
      .filter((other) => mayStandTogether(one, other, pair, tables))
      .map((other) => [one, other] as const),
  );
  if (ways.length === 0) return undefined;
  const [known, found] = draws.shuffle(draws.pick(ways)) as [Substance, Substance];
  return { known, found };
}

interface Measures {
  readonly known: 'solution' | 'mass';
  readonly found: Measure;
}

/** Core: solutions by volume and concentration, metals by mass, and one amount, volume or mass of a metal asked. */
function coreMeasures(draws: Draws, known: Substance, found: Substance, tables: Tables): Measures | undefined {
  if (!known.isMetal && !isDissolved(known, tables)) return undefined;
  if (!found.isMetal && !isDissolved(found, tables)) return undefined;
  return {
    known: known.isMetal ? 'mass' : 'solution',
    found: draws.pick(['amount', found.isMetal ? 'mass' : 'solution'] as const),
  };
}

/** Stretch: at least one of the two is weighed. */
function stretchMeasures(draws: Draws, known: Substance, found: Substance, tables: Tables): Measures | undefined {
  const ways = (substance: Substance) => [
    ...(isDissolved(substance, tables) ? (['solution'] as const) : []),
    ...(isWeighed(substance, tables) ? (['mass'] as const) : []),
  ];
  const all = ways(known).flatMap((one) => ways(found).map((other) => ({ known: one, found: other })));
  const weighed = all.filter((each) => each.known === 'mass' || each.found === 'mass');
  return weighed.length === 0 ? undefined : draws.pick(weighed);
}

type Figures = Pick<RatioDraw, 'concentration' | 'volume' | 'mass' | 'foundConcentration'>;

function drawFigures(draws: Draws, known: Substance, measures: Measures, found: Substance): Figures {
  const labelled = ({ key }: Substance): Decimal => drawConcentration(draws, key);
  const measured: Figures =
    measures.known === 'mass'
      ? { mass: drawMass(draws) }
      : { concentration: labelled(known), volume: parseDecimal(draws.pick(['10.0', '20.0', '25.0', '25.0', '50.0'])) };
  return measures.found === 'solution' ? { ...measured, foundConcentration: labelled(found) } : measured;
}

/** Three significant figures. */
function drawMass(draws: Draws): Decimal {
  return draws.chance(1, 2) ? draws.decimal('0.100', '0.995', '0.005', 3) : draws.decimal('1.00', '4.95', '0.05', 2);
}

/** Moles of the asked reagent that react with one mole of the known one. */
function reactingRatio({ oxidant, reductant }: ReactingPair, known: Substance, found: Substance): Rational {
  const { left } = joined(oxidant, reductant).equation;
  return coefficientOf(left, found.key).over(coefficientOf(left, known.key));
}

/** True when every quantity is one that is met on a bench: amounts of 0.0001 to 0.05 mol, 5 to 100 cm³, 0.05 to 15 g. */
function fits(figures: Figures, ratio: Rational, known: Substance, found: Substance, tables: Tables): boolean {
  const { concentration, volume, mass, foundConcentration } = figures;
  const amount = mass
    ? mass.value.over(molarMassOf(known, tables))
    : concentration!.value.times(volume!.value).over(Rational.of(1000));
  const asked = amount.times(ratio);
  const isWithin = (value: Rational, least: string, most: string) =>
    value.compare(Rational.parse(least)) >= 0 && value.compare(Rational.parse(most)) <= 0;
  return (
    [amount, asked].every((each) => isWithin(each, '0.0001', '0.05')) &&
    (!foundConcentration || isWithin(asked.times(Rational.of(1000)).over(foundConcentration.value), '5', '100')) &&
    isWithin(asked.times(molarMassOf(found, tables)), '0.02', '15')
  );
}

/** mol dm⁻³ that a solution is taken to have when no concentration is printed (common practice, no source). */
const BENCH = 0.1;

function cautionsOf(
  { medium }: ReactingPair,
  known: Substance,
  found: Substance,
  measures: Measures,
  { concentration, foundConcentration }: Figures,
  tables: Tables,
): Caution[] | undefined {
  const acid: readonly Handled[] =
    medium === 'acid' ? [{ key: acidFor({ known, found }), form: 'solution', concentration: 1 }] : [];
  return cautionsFor(
    [
      handledOf(known, measures.known, concentration?.value.toNumber() ?? BENCH, tables),
      handledOf(found, measures.found, foundConcentration?.value.toNumber() ?? BENCH, tables),
      ...acid,
    ],
    tables,
  );
}
