import type { Medium } from '../../chemistry/couple.ts';
import type { Condition, Facts } from '../../chemistry/facts.ts';
import type { SpeciesKey } from '../../chemistry/formula.ts';
import type { Amount, Mixture } from '../../chemistry/mixture.ts';
import { react } from '../../chemistry/react.ts';
import type { Species } from '../../chemistry/species.ts';
import { writeEquation } from '../../chemistry/write-equation.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Fault } from '../../exact/fault.ts';
import { bansOn } from '../../potentials/bans-on.ts';
import type { Ban } from '../../potentials/tables.ts';
import { answersTo, type Input } from '../inputs.ts';
import { exactText } from '../tell.ts';
import { notesOn } from './react-notes.ts';
import { type Ingredient, ingredientOf, type Shelf } from './reactants.ts';
import { speciesAfter, valuesBySpecies } from './values-by-species.ts';

/** What `couplet react --json` prints. Amounts in mol, exact, or `excess`; e.m.f. in V from stored potentials; colours null when unknown. */
export interface ReactAnswer {
  readonly steps: readonly {
    readonly equation: string;
    readonly emf: string;
    readonly from: string;
    readonly to: string;
    readonly colourBefore: string | null;
    readonly colourAfter: string | null;
  }[];
  /** water, H⁺ and OH⁻ left out */
  readonly final: readonly { readonly species: string; readonly amount: string; readonly colour: string | null }[];
  readonly parallel: readonly { readonly equation: string; readonly emf: string; readonly because: string }[];
  readonly notes: readonly string[];
}

/** What a mixture is looked up in. */
export interface Laboratory extends Shelf {
  readonly facts: Facts;
  readonly bans: readonly Ban[];
}

/** What is put together, as typed. */
export interface MixtureTerms {
  readonly medium: Medium;
  readonly amount: readonly string[];
  readonly excess: readonly string[];
  readonly given: readonly Condition[];
}

/** A mixture with what happens in it. */
export interface Reacted {
  readonly ingredients: readonly Ingredient[];
  readonly medium: Medium;
  readonly given: readonly Condition[];
  readonly mixture: Mixture;
  /** why a class does not put these together */
  readonly bans: readonly Ban[];
  readonly species: ReadonlyMap<SpeciesKey, Species>;
}

/**
 * What happens in the beaker, by the engine that the questions use, with stored potentials.
 * @param inputs species or bottled substances, the subject first
 * @throws Fault of the text, or of the engine: `nothing-limits`, `wrong-medium` …
 */
export function mix(inputs: readonly Input[], terms: MixtureTerms, laboratory: Laboratory): Reacted {
  const amounts = valuesBySpecies(terms.amount, 'amount');
  const excess = new Set(terms.excess.map((text) => speciesAfter(text, 'excess')));
  const ingredients = answersTo(inputs, (text) => ingredientOf(text, laboratory, amounts, excess));
  const media = solventIn(amounts, ingredients).map((key) => ingredientOf(key, laboratory, amounts, excess));
  checkNamed(amounts, excess, [...ingredients, ...media]);
  const reactants = [...ingredients, ...media].flatMap((each) => each.reactants);
  const { medium, given } = terms;
  const mixture = react({ reactants, medium, values: 'stored', given }, laboratory.couples, laboratory.facts);
  const present = [...ingredients.map(({ key }) => key), ...reactants.map(({ formula }) => keyOf(formula))];
  return { ingredients, medium, given, mixture, bans: bansOn(present, laboratory.bans, medium), species: laboratory.species };
}

/** H⁺ and OH⁻ may be given an amount without being named among the reactants. */
function solventIn(amounts: ReadonlyMap<SpeciesKey, unknown>, ingredients: readonly Ingredient[]): SpeciesKey[] {
  return ['H^+', 'OH^-'].filter((key) => amounts.has(key) && !ingredients.some((each) => each.key === key));
}

/** An amount or an excess is of something that is there, and not both. */
function checkNamed(
  amounts: ReadonlyMap<SpeciesKey, unknown>,
  excess: ReadonlySet<SpeciesKey>,
  all: readonly Ingredient[],
): void {
  const known = all.map(({ key }) => `\`${key}\``).join(', ');
  const stray = [...amounts.keys(), ...excess].find((key) => !all.some((each) => each.key === key));
  if (stray !== undefined)
    throw new Fault('not-a-reactant', `expected an amount or an excess of a reactant (${known}), found \`${stray}\``);
  const both = [...amounts.keys()].find((key) => excess.has(key));
  if (both !== undefined) throw new Fault('amount-and-excess', `expected \`${both}\` with an amount or in excess, found both`);
}

export function reactAnswer(reacted: Reacted): ReactAnswer {
  const { mixture, species } = reacted;
  const colourOf = (key: SpeciesKey) => species.get(key)?.colour?.word ?? null;
  return {
    steps: mixture.steps.map(({ combined, emf, from, to }) => ({
      equation: writeEquation(combined.equation),
      emf: exactText(emf.value),
      from,
      to,
      colourBefore: colourOf(from),
      colourAfter: colourOf(to),
    })),
    final: mixture.final.map(({ key, amount }) => ({ species: key, amount: amountText(amount), colour: colourOf(key) })),
    parallel: mixture.parallel.map(({ combined, emf, because }) => ({
      equation: writeEquation(combined.equation),
      emf: exactText(emf.value),
      because,
    })),
    notes: notesOn(reacted),
  };
}

/** Exact mol, or `excess`. */
export function amountText(amount: Amount): string {
  return amount === 'excess' ? amount : exactText(amount);
}
