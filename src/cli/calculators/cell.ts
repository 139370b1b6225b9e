import { type Cell, cell, spontaneousCell } from '../../chemistry/cell.ts';
import { cellNotation } from '../../chemistry/cell-notation.ts';
import { CODATA, STANDARD_TEMPERATURE } from '../../chemistry/constants.ts';
import type { Couple } from '../../chemistry/couple.ts';
import { gibbsEnergy, lnEquilibrium, log10Of, nernstEmf, reactionQuotient } from '../../chemistry/energetics.ts';
import type { SpeciesKey } from '../../chemistry/formula.ts';
import { writeEquation } from '../../chemistry/write-equation.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Rational } from '../../exact/rational.ts';
import { badValue } from '../option.ts';
import { exactText } from '../tell.ts';
import { positive, valuesBySpecies } from './values-by-species.ts';

/** What `couplet cell --json` prints. Potentials in V, `gibbs` in kJ mol⁻¹ of the equation as written. */
export interface CellAnswer {
  readonly negative: string;
  readonly positive: string;
  /** exact, from stored potentials */
  readonly emf: string;
  readonly feasible: boolean;
  readonly equation: string;
  readonly electrons: string;
  readonly notation: string;
  readonly gibbs: string;
  readonly log10K: number;
  /** e.m.f. at the concentrations and the temperature given; equal to `emf` when all are 1 */
  readonly nernst: number;
}

/** A cell with everything that follows from its two half-cells. */
export interface WorkedCell {
  readonly cell: Cell;
  readonly notation: string;
  /** K */
  readonly temperature: Rational;
  /** concentration over 1 mol dm⁻³, or pressure over 100 kPa */
  readonly activities: ReadonlyMap<SpeciesKey, Rational>;
  readonly quotient: Rational;
  /** J mol⁻¹, exact */
  readonly gibbs: Rational;
  readonly lnK: Rational;
  /** V */
  readonly nernst: number;
}

/** What a cell is worked out for, as typed. */
export interface CellTerms {
  readonly 'as-written': boolean;
  readonly with: readonly string[];
  readonly temperature?: string | undefined;
}

/**
 * @param first the negative half-cell, or either one unless `as-written`
 * @throws Fault `same-couple`, `bad-option`, or a fault of the text
 */
export function workCell(first: Couple, second: Couple, terms: CellTerms): WorkedCell {
  const found = terms['as-written'] ? cell(first, second, 'stored') : spontaneousCell(first, second, 'stored');
  const { equation, electrons } = found.combined;
  const temperature = temperatureIn(terms.temperature);
  const activities = valuesBySpecies(terms.with, 'with');
  checkActivities(found, activities, terms.with);
  const quotient = reactionQuotient(equation, activities);
  return {
    cell: found,
    notation: cellNotation(found.negative, found.positive).text,
    temperature,
    activities,
    quotient,
    gibbs: gibbsEnergy(electrons, found.emf.value, CODATA),
    lnK: lnEquilibrium(electrons, found.emf.value, temperature, CODATA),
    nernst: nernstEmf(found.emf.value, electrons, quotient, temperature, CODATA),
  };
}

export function cellAnswer({ cell: found, notation, gibbs, lnK, nernst }: WorkedCell): CellAnswer {
  return {
    negative: found.negative.id,
    positive: found.positive.id,
    emf: exactText(found.emf.value),
    feasible: found.feasible,
    equation: writeEquation(found.combined.equation),
    electrons: found.combined.electrons.toString(),
    notation,
    gibbs: exactText(gibbs.over(Rational.of(1000))),
    log10K: log10Of(lnK),
    nernst,
  };
}

function temperatureIn(text: string | undefined): Rational {
  if (text === undefined) return STANDARD_TEMPERATURE;
  const value = positive(text);
  if (value === undefined) throw badValue('temperature', text, 'a temperature in kelvin, above zero');
  return value;
}

/** Concentrations are given of what is dissolved or a gas, and stands in the equation. */
function checkActivities(
  { combined: { equation } }: Cell,
  activities: ReadonlyMap<SpeciesKey, Rational>,
  typed: readonly string[],
): void {
  const terms = [...equation.left, ...equation.right];
  for (const [at, key] of [...activities.keys()].entries()) {
    const term = terms.find(({ formula }) => keyOf(formula) === key);
    const why =
      term === undefined
        ? `does not stand in ${writeEquation(equation)}`
        : key === 'H2O'
          ? 'is the solvent, which counts as 1'
          : term.formula.state === 's' || term.formula.state === 'l'
            ? 'is a pure solid or liquid, which counts as 1'
            : undefined;
    // one value for each species, in the order they were typed
    if (why) throw badValue('with', typed[at]!, `a species with a concentration (\`${key}\` ${why})`);
  }
}
