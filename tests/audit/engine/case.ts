import type { Figures } from '../exact/rounding.ts';
import type { ReadScheme } from '../reading/scheme.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import type { Answer } from './answer.ts';
import type { Vocabulary } from './marks.ts';

export type Answers = ReadonlyMap<string, Answer>;

/** One step as the auditor works it. Ids are those that the tree carries as roles: they say which step is meant, never what it gives. */
export interface Node {
  readonly id: string;
  readonly needs: readonly string[];
  readonly figures: Figures;
  readonly signed?: boolean;
  work(answers: Answers): Answer;
  /** what stands left of the equals sign in working: `symbol n`, `species Fe^2+` */
  readonly left?: readonly string[];
}

/** A named misconception: what one who has it finds at a step. */
export interface Slip {
  readonly id: string;
  readonly at: string;
  /** figures and species that the words of its row must hold: `species MnO4^-` where a part asks about several */
  readonly tells?: readonly string[];
  /** steps that one who has it does not take, so that they earn nothing */
  readonly skips?: readonly string[];
  work(answers: Answers): Answer;
}

/** What a marking point must say, as marks; also what it must say of other right or wrong answers, where that can be computed. */
export interface PointRule {
  /** absent where `check` reads the words itself */
  readonly earns?: readonly string[];
  /** what else must hold of its words. @returns what does not */
  readonly check?: (text: string) => string | undefined;
  readonly also?: readonly (readonly string[])[];
  readonly not?: readonly (readonly string[])[];
  readonly ignore?: readonly (readonly string[])[];
  /** colours of each thing that is seen: others of their families may stand among what is also right */
  readonly families?: readonly (readonly string[])[];
  /** a species whose name stands among what is also right */
  readonly named?: string;
}

/** One question, read and worked by the auditor. */
export interface Case {
  readonly nodes: readonly Node[];
  readonly slips: readonly Slip[];
  readonly points?: Readonly<Record<string, PointRule>>;
  readonly vocabulary: Vocabulary;
  /** steps whose answers stand side by side in blanks: a marker sees them all, so a row shows them all */
  readonly together?: readonly string[];
  /** figures printed on the sheet that may stand in working */
  readonly printed: readonly string[];
  /** species by which the stem explains others: the ion that a ligand is */
  readonly explains?: readonly string[];
  /** what is wrong with the question as it is asked, beyond what every question is checked for */
  readonly faults: readonly string[];
}

/** What a case is read from: the question as printed, and which parts the scheme has (never what it says). */
export interface Asked {
  readonly question: ReadQuestion;
  readonly steps: ReadonlySet<string>;
  readonly level: string;
}

export type CaseReader = (asked: Asked) => Case;

/** Something a marker would need to know is not on the sheet, or not where it can be read. */
export class Unreadable extends Error {}

/** The steps that a scheme marks or answers, by their roles. */
export function stepsOf(blocks: readonly ReadScheme[]): Set<string> {
  return new Set(blocks.flatMap(({ points, roles }) => [...points.map(({ step }) => step), ...roles]));
}
