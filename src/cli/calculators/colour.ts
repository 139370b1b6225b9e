import type { SpeciesKey } from '../../chemistry/formula.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import type { Colour, Species } from '../../chemistry/species.ts';
import { keyOf } from '../../chemistry/write-formula.ts';
import { Fault } from '../../exact/fault.ts';
import { didYouMean } from '../../potentials/did-you-mean.ts';

/** What `couplet colour --json` prints of one input. */
export interface ColourAnswer {
  readonly input: string;
  readonly colour: string;
  /** other words that a marker accepts */
  readonly accepted: readonly string[];
  readonly source: string;
}

/** An input with the species it names. */
export interface Coloured {
  readonly input: string;
  readonly species: Species;
  readonly colour: Colour;
}

/** @throws Fault `unknown-species`, `no-colour`, or a fault of the text */
export function colour(input: string, known: ReadonlyMap<SpeciesKey, Species>): Coloured {
  const key = keyOf(parseFormula(input));
  const species = known.get(key);
  if (!species) throw new Fault('unknown-species', `no colour is recorded for \`${key}\`${didYouMean(key, known.keys())}`);
  if (!species.colour)
    throw new Fault('no-colour', `no colour is recorded for \`${key}\` (${species.name}): it is not seen alone`);
  return { input, species, colour: species.colour };
}

export function colourAnswer({ input, colour: { word, accepted, source } }: Coloured): ColourAnswer {
  return { input, colour: word, accepted, source };
}
