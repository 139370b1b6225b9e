import type { AnswerSpace, Block, WorkingLine } from '../document/block.ts';
import type { Inline } from '../document/inline.ts';
import type { Rounding } from '../exact/rounding.ts';
import type { CommandWord } from './command-words.ts';
import type { NodeId, Value, Values } from './value.ts';

export type PartId = string;
export type PointId = string;
export type MisconceptionId = string;
/** A key of something a question tells or asks: `half:MnO4^-/Mn^2+@acid`, `eq:…`, `colour:V^3+`, `emf:…`. */
export type FactKey = string;
/** What kind of thinking a part asks for. */
export type Objective = 'recall' | 'application' | 'analysis';

/** Something printed that the answer is computed from. */
export interface Datum {
  readonly id: NodeId;
  /** what it is, in words: `E° of the positive half-cell` */
  readonly role: string;
  readonly value: Value;
  /** how a number stands on paper */
  readonly printed: Rounding;
  /** printed to be passed over */
  readonly decoy?: true;
}

/** One step of the answer. Steps form an acyclic graph and are listed in an order in which they can be worked. */
export interface Step {
  readonly id: NodeId;
  readonly part: PartId;
  readonly needs: readonly NodeId[];
  /** the principle a teacher would name: `amount = concentration × volume` */
  readonly principle: string;
  work(values: Values): Value;
  /** the line of the worked answer, given values as they are printed; absent where the answer itself says all */
  line?(values: Values): WorkingLine;
  /** how a number is printed in working; other values are `exact` */
  readonly printed: Rounding;
}

/** A named misconception at one step: its wrong work, done from the same values. */
export interface Slip {
  readonly id: MisconceptionId;
  readonly at: NodeId;
  work(values: Values): Value;
  applies(values: Values): boolean;
  /** steps that one who makes it never takes, so that their marks are not earned either: amounts, where masses are compared at once */
  readonly skips?: readonly NodeId[];
  /** to the pupil: at most 30 words */
  readonly feedback: string;
  /** what has happened, in words a colleague would use */
  readonly happened: readonly Inline[];
}

/** One mark. */
export interface Point {
  readonly id: PointId;
  readonly step: NodeId;
  readonly marks: 1;
  /** the mark stands for right work on a wrong value from an earlier step */
  readonly carries: boolean;
  readonly kind: 'method' | 'value' | 'statement';
  /** first what earns it, then what is also right */
  readonly accept: readonly (readonly Inline[])[];
  readonly refuse: readonly (readonly Inline[])[];
  readonly ignore: readonly (readonly Inline[])[];
}

export interface Part {
  readonly id: PartId;
  readonly command: CommandWord;
  readonly objective: Objective;
  /** marks of this part that are for mathematics, and for practical context */
  readonly maths: number;
  readonly practical: number;
  readonly prompt: readonly Inline[];
  /** printed under the prompt at support `prompts`; gives no answer away */
  readonly hints: readonly (readonly Inline[])[];
  readonly space: AnswerSpace;
  readonly points: readonly Point[];
  /** the steps whose values are the answer */
  readonly answers: readonly NodeId[];
  /** answers stand side by side in blanks: a row shows them all where one differs, because a bare figure does not say which it is */
  readonly together?: true;
  /** shown with the worked answer, to pupils afterwards and on the teacher copy; never on a question sheet */
  readonly explains?: readonly Block[];
  /** a printed value from which later parts go on ("show that") */
  readonly restart?: { readonly step: NodeId; readonly shown: Value };
  /** options in printed order, when the part is multiple choice; the key is the one without a slip */
  readonly options?: readonly ChoiceOption[];
  /** what the options are taken from: the key, and every wrong option that can be had, the family's favourites first */
  readonly choice?: { readonly key: ChoiceOption; readonly pool: readonly ChoiceOption[]; readonly most: 3 | 4 };
}

export interface ChoiceOption {
  readonly value: Value;
  readonly content: readonly Inline[];
  readonly slip?: MisconceptionId;
  readonly aliases: readonly MisconceptionId[];
  readonly feedback: string;
}

/** A line of the usual cautions, with what staff need. */
export interface Caution {
  readonly substance: string;
  /** to pupils, words first */
  readonly caution: string;
  readonly signal: 'Danger' | 'Warning' | 'none';
  readonly statements: readonly string[];
  readonly source: string;
  readonly fromMemory: boolean;
}

/** What a family builds: everything but the place in a paper. */
export interface Item {
  /** how the item asks; interleaving keeps two of one strategy apart */
  readonly strategy: string;
  /** demand features of this draw: two items with equal features are parallel */
  readonly features: Readonly<Record<string, string>>;
  /** what makes this draw a different one from another: couples, direction, quantity asked (not the numbers) */
  readonly identity: string;
  readonly stem: readonly Block[];
  readonly data: readonly Datum[];
  readonly steps: readonly Step[];
  readonly parts: readonly Part[];
  readonly slips: readonly Slip[];
  readonly gives: readonly FactKey[];
  readonly asks: readonly FactKey[];
  readonly cautions: readonly Caution[];
}

/** A question of a paper. */
export interface Question extends Item {
  readonly slot: string;
  readonly family: string;
  readonly variant: number;
  readonly code: string;
  readonly level: Level;
}

export type Level = 'core' | 'stretch';
export type Support = 'open' | 'prompts' | 'completion' | 'worked';
export type Answering = 'written' | 'choice';
/** `dm` prints cm³ and mol dm⁻³, `litre` mL and mol/L */
export type Units = 'dm' | 'litre';

/** "If you see this": one slip, followed through the question. */
export interface Row {
  readonly slip: MisconceptionId;
  readonly aliases: readonly MisconceptionId[];
  readonly at: NodeId;
  readonly happened: readonly Inline[];
  readonly feedback: string;
  /** what the marker will see, part by part, where it differs from the answer */
  readonly seen: ReadonlyMap<PartId, readonly SeenValue[]>;
  readonly earns: ReadonlyMap<PointId, 0 | 1>;
}

export interface SeenValue {
  readonly step: NodeId;
  readonly value: Value;
  readonly content: readonly Inline[];
}
