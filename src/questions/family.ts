import type { Words } from '../document/words.ts';
import type { Tables } from '../potentials/tables.ts';
import type { Draws } from '../random/draws.ts';
import { asChoice, type ChoiceAsk } from './choice.ts';
import type { Answering, Item, Level, MisconceptionId, Units } from './question.ts';

/** What is asked of a family. Support is not here: it is a way of presenting a finished question. */
export interface Ask {
  readonly level: Level;
  readonly answering: Answering;
  readonly units: Units;
  /** colours are not to be recalled: another property is asked in their place, for the same marks */
  readonly withoutColours?: boolean;
}

/** Topics by which a teacher chooses. */
export const TOPICS = ['oxidation-and-reduction', 'electrode-potentials', 'redox-titration', 'transition-metals'] as const;
export type Topic = (typeof TOPICS)[number];

/** What a family file holds: only what is particular to it. */
export interface FamilySpec<P> {
  readonly id: string;
  readonly title: string;
  /** one sentence for `couplet families` */
  readonly asksFor: string;
  readonly topics: readonly Topic[];
  readonly strategy: string;
  /** what moves difficulty; all else is surface */
  readonly demand: readonly string[];
  readonly answering: readonly Answering[];
  readonly misconceptions: readonly MisconceptionId[];
  /** The only randomness: chemistry and printed data. `undefined` when this stream gives nothing fit to ask; another is tried. */
  draw(draws: Draws, tables: Tables, ask: Ask): P | undefined;
  /**
   * Steps, parts, points, slips; wording through `templates/<id>.hbs`. Always the written item; `choice` says how it is asked as
   * multiple choice, and is needed when the family answers that way.
   */
  build(drawn: P, tables: Tables, ask: Ask, words: Words): Built;
}

/** A written item, and how it would be asked as a choice. */
export interface Built {
  readonly item: Item;
  readonly choice?: ChoiceAsk;
}

/** A family with its parameters sealed inside, so that the index holds all of one type. */
export interface Family extends Omit<FamilySpec<never>, 'draw' | 'build'> {
  /** One attempt from a stream; phrasings come from `words` as they are handed in. */
  attempt(draws: Draws, tables: Tables, ask: Ask, words: Words): Item | undefined;
}

export function family<P>(spec: FamilySpec<P>): Family {
  const { draw, build, ...about } = spec;
  return {
    ...about,
    attempt: (draws, tables, ask, words) => {
      const drawn = draw.call(spec, draws, tables, ask);
      if (drawn === undefined) return undefined;
      const { item, choice } = build.call(spec, drawn, tables, ask, words);
      if (ask.answering === 'written') return item;
      if (!choice) throw new Error(`${spec.id} does not say how it is asked as a choice`);
      return asChoice({ ...item, features: { ...item.features, answering: 'choice' } }, choice);
    },
  };
}
