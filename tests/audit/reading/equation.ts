import { Fraction } from '../exact/fraction.ts';
import { readSpecies, type Species } from './species.ts';

/** An equation as it is read off the page: coefficients by species, states apart. */
export interface Equation {
  readonly left: ReadonlyMap<string, Fraction>;
  readonly right: ReadonlyMap<string, Fraction>;
  readonly species: ReadonlyMap<string, Species>;
  readonly arrow: 'forward' | 'reversible';
  readonly hasStates: boolean;
  readonly text: string;
}

/** Reads `2 Fe^3+ + 2 I^- -> 2 Fe^2+ + I2`. @returns undefined when a term or the arrow cannot be read, or a species stands twice on a side */
export function readEquation(text: string): Equation | undefined {
  const [, before, arrow, after] = /^(.*) (->|<=>) (.*)$/.exec(text) ?? [];
  if (!before || !after) return undefined;
  const species = new Map<string, Species>();
  const [left, right] = [readSide(before, species), readSide(after, species)];
  if (!left || !right) return undefined;
  const hasStates = [...species.values()].some(({ state }) => state !== undefined);
  return { left, right, species, arrow: arrow === '->' ? 'forward' : 'reversible', hasStates, text };
}

function readSide(text: string, species: Map<string, Species>): Map<string, Fraction> | undefined {
  const side = new Map<string, Fraction>();
  for (const term of text.split(' + ')) {
    const [, above, below = '1', formula] = /^(?:(\d+)(?:\/(\d+))? )?(\S+)$/.exec(term) ?? [];
    const read = formula === undefined ? undefined : readSpecies(formula);
    if (!read || side.has(read.key)) return undefined;
    species.set(read.key, read);
    side.set(read.key, Fraction.of(BigInt(above ?? '1'), BigInt(below)));
  }
  return side;
}
